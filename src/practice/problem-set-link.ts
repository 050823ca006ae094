/**
 * A problem set as a link: `p1.…`, to stand after the `#` of the bench's address. Its problems go as their codes, the stations and the land of
 * a world that both ends have by name. Read back through the reader of problem sets, so that a broken or hostile link ends in sentences.
 */

import { decimalYear } from "../earth/index.ts";
import { flowText, type LinkWorld, openLink, packGround, readLinkGround, sealLink } from "../scene/index.ts";
import { readProblemCode } from "./problem-code.ts";
import type { ProblemSet } from "./problem-set.ts";
import { setFrom } from "./problem-set-read.ts";
import { PROBLEM_SET_VERSION } from "./problem-set-shape.ts";

/** Letters and digits of a code without its dashes. */
const CODE_LENGTH = 9;

/** The link of a set; `isles` is what every bench has. */
export function problemSetToLink({ title, note, world, problems }: ProblemSet, isles: LinkWorld): string {
  const ground = packGround(world, isles);
  const codes = problems.map(({ code }) => code.replaceAll("-", "")).join("");
  return sealLink(
    JSON.stringify([codes, world.date, title, note, ground.world, ground.stations, ground.land]),
    "problem set",
  );
}

export type ProblemSetLinkRead =
  | {
      readonly ok: true;
      readonly set: ProblemSet;
      /** What a person should know though the link is sound. One sentence each. */
      readonly notes: readonly string[];
    }
  /** One sentence each: lower-case start, no full stop. */
  | { readonly ok: false; readonly faults: readonly string[] };

/** The set of a link, given alone, as `#p1.…` or as a whole address. Never throws. */
export function problemSetFromLink(text: string, isles: LinkWorld): ProblemSetLinkRead {
  const opened = openLink(text, "problem set");
  if (!opened.ok) return { ok: false, faults: [opened.fault] };
  const list = listOf(opened.json);
  if (list === null) return { ok: false, faults: ["the link holds no problem set; make it again"] };
  const [codes, date, title, note, world, stations, land] = list;
  if (![codes, date, title, note].every((value) => typeof value === "string"))
    return { ok: false, faults: ["the link holds no problem set; make it again"] };
  const day = String(date);
  const ground = isDay(day)
    ? readLinkGround({ world, stations, land }, { world: isles, date: day, what: "problem set" })
    : null;
  if (ground !== null && !ground.ok) return ground;
  const { set, faults } = setFrom(
    flowText({
      problems: PROBLEM_SET_VERSION,
      title,
      note,
      date,
      list: dashed(String(codes)),
    }),
    "link",
    () =>
      ground === null
        ? null
        : { ...ground, name: ground.stations === isles.stations ? isles.name : "this set" },
  );
  if (set === null || faults.length > 0)
    return {
      ok: false,
      faults: [...new Set(faults.map(({ message }) => message.replace(/^the file\b/, "the link")))],
    };
  return { ok: true, set, notes: ground?.notes ?? [] };
}

function listOf(json: string): readonly unknown[] | null {
  try {
    const value: unknown = JSON.parse(json);
    return Array.isArray(value) ? value : null;
  } catch {
    // No JSON at all, or nested deeper than the engine follows.
    return null;
  }
}

/** Whether a date can be given to the reader of stations; the reader of sets says what is wrong with another. */
function isDay(date: string): boolean {
  try {
    decimalYear(date);
    return true;
  } catch {
    return false;
  }
}

/** The codes as a file has them; a last one that is cut short stays so, for the reader to refuse. */
function dashed(codes: string): readonly string[] {
  const list: string[] = [];
  for (let at = 0; at < codes.length; at += CODE_LENGTH) {
    const code = codes.slice(at, at + CODE_LENGTH);
    const read = readProblemCode(code);
    list.push(read.kind === "code" ? read.code : code);
  }
  return list;
}
