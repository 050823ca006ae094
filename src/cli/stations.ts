/** `needlework stations`: reads a station file or the worldwide table, lists what it holds, converts it. */

import { decimalYear } from "../earth/index.ts";
import type { Station } from "../radio/index.ts";
import type { Call, Command } from "./command.ts";
import { CallFault, EXIT_DONE } from "./faults.ts";
import { numberOption } from "./number-option.ts";
import { stationFileText } from "./station-file-text.ts";
import { readStationList } from "./station-list.ts";
import { stationTable } from "./station-table.ts";
import { placeNamed, stationsNear } from "./stations-near.ts";
import { print, STREAM, tell } from "./streams.ts";
import { today } from "./today.ts";
import { writeWhole } from "./write-whole.ts";

/** How far "near" reaches unless it is said: the radius of the largest published service volume. */
const NEAR_NM = 130;
const HALF_ROUND_THE_EARTH_NM = 10_900;

export const STATIONS: Command = {
  name: "stations",
  operands: "FILE",
  operandCount: [1, 1],
  about: [
    "Reads a station file, or the worldwide navaid table when the name ends in .csv, checks it and lists what it holds.",
    "Rows of the table that cannot be used are listed with line and reason; beacons are left out and counted. Where the",
    "table has no declination the magnetic model's variation on the date stands in, and the station is marked so.",
  ].join("\n"),
  options: {
    near: { value: "PLACE", help: 'only stations near an ident of the file, or near "10°18.8′S 002°03.7′E"' },
    within: { value: "NM", help: `how far near reaches (${NEAR_NM})` },
    date: { value: "YYYY-MM-DD", help: "the day for which missing declinations are estimated (today)" },
    convert: { value: "OUT.yaml", help: "write the stations as a station file; - for stdout" },
    json: { help: "print stations, skipped rows, notes and counts as JSON" },
  },
  example: "needlework stations demo/ostrelle.stations.yaml --near TXJ --within 60",
  run: async (call) => {
    const path = call.operands[0] ?? "";
    const output = call.text("convert");
    if (output !== undefined && call.has("json"))
      throw new CallFault("--json and --convert ask for two different things");
    const date = dateOf(call);
    const list = await readStationList(path, date);
    const stations = chosen(call, list.stations);
    if (output !== undefined) {
      writeWhole(output, Buffer.from(stationFileText(stations, path, date)), list.files);
      if (output !== STREAM) tell(`${stations.length} stations written to ${output}`);
    } else if (call.has("json")) {
      const { skipped, notes, beaconsLeftOut } = list;
      const declinationEstimated = stations.filter((station) => station.declinationEstimated).length;
      const counts = {
        stations: stations.length,
        declinationEstimated,
        skipped: skipped.length,
        beaconsLeftOut,
      };
      print(JSON.stringify({ stations, skipped, notes, counts }));
    } else print(stationTable(stations, list));
    return EXIT_DONE;
  },
};

function dateOf(call: Call): string {
  const date = call.text("date") ?? today();
  try {
    decimalYear(date);
    return date;
  } catch {
    throw new CallFault(`--date must be a day of the calendar such as 2026-06-01, but got "${date}"`);
  }
}

function chosen(call: Call, stations: readonly Station[]): readonly Station[] {
  const near = call.text("near");
  const rule = { name: "within", least: 0, most: HALF_ROUND_THE_EARTH_NM, unit: "NM" };
  const withinNm = numberOption(call, rule, NEAR_NM);
  if (near !== undefined) return stationsNear(stations, placeNamed(near, stations), withinNm);
  if (call.text("within") !== undefined)
    throw new CallFault("--within needs --near, the place it counts from");
  return stations;
}
