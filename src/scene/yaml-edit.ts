/**
 * Small changes to the text of a YAML file that leave every other character as it is: comments, order, quotes, blank
 * lines. Each takes the text and nodes parsed from that very text, and gives the new text.
 */

import { isMap, isScalar, isSeq, type Node, type Pair, type Scalar, type YAMLMap, type YAMLSeq } from "yaml";
import { isBlank, scalarText } from "./record.ts";

/** The pair of a key in a map; null when the map has no such key. */
export const pairOf = (map: YAMLMap, key: string): Pair | null =>
  map.items.find((pair) => scalarText(pair.key) === key) ?? null;

/** Where the last character of a node's own content stands, comments and line ends after it left out. */
export function contentEnd(text: string, node: Node): number {
  const end = node.range?.[1] ?? 0;
  if ((isMap(node) || isSeq(node)) && !node.flow) {
    const last = node.items.at(-1);
    if (isMap(node)) return pairEnd(text, last as Pair);
    return contentEnd(text, last as Node);
  }
  // A block of text ends after its last line's end.
  return text[end - 1] === "\n" ? text.slice(0, end).trimEnd().length : end;
}

function pairEnd(text: string, { key, value }: Pair): number {
  if (value && !isBlank(value)) return contentEnd(text, value as Node);
  return colonAfter(text, key as Node) + 1;
}

const colonAfter = (text: string, key: Node): number => text.indexOf(":", key.range?.[1] ?? 0);

/** The text with the key's value replaced. A comment after the value, or after the head of a block of text, stays. */
export function withValue(text: string, pair: Pair, value: string): string {
  const start = colonAfter(text, pair.key as Node) + 1;
  const node = pair.value as Node | null;
  if (!node || isBlank(node)) return splice(text, start, start, ` ${value}`);
  const from = node.range?.[0] ?? start;
  const isBlockText = isScalar(node) && /^BLOCK/.test((node as Scalar).type ?? "");
  // The header of a block of text (`>-`) may carry a comment, which the range covers too.
  const comment = isBlockText && node.comment ? ` #${node.comment}` : "";
  const isBlockList = (isMap(node) || isSeq(node)) && !node.flow;
  const begin = isBlockList ? start : from;
  const written = value.replace(/\r?\n|$/, (end) => comment + end);
  return splice(text, begin, contentEnd(text, node), `${isBlockList ? " " : ""}${written}`);
}

/**
 * The text with a new key in the map: after the nearest of the keys that `order` lists before it, or else first.
 * The map must not be empty unless it is written in braces.
 */
export function withKey(
  text: string,
  map: YAMLMap,
  { key, value, order }: { key: string; value: string; order: readonly string[] },
): string {
  const before = order.slice(0, order.indexOf(key)).reverse();
  const after = before.map((name) => pairOf(map, name)).find((pair) => pair !== null) ?? null;
  const start = map.range?.[0] ?? 0;
  if (map.flow) {
    if (map.items.length === 0) return splice(text, start, map.range?.[1] ?? start, `{ ${key}: ${value} }`);
    if (after) return insert(text, pairEnd(text, after), `, ${key}: ${value}`);
    return insert(text, keyStart(map), `${key}: ${value}, `);
  }
  const indent = " ".repeat(columnOf(text, keyStart(map)));
  const line = `${key}: ${value}`;
  if (after) return insertLineAfter(text, pairEnd(text, after), `${indent}${line}`);
  return insert(text, keyStart(map), `${line}${lineEnd(text)}${indent}`);
}

const keyStart = (map: YAMLMap): number => (map.items[0]?.key as Node | undefined)?.range?.[0] ?? 0;

/** The text with one more item at the end of a list. */
export function withItem(text: string, list: YAMLSeq, item: string): string {
  const last = list.items.at(-1) as Node | undefined;
  const start = list.range?.[0] ?? 0;
  if (list.flow)
    return last
      ? insert(text, contentEnd(text, last), `, ${item}`)
      : splice(text, start, list.range?.[1] ?? start, `[${item}]`);
  const indent = " ".repeat(columnOf(text, start));
  return insertLineAfter(text, last ? contentEnd(text, last) : start, `${indent}- ${item}`);
}

/**
 * The text without a key of a map and all that stands under it. The last key of a block map leaves its braces, `{}`; comments inside what goes
 * go with it.
 */
export function withoutKey(text: string, map: YAMLMap, key: string): string {
  const index = map.items.findIndex((pair) => scalarText(pair.key) === key);
  const pair = map.items[index];
  if (!pair) return text;
  const start = (pair.key as Node).range?.[0] ?? 0;
  const end = pairEnd(text, pair);
  if (map.flow) {
    const next = map.items[index + 1];
    if (next) return splice(text, start, (next.key as Node).range?.[0] ?? end, "");
    const previous = map.items[index - 1];
    return splice(text, previous ? pairEnd(text, previous) : start, end, "");
  }
  if (map.items.length === 1) return splice(text, start, end, "{}");
  const next = map.items[index + 1];
  // Inside a list the first key stands behind the dash, and the next one takes its place.
  const lineStart = text.lastIndexOf("\n", start - 1) + 1;
  if (next && text.slice(lineStart, start).trim() !== "")
    return splice(text, start, (next.key as Node).range?.[0] ?? end, "");
  const nextLine = text.indexOf("\n", end);
  return splice(text, lineStart, nextLine < 0 ? text.length : nextLine + 1, "");
}

/** The text without one item of a list. Comments on lines of their own above it stay; those inside it go with it. */
export function withoutItem(text: string, list: YAMLSeq, index: number): string {
  const node = list.items[index] as Node | undefined;
  if (!node) return text;
  const start = node.range?.[0] ?? 0;
  const end = contentEnd(text, node);
  if (list.flow) return withoutFlowItem(text, list, index, start, end);
  const dash = dashBefore(text, columnOf(text, list.range?.[0] ?? 0), start);
  const lineStart = text.lastIndexOf("\n", dash) + 1;
  const nextLine = text.indexOf("\n", end);
  return splice(text, lineStart, nextLine < 0 ? text.length : nextLine + 1, "");
}

function withoutFlowItem(text: string, list: YAMLSeq, index: number, start: number, end: number): string {
  const next = list.items[index + 1] as Node | undefined;
  if (next) return splice(text, start, next.range?.[0] ?? end, "");
  const previous = list.items[index - 1] as Node | undefined;
  return splice(text, previous ? contentEnd(text, previous) : start, end, "");
}

/** The dash of a list's item: the last one before the item that stands at the list's column with only spaces before it. */
function dashBefore(text: string, column: number, offset: number): number {
  for (let dash = text.lastIndexOf("-", offset); dash >= 0; dash = text.lastIndexOf("-", dash - 1)) {
    if (columnOf(text, dash) === column && text.slice(dash - column, dash).trim() === "") return dash;
  }
  return offset;
}

const columnOf = (text: string, offset: number): number => offset - (text.lastIndexOf("\n", offset - 1) + 1);

const splice = (text: string, start: number, end: number, middle: string): string =>
  text.slice(0, start) + middle + text.slice(end);

const insert = (text: string, offset: number, middle: string): string => splice(text, offset, offset, middle);

/** The line end that the file uses. */
export const lineEnd = (text: string): string => (/\r\n/.test(text) ? "\r\n" : "\n");

function insertLineAfter(text: string, offset: number, line: string): string {
  const end = text.indexOf("\n", offset);
  return end < 0
    ? `${text}${lineEnd(text)}${line}${lineEnd(text)}`
    : insert(text, end + 1, `${line}${lineEnd(text)}`);
}
