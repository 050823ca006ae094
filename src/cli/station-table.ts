/** Stations as a table for people, and their counts. */

import { latLonText } from "../earth/index.ts";
import { frequencyText, type Station } from "../radio/index.ts";
import { eastWest } from "../reason/index.ts";
import type { StationList } from "./station-list.ts";

const HEADER = ["ident", "kind", "MHz", "channel", "class", "ft", "declination", "position", "name"];

/** One line for each station under a heading, then the rows that were skipped, then the counts. */
export function stationTable(stations: readonly Station[], list: StationList): string {
  const rows = [HEADER, ...stations.map(cells)];
  const widths = HEADER.map((_, column) => Math.max(...rows.map((row) => (row[column] ?? "").length)));
  const lines = rows.map((row) =>
    row
      .map((cell, column) => cell.padEnd(widths[column] ?? 0))
      .join("  ")
      .trimEnd(),
  );
  const skipped = list.skipped.map(({ line, reason }) => `line ${line}: ${reason}`);
  if (skipped.length > 0) lines.push("", "Skipped", ...skipped.map((line) => `  ${line}`));
  return [...lines, "", countsLine(stations, list)].join("\n");
}

function cells(station: Station): string[] {
  const { vorClass, dmeClass, declinationDeg, declinationEstimated } = station;
  return [
    station.ident,
    station.kind,
    frequencyText(station.frequencyMhz),
    station.dmeChannel ?? "",
    [vorClass, dmeClass].filter((part) => part !== null).join("/"),
    String(Math.round(station.elevationFt)),
    `${eastWest(declinationDeg)}${declinationEstimated ? " estimated" : ""}`,
    latLonText(station.position),
    station.name,
  ];
}

const countsLine = (stations: readonly Station[], { skipped, beaconsLeftOut }: StationList): string => {
  const estimated = stations.filter((station) => station.declinationEstimated).length;
  return [
    counted(stations.length, "station"),
    `${estimated} with estimated declination`,
    `${counted(skipped.length, "row")} skipped`,
    `${counted(beaconsLeftOut, "beacon")} left out`,
  ].join(", ");
};

const counted = (count: number, what: string): string => `${count} ${what}${count === 1 ? "" : "s"}`;
