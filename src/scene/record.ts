/**
 * One map of a file read key by key: unknown keys (with the nearest known one), keys given twice, keys that are
 * missing, and each value checked against its shape. A bad value costs only itself; the rest is still read.
 */

import { isMap, isScalar, isSeq, type Node, type Scalar } from "yaml";
import type { ZodMiniType } from "zod/mini";
import { nearMatch } from "./near-match.ts";
import { addFault, cited, listed, type Reading } from "./reading.ts";
import { isOptional, type LeafNote, noteOf, type RecordShape } from "./shape.ts";

export interface RecordField {
  readonly key: string;
  readonly keyOffset: number;
  readonly node: Node | null;
}

export interface FileRecord {
  /** What a sentence about one of its values begins with: "", or "NAV1 ", or "HJL ". */
  readonly label: string;
  readonly offset: number;
  readonly fields: ReadonlyMap<string, RecordField>;
}

/** A value as it was written and where, so that later checks can cite it. */
export interface Written<T> {
  readonly value: T;
  readonly text: string;
  readonly offset: number;
}

/** Whether nothing is written where a value belongs: `heading:` and then the next line. */
export const isBlank = (node: unknown): boolean =>
  node === null || (isScalar(node) && node.value === null && (node.source ?? "") === "");

/** A scalar as the file has it: `NO`, `060` and `1E5` stay what was written. Null for lists, maps and blanks. */
export function scalarText(node: unknown): string | null {
  if (!isScalar(node) || isBlank(node)) return null;
  return node.source ?? String(node.value);
}

/** Where a value begins, or its key when nothing is written there. */
export const offsetOf = (field: RecordField): number =>
  field.node?.range && !isBlank(field.node) ? field.node.range[0] : field.keyOffset;

/**
 * Opens a map whose keys the shape names. `what` is the map in words ("a receiver"); `label` stands before the name of
 * a value in sentences. Null, with a fault, when the node is no map.
 */
export function openRecord(
  reading: Reading,
  node: Node | null,
  shape: RecordShape,
  { what, label = "", offset }: { what: string; label?: string; offset: number },
): FileRecord | null {
  if (!isMap(node)) {
    const got = isSeq(node) ? "a list" : isBlank(node) ? "empty" : cited(scalarText(node) ?? "");
    const keys = listed(requiredKeys(shape), "and");
    addFault(
      reading,
      "not-a-map",
      node?.range?.[0] ?? offset,
      `${what} is keys and values, but this is ${got}; write ${keys} as key: value`,
    );
    return null;
  }
  const fields = new Map<string, RecordField>();
  for (const { key, value } of node.items) {
    const field = readKey(reading, key, (value ?? null) as Node | null, offset);
    if (!field) continue;
    const first = fields.get(field.key);
    if (first) repeatedKey(reading, field, first);
    else fields.set(field.key, field);
    if (!Object.hasOwn(shape.keys, field.key)) unknownKey(reading, field, shape, what);
  }
  const record = { label, offset: node.range?.[0] ?? offset, fields };
  for (const key of requiredKeys(shape)) if (!fields.has(key)) missingKey(reading, record, shape, what, key);
  return record;
}

function readKey(reading: Reading, key: unknown, node: Node | null, fallback: number): RecordField | null {
  const text = scalarText(key);
  const keyOffset = (key as Scalar | null)?.range?.[0] ?? fallback;
  if (text !== null) return { key: text, keyOffset, node };
  addFault(reading, "unknown-key", keyOffset, "a key must be a plain word; write key: value");
  return null;
}

function repeatedKey(reading: Reading, field: RecordField, first: RecordField): void {
  const line = reading.lines.linePos(first.keyOffset).line;
  addFault(
    reading,
    "repeated-key",
    field.keyOffset,
    `${cited(field.key)} is given twice, first on line ${line}; keep one of the two`,
  );
}

function unknownKey(
  reading: Reading,
  { key, keyOffset }: RecordField,
  shape: RecordShape,
  what: string,
): void {
  const known = Object.keys(shape.keys);
  addFault(
    reading,
    "unknown-key",
    keyOffset,
    `unknown key \`${cited(key)}\`; ${keyRemedy(key, known, shape, what)}`,
  );
}

