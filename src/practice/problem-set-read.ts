/**
 * From the text of a problem set to the set: its stations and land opened, every code followed to its problem, and every fault told at once.
 * Pure: other files come through `open`.
 */

import { isSeq, type Node } from "yaml";
import type { Land, Station } from "../radio/index.ts";
import {
  addFault,
  type Fault,
  type FileRecord,
  gather,
  gathering,
  inReadingOrder,
  type LinkWorld,
  type Open,
  offsetOf,
  openFile,
  parseYamlFile,
  type Reading,
  type RecordField,
  readDate,
  readField,
  readLandField,
  readScalar,
  type SourceFile,
  sourceFile,
} from "../scene/index.ts";
import type { Problem } from "./problem.ts";
import { readProblemCode } from "./problem-code.ts";
import { MOST_PROBLEMS, openProblem, type ProblemSet } from "./problem-set.ts";
import { codeLeaf, PROBLEM_SET, problemSetLeaves } from "./problem-set-shape.ts";
import { practiceWorld, type World } from "./world.ts";

export type ProblemSetRead =
  | { readonly ok: true; readonly set: ProblemSet; readonly sources: readonly SourceFile[] }
  | { readonly ok: false; readonly faults: readonly Fault[] };

export interface ProblemSetReadOptions {
  /** What faults call the file, in the form `open` gives paths in. */
  readonly path: string;
  readonly open: Open;
  /** What a set without stations of its own is set on. */
  readonly isles: LinkWorld;
}

/** What problems stand on. */
export interface Ground {
  readonly name: string;
  readonly stations: readonly Station[];
  readonly land: Land | null;
}

/** Reads a problem set. Never throws: what is wrong comes back as faults, all of them, in the order of the files. */
export function readProblemSet(text: string, { path, open, isles }: ProblemSetReadOptions): ProblemSetRead {
  const sources: SourceFile[] = [sourceFile("problems", path, path)];
  const faults: Fault[] = [];
  const ground: GroundOf = (reading, record, date) => {
    const field = record.fields.get("stations");
    if (field === undefined && !record.fields.has("land")) return isles;
    const gathered = gathering(open, date);
    if (field) gather(gathered, reading, field, { chain: [reading.file], stationsToo: true });
    const land = record.fields.has("land") ? readLandField(reading, record, gathered) : null;
    sources.push(...gathered.sources);
    faults.push(...gathered.faults);
    if (field === undefined) return { ...isles, land };
    return gathered.incomplete
      ? null
      : { name: "this set", stations: [...gathered.own, ...gathered.table], land };
  };
  const { set, faults: own } = setFrom(text, path, ground);
  const all = [...own, ...faults];
  if (set && all.length === 0) return { ok: true, set, sources };
  return {
    ok: false,
    faults: inReadingOrder(
      all,
      sources.map((source) => source.path),
    ),
  };
}

type GroundOf = (reading: Reading, record: FileRecord, date: string) => Ground | null;

/** Any calendar day; only used while the set's own date is at fault, so that the rest is still checked. */
const SOME_DAY = "2026-01-01";

/** The set of a text whose ground is found by `groundOf`, with the faults of this one file. */
export function setFrom(
  text: string,
  path: string,
  groundOf: GroundOf,
): { readonly set: ProblemSet | null; readonly faults: readonly Fault[] } {
  const { reading, root } = parseYamlFile(text, path);
  const record = root && openFile(reading, root, "problems", PROBLEM_SET);
  if (!record) return { set: null, faults: reading.faults.map(asOfSet) };
  const textOf = (key: "title" | "note"): string =>
    readField(reading, record, key, problemSetLeaves[key])?.value ?? "";
  const title = textOf("title");
  const note = textOf("note");
  const date = readDate(reading, record, { leaf: problemSetLeaves.date, what: "the set" });
  const before = reading.faults.length;
  const ground = groundOf(reading, record, date ?? SOME_DAY);
  const isSound = ground !== null && reading.faults.length === before;
  const world = date !== null && isSound ? worldOn(reading, record, ground, date) : null;
  const problems = readList(reading, record, world);
  if (world === null || problems === null) return { set: null, faults: reading.faults };
  return { set: { title, note, world, problems }, faults: reading.faults };
}

/** The parser does not know which kind of file it was given. */
const asOfSet = (fault: Fault): Fault =>
  fault.code === "empty"
    ? { ...fault, message: fault.message.replace(/;.*$/, "; a problem set begins with problems: 1") }
    : fault;

function worldOn(reading: Reading, record: FileRecord, ground: Ground, date: string): World | null {
  try {
    return practiceWorld({ ...ground, date });
  } catch (error) {
    // The stations cannot serve: the sentence says why.
    if (!(error instanceof RangeError)) throw error;
    const field = record.fields.get("stations");
    addFault(reading, "unfit-stations", field ? offsetOf(field) : record.offset, asClause(error.message));
    return null;
  }
}

/** Lower-case start where no name stands there, no full stop. */
const asClause = (sentence: string): string =>
  sentence.replace(/\.$/, "").replace(/^(A|An|No|Problems|The) /, (word) => word.toLowerCase());

/** The problems of the list; null where there is none, and then the reading says why. Without a world, codes are still looked at. */
function readList(reading: Reading, record: FileRecord, world: World | null): readonly Problem[] | null {
  const field = record.fields.get("list");
  if (!field) return null;
  if (!isSeq(field.node)) {
    addFault(
      reading,
      "not-a-list",
      offsetOf(field),
      "list is not a list; write each problem's code under it, after a dash, such as - 4K7-Q2M-9XD",
    );
    return null;
  }
  const items = field.node.items as (Node | null)[];
  if (items.length < 1 || items.length > MOST_PROBLEMS) {
    addFault(
      reading,
      "wrong-count",
      offsetOf(field),
      `list has ${items.length} problems; a set has 1 to ${MOST_PROBLEMS}`,
    );
    return null;
  }
  return readCodes(reading, field, items, world);
}

function readCodes(
  reading: Reading,
  field: RecordField,
  items: readonly (Node | null)[],
  world: World | null,
): readonly Problem[] {
  const problems: Problem[] = [];
  const lines = new Map<string, number>();
  let foreign = 0;
  for (const node of items) {
    const keyOffset = node?.range?.[0] ?? offsetOf(field);
    const written = readScalar(reading, { key: "code", keyOffset, node }, codeLeaf, "code");
    if (!written) continue;
    const { offset } = written;
    const read = readProblemCode(written.value);
    if (read.kind === "fault") {
      addFault(reading, "bad-code", offset, asClause(read.says));
      continue;
    }
    const first = lines.get(read.code);
    if (first !== undefined) {
      addFault(
        reading,
        "repeated-code",
        offset,
        `${read.code} stands on line ${first} already; put another problem in its place or take it out`,
      );
      continue;
    }
    lines.set(read.code, reading.lines.linePos(offset).line);
    const opened = world && openProblem(world, read.code);
    if (opened === null) continue;
    if (opened.kind === "problem") problems.push(opened.problem);
    // Where stations or date are not those of the codes, one of them says it for all.
    else if (opened.code !== "other-stations" || foreign++ === 0)
      addFault(reading, opened.code, offset, asClause(opened.says));
  }
  return problems;
}
