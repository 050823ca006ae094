/** Stations written as a station file of ours, which reads back to the same stations. */

import { stringify } from "yaml";
import { defaultEirpW, frequencyText, type Station } from "../radio/index.ts";
import { openNothing, readStations } from "../scene/index.ts";
import { InputFault } from "./faults.ts";

/**
 * The text of a station file. Throws InputFault when the stations cannot stand in one file, as when two share an ident:
 * what is written must read back. `date` (ISO) is the day for which missing declinations were estimated.
 */
export function stationFileText(stations: readonly Station[], from: string, date: string): string {
  const list = stations.map(record);
  const text = `# ${stations.length} stations, converted from ${from}. A training aid, not for navigation.\n${stringify({ stations: 1, list })}`;
  const back = readStations(text, { path: "the station file", open: openNothing, date });
  const [first, ...more] = back.ok ? [] : back.faults;
  if (first === undefined) return text;
  const others = more.length > 0 ? ` (and ${more.length} more)` : "";
  throw new InputFault(
    `${from}: these stations cannot stand in one station file: ${first.message}${others}; choose fewer with --near and --within`,
  );
}

function record(station: Station): Record<string, unknown> {
  const { position, dmeSite, vorClass, dmeClass } = station;
  const classes = [vorClass, dmeClass].filter((part) => part !== null).join("/");
  return {
    ident: station.ident,
    name: station.name,
    kind: station.kind,
    // As text in the trade's two decimals; YAML takes it as the number it is.
    frequency: Number(frequencyText(station.frequencyMhz)),
    at: { lat: position.latDeg, lon: position.lonDeg },
    elevation: station.elevationFt,
    // Left out where it was estimated, so that whoever reads the file knows it too.
    ...(station.declinationEstimated ? {} : { declination: station.declinationDeg }),
    ...(classes === "" ? {} : { class: classes }),
    ...(station.status === "on-air" ? {} : { status: station.status }),
    ...(station.eirpW === defaultEirpW(vorClass) ? {} : { power: station.eirpW }),
    ...(dmeSite === null
      ? {}
      : {
          dmeAt: { lat: dmeSite.position.latDeg, lon: dmeSite.position.lonDeg },
          dmeElevation: dmeSite.elevationFt,
        }),
  };
}
