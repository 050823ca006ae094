/**
 * One row of the worldwide navaid table as a station. What the table does not tell stays unknown:
 * its `power` and `usageType` say on which airways a station serves, not which service volume is published for it (a
 * HIGH/BOTH station may be an H or a VH, and outside the United States neither), so classes are null.
 */

import { geodesicDistanceNm, type LatLon, latLon } from "../earth/index.ts";
import { explainFrequency, frequencyText, readFrequency, sameChannel, serviceOf } from "./channel-plan.ts";
import { type DmeChannel, pairedDmeChannel, readDmeChannel } from "./dme-pairing.ts";
import { defaultEirpW } from "./field-strength.ts";
import type { Station, StationKind } from "./station.ts";

/** The columns that are read; the table has more, and they may stand in any order. */
export const WORLDWIDE_COLUMNS = [
  "id",
  "ident",
  "name",
  "type",
  "frequency_khz",
  "latitude_deg",
  "longitude_deg",
  "elevation_ft",
  "dme_frequency_khz",
  "dme_channel",
  "dme_latitude_deg",
  "dme_longitude_deg",
  "dme_elevation_ft",
  "slaved_variation_deg",
] as const;
export type WorldwideColumn = (typeof WORLDWIDE_COLUMNS)[number];
export type WorldwideValues = Readonly<Record<WorldwideColumn, string>>;

export type RowRead =
  | { readonly kind: "station"; readonly station: Station; readonly notes: readonly string[] }
  /** A beacon without a bearing for a VOR receiver and without a distance: left out, not broken. */
  | { readonly kind: "ndb" }
  | { readonly kind: "broken"; readonly reason: string };

/** A value that cannot be used; caught where the row is read, and its message becomes the row's reason. */
class BadValue extends Error {}

/** A DME nearer to its VOR than this counts as beside it, NM (300 ft; a DME is good to half a mile). */
const SAME_SITE_NM = 0.05;
/** A DME farther from its VOR than this is a slip in the table, NM; the widest in it stands 1.4 NM away. */
const FARTHEST_DME_NM = 10;
const LOWEST_FT = -1500;
const HIGHEST_FT = 30_000;

/**
 * The row as a station, or why it cannot be one. `variationAt` gives the variation that stands in where the row has no
 * declination: degrees east positive, at a place and a height in feet.
 */
export function stationFromRow(
  row: WorldwideValues,
  variationAt: (position: LatLon, altitudeFt: number) => number,
): RowRead {
  try {
    return readRow(row, variationAt);
  } catch (error) {
    if (error instanceof BadValue) return { kind: "broken", reason: error.message };
    throw error;
  }
}

interface Part {
  readonly kind: StationKind;
  readonly frequencyMhz: number;
  readonly channel: DmeChannel | null;
}

function readRow(
  row: WorldwideValues,
  variationAt: (position: LatLon, altitudeFt: number) => number,
): RowRead {
  if (row.type === "NDB") return { kind: "ndb" };
  const notes: string[] = [];
  const part = readPart(row, notes);
  const ident = row.ident.toUpperCase();
  if (!/^[A-Z0-9]{1,4}$/.test(ident))
    throw new BadValue(`ident "${row.ident}" is not one to four letters or figures`);
  const bearingSite = readPlace(row, "latitude_deg", "longitude_deg");
  if (bearingSite === null) throw new BadValue("latitude and longitude are missing");
  const dmePlace = readPlace(row, "dme_latitude_deg", "dme_longitude_deg");
  const elevation = readNumber(row, "elevation_ft", LOWEST_FT, HIGHEST_FT);
  const dmeElevation = readNumber(row, "dme_elevation_ft", LOWEST_FT, HIGHEST_FT);
  const apartNm = dmePlace === null ? 0 : geodesicDistanceNm(bearingSite, dmePlace);
  if (apartNm > FARTHEST_DME_NM)
    throw new BadValue(`its DME is placed ${apartNm.toFixed(0)} NM away from it, which cannot be`);
  // A beacon's DME is kept without the beacon, so its own site is the station's.
  const isBeaconDme = row.type === "NDB-DME";
  const position = isBeaconDme && dmePlace !== null ? dmePlace : bearingSite;
  const elevationFt = (isBeaconDme ? dmeElevation : null) ?? elevation ?? dmeElevation ?? 0;
  if (elevation === null && dmeElevation === null) notes.push("no elevation in the table; sea level assumed");
  const hasOwnSite = dmePlace !== null && !isBeaconDme && part.channel !== null && apartNm > SAME_SITE_NM;
  const declination = readNumber(row, "slaved_variation_deg", -180, 180);
  const station: Station = {
    ident,
    name: row.name,
    kind: part.kind,
    frequencyMhz: part.frequencyMhz,
    dmeChannel: part.channel?.text ?? null,
    position,
    elevationFt,
    dmeSite: hasOwnSite ? { position: dmePlace, elevationFt: dmeElevation ?? elevationFt } : null,
    declinationDeg: declination ?? variationAt(position, elevationFt),
    declinationEstimated: declination === null,
    vorClass: null,
    dmeClass: null,
    status: "on-air",
    eirpW: defaultEirpW(null),
  };
  return { kind: "station", station, notes };
}

