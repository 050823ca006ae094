/**
 * A problem set as the command line names it: a set's file, its link, the codes of problems, or wishes on the isles or on stations of one's
 * own.
 */

import { existsSync } from "node:fs";
import { decimalYear } from "../earth/index.ts";
import {
  anotherLike,
  buildSet,
  ISLES_DATE,
  isSkillId,
  isSlipId,
  MODES,
  MOST_PROBLEMS,
  openProblem,
  type Problem,
  type ProblemSet,
  practiceWorld,
  problemSetFromLink,
  readProblemCode,
  readProblemSet,
  SKILL_IDS,
  SLIPS,
  type World,
} from "../practice/index.ts";
import { isLink, type LinkWorld, readLand } from "../scene/index.ts";
import type { Call, OptionSpec } from "./command.ts";
import { didYouMean } from "./did-you-mean.ts";
import { CallFault, faultsOf, InputFault } from "./faults.ts";
import { readIsles } from "./isles.ts";
import { numberOption } from "./number-option.ts";
import { readStationList } from "./station-list.ts";
import { openBeside, operandText } from "./text-files.ts";
import { today } from "./today.ts";

const DEFAULT_NUMBER = 10;
const SLIP_IDS = SLIPS.map(({ id }) => id);

/** The options that say which problems; a set's file says it all itself. */
export const WISH_OPTIONS = {
  skills: { value: "LIST", help: "practise these skills, such as centre-and-read,cut-the-line (all)" },
  slips: { value: "LIST", help: "tell these mistaken ideas apart, such as selector-is-radial" },
  number: { value: "N", help: `how many problems, 1 to ${MOST_PROBLEMS} (${DEFAULT_NUMBER})` },
  seed: { value: "N", help: "the same seed gives the same problems (1)" },
  mode: { value: MODES.join("|"), help: "answered by choosing or by telling (choose)" },
  date: {
    value: "YYYY-MM-DD",
    help: `the day they are set on (isles: ${ISLES_DATE}; other stations: today)`,
  },
  land: { value: "FILE", help: "the land under stations of your own" },
  title: { value: "TEXT", help: "the title of the set" },
  note: { value: "TEXT", help: "what the learners are told at its head" },
  another: { value: "LIST", help: "put others like these in their place, by number, such as 2,5" },
} as const satisfies Readonly<Record<string, OptionSpec>>;

/** What only the making of problems can grant; a seed is of use too where others like some are asked for. */
const wishesOf = (call: Call): readonly string[] => [
  "skills",
  "slips",
  "number",
  "mode",
  ...(call.text("another") === undefined ? ["seed"] : []),
];

export interface ProblemSetOperand {
  readonly set: ProblemSet;
  /** What could not be granted, one sentence each. */
  readonly notes: readonly string[];
  /** Paths of every file that took part. */
  readonly files: readonly string[];
  readonly isles: LinkWorld;
  /** Stations and land as the call named them; null where the set stands on the isles or came from a file of its own. */
  readonly stationsPath: string | null;
  readonly landPath: string | null;
  /** The set's own file; null where the set came from elsewhere. */
  readonly source: { readonly path: string; readonly text: string } | null;
}

