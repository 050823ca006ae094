/** Stations as a station file of ours: what turns a table into a file that an instructor can edit. */

import type { Station } from "../radio/index.ts";
import { hasFrame } from "./find-station.ts";
import { STATIONS_VERSION } from "./station-shape.ts";
import { stationLines } from "./station-text.ts";
import { textPair } from "./written-values.ts";

export interface StationFileText {
  readonly text: string;
  /** What a station file cannot hold, each with the reason: one sentence, lower-case start, no full stop. */
  readonly leftOut: readonly { readonly station: Station; readonly reason: string }[];
}

/**
 * A station file of these stations, in their order. A file holds each ident once, so of several stations with one ident
 * the first is written; stations poleward of 80 degrees are left out. What is written reads back to the same stations
 * within the roundings of `written-values.ts`; estimated declinations are left out, to be estimated again.
 */
export function writeStationFile(
  stations: readonly Station[],
  { name = "", about = "" }: { readonly name?: string; readonly about?: string } = {},
): StationFileText {
  const leftOut: { station: Station; reason: string }[] = [];
  const idents = new Set<string>();
  const items: string[] = [];
  for (const station of stations) {
    const reason = !hasFrame(station)
      ? "it stands poleward of 80 degrees, where radials have no use"
      : idents.has(station.ident)
        ? `another station with the ident ${station.ident} stands in the file already`
        : null;
    if (reason !== null) {
      leftOut.push({ station, reason });
      continue;
    }
    idents.add(station.ident);
    items.push(
      `${stationLines(station)
        .map((line) => `  ${line}`)
        .join("\n")}\n`,
    );
  }
  const head = [
    `stations: ${STATIONS_VERSION}\n`,
    name && textPair("name", name),
    about && textPair("about", about),
  ].join("");
  return { text: `${head}list:${items.length > 0 ? `\n${items.join("\n")}` : " []\n"}`, leftOut };
}
