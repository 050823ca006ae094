/** Every code a fault of a file can have. docs/faults.md explains each; a test holds the two together. */

export const FAULT_CODES = [
  // The file as a whole.
  "too-big",
  "empty",
  "binary",
  "encoding",
  "cannot-open",
  "include-cycle",
  "wrong-kind",
  "wrong-version",
  "not-the-table",
  // YAML.
  "yaml-syntax",
  "tab",
  "several-documents",
  "too-deep",
  "alias",
  "tag",
  // Keys and values.
  "not-a-map",
  "not-a-list",
  "not-one-value",
  "unknown-key",
  "repeated-key",
  "missing-key",
  "blank",
  "not-a-number",
  "out-of-range",
  "not-one-of",
  "not-understood",
  "too-long",
  "wrong-count",
  // Meaning.
  "bad-date",
  "bad-position",
  "bad-frequency",
  "not-a-channel",
  "localizer-channel",
  "bad-channel",
  "channel-mismatch",
  "bad-class",
  "no-distance-part",
  "no-radials",
  "unknown-ident",
  "ambiguous-ident",
  "repeated-ident",
  "reserved-name",
  "repeated-name",
  "unknown-cover",
] as const;

export type FaultCode = (typeof FAULT_CODES)[number];