/** The set that a call asks for. Throws InputFault or CallFault, each fault in a sentence. */
export async function problemSetOf(call: Call): Promise<ProblemSetOperand> {
  const isles = await readIsles();
  const [first, ...others] = call.operands;
  if (first === undefined) return wished(call, isles, null);
  if (call.operands.every(isCode)) return fromCodes(call, isles);
  const [extra] = others;
  if (extra !== undefined)
    throw new CallFault(`"${extra}" is one operand too many: several operands are all codes of problems`);
  if (isLink(first, "problem set")) return fromLink(call, first, isles);
  const text = first.endsWith(".csv") ? "" : await operandText(first);
  if (!/(^|[{,]\s*)"?problems"?\s*:/m.test(text)) return wished(call, isles, first);
  refuse(call, [...wishesOf(call), "date", "land"], `${first} says that itself`);
  const read = readProblemSet(text, { path: first, open: openBeside, isles });
  if (!read.ok) throw faultsOf(read.faults);
  const files = read.sources.map(({ path }) => path);
  const source = { path: first, text };
  const set = titled(call, read.set);
  return { ...withOthers(call, set), files, isles, stationsPath: null, landPath: null, source };
}

const NO_FILES = { stationsPath: null, landPath: null, source: null };

const isCode = (text: string): boolean => readProblemCode(text).kind === "code" && !existsSync(text);

function fromCodes(call: Call, isles: LinkWorld): ProblemSetOperand {
  refuse(call, [...wishesOf(call), "land"], "a code says that itself");
  const world = worldOf(isles, dateOf(call, ISLES_DATE));
  const problems = new Map<string, Problem>();
  for (const code of call.operands) {
    const opened = openProblem(world, code);
    if (opened.kind === "fault") throw new InputFault(opened.says);
    problems.set(opened.problem.code, opened.problem);
  }
  const set = { title: "Problems", note: "", world, problems: [...problems.values()] };
  return { ...withOthers(call, titled(call, set)), files: [], isles, ...NO_FILES };
}

function fromLink(call: Call, link: string, isles: LinkWorld): ProblemSetOperand {
  refuse(call, [...wishesOf(call), "date", "land"], "the link says that itself");
  const read = problemSetFromLink(link, isles);
  if (!read.ok) throw new InputFault(read.faults.join("\n"));
  const { set, notes } = read;
  const others = withOthers(call, titled(call, set));
  return { set: others.set, notes: [...notes, ...others.notes], files: [], isles, ...NO_FILES };
}

const titled = (call: Call, set: ProblemSet): ProblemSet => ({
  ...set,
  title: call.text("title") ?? set.title,
  note: call.text("note") ?? set.note,
});

const seedOf = (call: Call): number =>
  numberOption(call, { name: "seed", least: 0, most: 2 ** 32 - 1, unit: "", whole: true }, 1);

/** The set with other problems in place of those that `--another` numbers: the same form, told apart by the same ideas. */
function withOthers(call: Call, set: ProblemSet): Pick<ProblemSetOperand, "set" | "notes"> {
  const wanted = (call.text("another") ?? "").split(",").filter((word) => word.trim() !== "");
  const problems = [...set.problems];
  const notes: string[] = [];
  for (const word of wanted) {
    const like = problems[Number(word) - 1];
    if (!/^\s*\d+\s*$/.test(word) || like === undefined)
      throw new CallFault(`--another takes numbers from 1 to ${problems.length}, but got "${word.trim()}"`);
    const other = anotherLike(set.world, like, { seed: seedOf(call), but: problems });
    if (other === null) notes.push(`There is no other like number ${Number(word)}: it stays.`);
    else problems[Number(word) - 1] = other;
  }
  return { set: { ...set, problems }, notes };
}

function refuse(call: Call, names: readonly string[], because: string): void {
  const given = names.find((name) => call.text(name) !== undefined);
  if (given !== undefined) throw new CallFault(`--${given} has no place here: ${because}`);
}

async function wished(call: Call, isles: LinkWorld, path: string | null): Promise<ProblemSetOperand> {
  const wishes = {
    title: call.text("title") ?? "Problems",
    note: call.text("note") ?? "",
    skills: idsOf(call, "skills", "skill", SKILL_IDS, isSkillId),
    slips: idsOf(call, "slips", "slip", SLIP_IDS, isSlipId),
    count: numberOption(
      call,
      { name: "number", least: 1, most: MOST_PROBLEMS, unit: "", whole: true },
      DEFAULT_NUMBER,
    ),
    seed: seedOf(call),
    mode: modeOf(call),
  };
  const ground = path === null ? await islesGround(call, isles) : await ownGround(call, path);
  const built = buildSet(ground.world, wishes);
  if (built.kind === "none") throw new InputFault(built.says.replace(/\.$/, ""));
  const others = withOthers(call, built.set);
  return { set: others.set, notes: [...built.notes, ...others.notes], isles, source: null, ...ground };
}

type Ground = Pick<ProblemSetOperand, "files" | "stationsPath" | "landPath"> & { readonly world: World };

async function islesGround(call: Call, isles: LinkWorld): Promise<Ground> {
  refuse(call, ["land"], "the isles have their own; give a station file of yours too");
  const world = worldOf(isles, dateOf(call, ISLES_DATE));
  return { world, files: [], stationsPath: null, landPath: null };
}

async function ownGround(call: Call, stationsPath: string): Promise<Ground> {
  const date = dateOf(call, today());
  const list = await readStationList(stationsPath, date);
  const landPath = call.text("land") ?? null;
  const land = landPath === null ? null : readLand(await operandText(landPath), { path: landPath });
  if (land !== null && !land.ok) throw faultsOf(land.faults);
  const world = worldOf({ name: stationsPath, stations: list.stations, land: land?.land ?? null }, date);
  return {
    world,
    files: [...list.files, ...(landPath === null ? [] : [landPath])],
    stationsPath,
    landPath,
  };
}

function worldOf(ground: Omit<Parameters<typeof practiceWorld>[0], "date">, date: string): World {
  try {
    return practiceWorld({ ...ground, date });
  } catch (error) {
    // The stations cannot serve: the sentence says why.
    if (error instanceof RangeError) throw new InputFault(error.message.replace(/\.$/, ""));
    throw error;
  }
}

function dateOf(call: Call, byDefault: string): string {
  const date = call.text("date") ?? byDefault;
  try {
    decimalYear(date);
    return date;
  } catch {
    throw new CallFault(`--date must be a day of the calendar such as 2026-06-01, but got "${date}"`);
  }
}

function modeOf(call: Call): (typeof MODES)[number] {
  const text = call.text("mode") ?? "choose";
  const mode = MODES.find((known) => known === text);
  if (mode === undefined)
    throw new CallFault(`--mode must be ${MODES.join(" or ")}, but got "${text}"${didYouMean(text, MODES)}`);
  return mode;
}

function idsOf<Id extends string>(
  call: Call,
  option: "skills" | "slips",
  what: string,
  known: readonly string[],
  isId: (text: string) => text is Id,
): readonly Id[] {
  const words = (call.text(option) ?? "")
    .split(",")
    .map((word) => word.trim())
    .filter((word) => word !== "");
  return words.map((word) => {
    if (isId(word)) return word;
    const near = didYouMean(word, known);
    throw new CallFault(
      `no ${what} is called ${word}${near === "" ? `; they are ${known.join(", ")}` : near}`,
    );
  });
}