function keyRemedy(key: string, known: readonly string[], shape: RecordShape, what: string): string {
  const { elsewhere = {} } = shape;
  if (Object.hasOwn(elsewhere, key)) return `it belongs ${elsewhere[key]}`;
  const near = meantKey(key, known, shape);
  if (near) return `did you mean \`${near}\`?`;
  const misplaced = nearMatch(key, Object.keys(elsewhere));
  if (misplaced) return `\`${misplaced}\` belongs ${elsewhere[misplaced]}`;
  return `${what} has ${listed(known, "and")}`;
}

/** The key that was meant, by another name for it or by its spelling. */
function meantKey(key: string, known: readonly string[], { meant = {} }: RecordShape): string | null {
  const otherName = key.toLowerCase();
  return Object.hasOwn(meant, otherName) ? (meant[otherName] ?? null) : nearMatch(key, known);
}

function missingKey(
  reading: Reading,
  record: FileRecord,
  shape: RecordShape,
  what: string,
  key: string,
): void {
  // A key that was misspelt has its own fault already; saying that it is missing too would send the reader searching.
  const misspelt = [...record.fields.keys()].some(
    (given) => !Object.hasOwn(shape.keys, given) && meantKey(given, [key], shape) === key,
  );
  if (misspelt) return;
  const subject = record.label === "" ? what : record.label.trim();
  const right = noteOf(shape.keys[key])?.right;
  addFault(
    reading,
    "missing-key",
    record.offset,
    `${subject} has no ${key}${right ? `; ${right}` : `; add ${key}:`}`,
  );
}

const requiredKeys = (shape: RecordShape): string[] =>
  Object.entries(shape.keys)
    .filter(([, value]) => !isOptional(value))
    .map(([key]) => key);

/** The value of one key, checked against its shape; null when it is absent or at fault (and then the fault is noted). */
export function readField<T>(
  reading: Reading,
  record: FileRecord,
  key: string,
  leaf: ZodMiniType<T>,
  label = record.label,
): Written<NonNullable<T>> | null {
  const field = record.fields.get(key);
  return field ? readScalar(reading, field, leaf, `${label}${key}`) : null;
}

/** One scalar checked against its shape; `name` is what a sentence calls it. */
export function readScalar<T>(
  reading: Reading,
  field: RecordField,
  leaf: ZodMiniType<T>,
  name: string,
): Written<NonNullable<T>> | null {
  const note = noteOf(leaf);
  const offset = offsetOf(field);
  const right = note?.right ?? "write another value";
  if (isBlank(field.node)) {
    if (note?.blank) return { value: "" as NonNullable<T>, text: "", offset };
    addFault(reading, "blank", offset, `${name} has no value; ${right}`);
    return null;
  }
  const text = scalarText(field.node);
  if (text === null) {
    const got = isSeq(field.node) ? "a list" : "a map";
    addFault(reading, "not-one-value", offset, `${name} is ${got} where one value belongs; ${right}`);
    return null;
  }
  const result = leaf.safeParse(plainValue(text, note));
  if (result.success && result.data !== undefined && result.data !== null)
    return { value: result.data, text, offset };
  const issue = result.error?.issues[0];
  addFault(reading, ...leafFault(issue?.code, note, text, name, right, offset));
  return null;
}

const DECIMAL = /^[-+]?(\d+(\.\d*)?|\.\d+)$/;

/** What the shape is asked about: a number where the shape is a number and one is written, else the text. */
const plainValue = (text: string, note: LeafNote | undefined): unknown =>
  note?.kind === "number" && DECIMAL.test(text) ? Number(text) + 0 : text;

function leafFault(
  issue: string | undefined,
  note: LeafNote | undefined,
  text: string,
  name: string,
  right: string,
  offset: number,
): [code: "not-a-number" | "out-of-range" | "not-one-of" | "too-long" | "not-understood", number, string] {
  const got = `${name} ${cited(text)}`;
  if (note?.kind === "number" && !DECIMAL.test(text))
    return ["not-a-number", offset, `${got} is not a number; ${right}`];
  if (note?.kind === "number") return ["out-of-range", offset, `${got} is out of range; ${right}`];
  if (issue === "too_big")
    return ["too-long", offset, `${name} is ${[...text].length} characters long; ${right}`];
  if (note?.choices) {
    const meant = nearMatch(text, note.choices);
    return ["not-one-of", offset, `${got} is not known; ${meant ? `did you mean ${meant}?` : right}`];
  }
  return ["not-understood", offset, `${got} is not understood; ${right}`];
}
