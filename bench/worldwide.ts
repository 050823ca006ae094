/** Reading the worldwide navaid table: the file that is named, or one of the same size made here. */

import { readFileSync } from "node:fs";
import { readWorldwideTable } from "../src/radio/index.ts";
import { quickestMs } from "./rate.ts";

const SYNTHETIC_ROWS = 11_000;
const DATE = "2026-06-01";

const COLUMNS =
  "id,filename,ident,name,type,frequency_khz,latitude_deg,longitude_deg,elevation_ft,iso_country,dme_frequency_khz,dme_channel,dme_latitude_deg,dme_longitude_deg,dme_elevation_ft,slaved_variation_deg,magnetic_variation_deg,usageType,power,associated_airport";

/** Lines of the report. `path` null: a made table stands in, and the report says so. */
export function worldwide(path: string | null): string[] {
  const text = path === null ? syntheticTable() : readFileSync(path, "utf8");
  let read = readWorldwideTable(text, DATE);
  const ms = quickestMs(5, () => {
    read = readWorldwideTable(text, DATE);
  });
  if (read.kind !== "table") throw new Error(read.message);
  const source = path ?? `made here with ${SYNTHETIC_ROWS} rows, since no file was named`;
  return [
    `worldwide table                                ${ms.toFixed(0)} ms for ${read.counts.rows} rows, ${read.stations.length} stations   (${source})`,
  ];
}

/** Two beacons in five, a third of the stations without declination: about the mixture of the public table. */
function syntheticTable(): string {
  const rows = Array.from({ length: SYNTHETIC_ROWS }, (_, index) => {
    const latDeg = (-75 + (150 * index) / SYNTHETIC_ROWS).toFixed(9);
    const lonDeg = (((index * 137.507764) % 360) - 180).toFixed(9);
    const ident = index.toString(36).toUpperCase().padStart(3, "0");
    const place = `"${ident}","Place ${index}"`;
    if (index % 5 < 2)
      return `${index},"Place_${index}",${place},"NDB",${200 + (index % 300)},${latDeg},${lonDeg},${index % 9000},"ZZ",,,,,,,${(index % 40) - 20},"BOTH","MEDIUM",""`;
    // 112.0 to 117.9 MHz in steps of 0.1: channels 57X to 59X and 70X to 126X by ICAO's pairing.
    const step = index % 60;
    const channel = step < 3 ? 57 + step : 67 + step;
    const slaved = index % 3 === 0 ? "" : ((index % 400) / 10 - 20).toFixed(1);
    return `${index},"Place_${index}",${place},"VOR-DME",${112_000 + 100 * step},${latDeg},${lonDeg},${index % 9000},"ZZ",,"${String(channel).padStart(3, "0")}X",${latDeg},${lonDeg},${index % 9000},${slaved},${(index % 40) - 20},"BOTH","HIGH",""`;
  });
  return [COLUMNS, ...rows].join("\n");
}
