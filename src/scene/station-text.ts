/** A station as our files write it, leaving out what follows by itself. */

import { defaultEirpW, frequencyText, type Station } from "../radio/index.ts";
import { declinationText, numberText, positionText, quotedIfNeeded } from "./written-values.ts";

/** The lines of one item of a list of stations, `- ident: HJL` and the keys under it, without indentation. */
export function stationLines(station: Station): string[] {
  const { ident, name, status, eirpW, dmeSite } = station;
  const serviceClass = [station.vorClass, station.dmeClass].filter(Boolean).join("/");
  const pairs: [key: string, value: string | null][] = [
    ["ident", quotedIfNeeded(ident)],
    ["name", name === ident ? null : quotedIfNeeded(name)],
    ["kind", station.kind],
    ["frequency", frequencyText(station.frequencyMhz)],
    ["at", positionText(station.position)],
    ["elevation", numberText(station.elevationFt, 1)],
    // An estimate is left to be estimated again, so that it stays known for one.
    ["declination", station.declinationEstimated ? null : declinationText(station.declinationDeg)],
    ["class", serviceClass || null],
    ["status", status === "on-air" ? null : status],
    ["power", eirpW === defaultEirpW(station.vorClass) ? null : numberText(eirpW, 1)],
    ["dmeAt", dmeSite && positionText(dmeSite.position)],
    ["dmeElevation", dmeSite && numberText(dmeSite.elevationFt, 1)],
  ];
  return pairs
    .filter(([, value]) => value !== null)
    .map(([key, value], index) => `${index === 0 ? "- " : "  "}${key}: ${value}`);
}
