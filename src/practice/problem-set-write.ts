/** A problem set as a new file. */

import { type LinkWorld, landLines, quotedIfNeeded, stationLines, textPair } from "../scene/index.ts";
import type { Problem } from "./problem.ts";
import type { ProblemSet } from "./problem-set.ts";
import { PROBLEM_SET_VERSION } from "./problem-set-shape.ts";

export interface ProblemSetWriteOptions {
  /** What need not be written, for every reader has it: sets on it name no stations. */
  readonly isles: LinkWorld;
  /** Paths of station files from the folder of the new file; without them stations of one's own are written into it. */
  readonly stations?: string | readonly string[];
  /** Path of the land file; without it a land of one's own is written into the set. */
  readonly land?: string;
}

/** The text of a file that reads back as this set. Behind each code stands its form, as a comment for the person who edits it. */
export function writeProblemSet(
  { title, note, world, problems }: ProblemSet,
  { isles, stations, land }: ProblemSetWriteOptions,
): string {
  const ownStations = stations !== undefined || world.stations !== isles.stations;
  const ownLand = world.land !== null && (ownStations || world.land !== isles.land);
  return [
    `problems: ${PROBLEM_SET_VERSION}\n`,
    title && textPair("title", title),
    note && textPair("note", note),
    `date: ${world.date}\n`,
    ownStations && stationsText(world.stations.flatMap(stationLines), stations),
    ownLand &&
      (land === undefined ? block("land", landLines(world.land)) : `land: ${quotedIfNeeded(land)}\n`),
    block("list", problems.map(listLine)),
  ]
    .filter(Boolean)
    .join("");
}

function stationsText(lines: readonly string[], paths: string | readonly string[] | undefined): string {
  if (paths === undefined) return block("stations", lines);
  const text =
    typeof paths === "string"
      ? quotedIfNeeded(paths)
      : `[${paths.map((path) => JSON.stringify(path)).join(", ")}]`;
  return `stations: ${text}\n`;
}

const block = (key: string, lines: readonly string[]): string =>
  `${key}:\n${lines.map((line) => `  ${line}\n`).join("")}`;

/** A problem in the list, its form behind it for the person who edits the file. */
export const listLine = ({ code, form }: Problem): string => `- ${code}  # ${form.title}`;