/** What the row sends, and on which channel. Adds a note where the table contradicts itself. */
function readPart(row: WorldwideValues, notes: string[]): Part {
  switch (row.type) {
    case "VOR":
      return { kind: "VOR", frequencyMhz: readVorFrequency(row), channel: null };
    case "VOR-DME":
    case "VORTAC":
      return pairedPart(row, row.type, notes);
    case "DME":
    case "TACAN":
      return distancePart(row, row.type, readKhz(row, "frequency_khz"));
    case "NDB-DME":
      return distancePart(row, "DME", readKhz(row, "dme_frequency_khz"));
    default:
      throw new BadValue(`type "${row.type}" is none of VOR, VOR-DME, VORTAC, DME, TACAN, NDB and NDB-DME`);
  }
}

function pairedPart(row: WorldwideValues, kind: "VOR-DME" | "VORTAC", notes: string[]): Part {
  const frequencyMhz = readVorFrequency(row);
  const channel = readChannel(row) ?? pairedDmeChannel(frequencyMhz);
  if (channel?.vhfMhz != null && sameChannel(channel.vhfMhz, frequencyMhz))
    return { kind, frequencyMhz, channel };
  const tunedAs = channel?.vhfMhz == null ? "no VHF frequency" : frequencyText(channel.vhfMhz);
  notes.push(
    `its DME channel ${channel?.text} goes with ${tunedAs}, not with ${frequencyText(frequencyMhz)}; kept as a VOR without distance`,
  );
  return { kind: "VOR", frequencyMhz, channel: null };
}

function distancePart(row: WorldwideValues, kind: "DME" | "TACAN", writtenMhz: number | null): Part {
  const written = readChannel(row);
  if (written !== null && written.vhfMhz === null)
    throw new BadValue(`channel ${written.text} has no VHF partner, so a VOR receiver cannot tune it`);
  if (written === null && writtenMhz === null)
    throw new BadValue("neither a DME channel nor its frequency is given");
  const channel = written ?? pairedDmeChannel(writtenMhz ?? 0);
  if (channel === null || channel.vhfMhz === null)
    throw new BadValue(explainFrequency(writtenMhz ?? 0).explanation);
  if (writtenMhz !== null && !sameChannel(writtenMhz, channel.vhfMhz))
    throw new BadValue(
      `frequency ${frequencyText(writtenMhz)} and DME channel ${channel.text} (paired with ${frequencyText(channel.vhfMhz)}) contradict each other`,
    );
  return { kind, frequencyMhz: channel.vhfMhz, channel };
}

function readVorFrequency(row: WorldwideValues): number {
  const frequencyMhz = readKhz(row, "frequency_khz");
  if (frequencyMhz === null) throw new BadValue("frequency_khz is missing");
  if (serviceOf(frequencyMhz) !== "vor") throw new BadValue(explainFrequency(frequencyMhz).explanation);
  return frequencyMhz;
}

function readKhz(row: WorldwideValues, column: WorldwideColumn): number | null {
  const khz = readNumber(row, column, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY);
  if (khz === null) return null;
  const read = readFrequency(khz / 1000);
  if (read.kind === "unreadable") throw new BadValue(`${column} ${row[column]} is not a frequency in kHz`);
  return read.frequencyMhz;
}

function readChannel(row: WorldwideValues): DmeChannel | null {
  if (row.dme_channel.trim() === "") return null;
  const read = readDmeChannel(row.dme_channel);
  if (read.kind === "unreadable") throw new BadValue(read.reason);
  return read.channel;
}

function readPlace(
  row: WorldwideValues,
  latitude: WorldwideColumn,
  longitude: WorldwideColumn,
): LatLon | null {
  const latDeg = readNumber(row, latitude, -90, 90);
  const lonDeg = readNumber(row, longitude, -180, 180);
  if (latDeg === null && lonDeg === null) return null;
  if (latDeg === null) throw new BadValue(`${latitude} is missing`);
  if (lonDeg === null) throw new BadValue(`${longitude} is missing`);
  return latLon(latDeg, lonDeg);
}

/** The number in a column, null where it is empty. */
function readNumber(
  row: WorldwideValues,
  column: WorldwideColumn,
  least: number,
  most: number,
): number | null {
  const text = row[column].trim();
  if (text === "") return null;
  const value = Number(text);
  if (!/^[-+]?\d+(\.\d+)?(e[-+]?\d+)?$/i.test(text) || !Number.isFinite(value))
    throw new BadValue(`${column} "${row[column]}" is not a number`);
  if (value < least || value > most) throw new BadValue(`${column} ${text} lies outside ${least} to ${most}`);
  return value + 0;
}
