/** What is wrong with a file a person wrote: where, what, and what would be right. */

export interface Fault {
  /** Stable code, listed in docs/faults.md. */
  readonly code: string;
  /** The path as the person gave it. */
  readonly file: string;
  /** From 1. */
  readonly line: number;
  /** From 1. */
  readonly column: number;
  /** One sentence: what was wrong, the value got, what would be right. Lower-case start, no full stop. */
  readonly message: string;
}

/** `scene-3.yaml:11:13 NAV1 tune 108.10 is a localizer channel; ...` */
export const faultLine = (fault: Fault): string =>
  `${fault.file}:${fault.line}:${fault.column} ${fault.message}`;
