/**
 * Changes to a problem set's file that is there: the problems, title and note that changed and nothing else. Comments, blank lines and the
 * order of keys stay as their author left them; a comment above a problem or behind it goes where the problem goes.
 */

import { isMap, isSeq, type Node, type YAMLMap } from "yaml";
import {
  type Fault,
  openFile,
  pairOf,
  parseYamlFile,
  quotedIfNeeded,
  scalarText,
  withKey,
  withValue,
} from "../scene/index.ts";
import { readProblemCode } from "./problem-code.ts";
import type { ProblemSet } from "./problem-set.ts";
import { PROBLEM_SET, problemSetLeaves } from "./problem-set-shape.ts";
import { listLine } from "./problem-set-write.ts";

export type ProblemSetEdited =
  | { readonly ok: true; readonly text: string }
  /** The text is no problem set that can be read: then nothing may be overwritten. */
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** The text with this title, note and list. Stations, land and date are left as they are. Never throws. */
export function editProblemSet(
  text: string,
  { title, note, problems }: Pick<ProblemSet, "title" | "note" | "problems">,
  { path }: { readonly path: string },
): ProblemSetEdited {
  let edited = text;
  for (const [key, value] of [
    ["title", title],
    ["note", note],
  ] as const) {
    const root = rootOf(edited, path);
    if (!isMap(root)) return root;
    edited = withText(edited, root, key, value);
  }
  const root = rootOf(edited, path);
  if (!isMap(root)) return root;
  const list = root.get("list", true);
  if (!isSeq(list)) return { ok: true, text: edited };
  const lines = problems.map((problem) => ({ code: problem.code, line: listLine(problem) }));
  return { ok: true, text: withList(edited, root, list.items as (Node | null)[], list.flow === true, lines) };
}

function rootOf(text: string, path: string): YAMLMap | Extract<ProblemSetEdited, { ok: false }> {
  const { reading, root } = parseYamlFile(text, path);
  const opened = root && openFile(reading, root, "problems", PROBLEM_SET);
  return opened && isMap(root) ? root : { ok: false, faults: reading.faults };
}

const ORDER = Object.keys(problemSetLeaves);

function withText(text: string, root: YAMLMap, key: "title" | "note", value: string): string {
  const pair = pairOf(root, key);
  if (value === String(pair === null ? "" : (root.get(key) ?? ""))) return text;
  const written = root.flow ? JSON.stringify(value) : quotedIfNeeded(value);
  return pair ? withValue(text, pair, written) : withKey(text, root, { key, value: written, order: ORDER });
}

interface ListLine {
  readonly code: string;
  readonly line: string;
}

function withList(
  text: string,
  root: YAMLMap,
  items: readonly (Node | null)[],
  isFlow: boolean,
  lines: readonly ListLine[],
): string {
  const pair = pairOf(root, "list");
  const first = items[0]?.range?.[0];
  if (pair && (isFlow || first === undefined))
    return withValue(text, pair, `[${lines.map(({ code }) => code).join(", ")}]`);
  if (first === undefined) return text;
  // Each item with what stands above it, from the end of the line before.
  const begin = lineEndAfter(text, (pair?.key as Node | undefined)?.range?.[0] ?? 0) + 1;
  const pieces = new Map<string, string>();
  let from = begin;
  for (const item of items) {
    const to = lineEndAfter(text, item?.range?.[1] ?? from) + 1;
    const piece = text.slice(from, to);
    const read = readProblemCode(scalarText(item) ?? "");
    if (read.kind === "code") pieces.set(read.code, piece.endsWith("\n") ? piece : `${piece}\n`);
    from = to;
  }
  const indent = /[^\n]*$/.exec(text.slice(0, first))?.[0]?.match(/^ */)?.[0] ?? "";
  const body = lines.map(({ code, line }) => pieces.get(code) ?? `${indent}${line}\n`).join("");
  return text.slice(0, begin) + body + text.slice(from);
}

/** Where the line ends that holds a place: its line feed, or the end of the text less one. */
function lineEndAfter(text: string, offset: number): number {
  const end = text.indexOf("\n", offset);
  return end < 0 ? text.length - 1 : end;
}
