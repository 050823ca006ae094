/** A ground station as the rest of the program knows it, whichever file it came from. */

import type { LatLon } from "../earth/index.ts";

export const STATION_KINDS = ["VOR", "VOR-DME", "VORTAC", "DME", "TACAN", "VOT"] as const;
export type StationKind = (typeof STATION_KINDS)[number];

/** Published service volumes of the bearing part (AIM 1-1-8): terminal, low, high, VOR low, VOR high. */
export const VOR_CLASSES = ["T", "L", "H", "VL", "VH"] as const;
export type VorClass = (typeof VOR_CLASSES)[number];
/** Published service volumes of the distance part (AIM 1-1-8). T, L and H cover the DME of a legacy station too. */
export const DME_CLASSES = ["DL", "DH"] as const;
export type DmeClass = (typeof DME_CLASSES)[number];

/** How the station is working. `test`: it sends T-E-S-T; `no-ident`: it radiates, but its ident is off the air. */
export const STATION_STATUSES = ["on-air", "silent", "test", "no-ident"] as const;
export type StationStatus = (typeof STATION_STATUSES)[number];

export interface Station {
  /** One to four letters or digits, upper case. */
  readonly ident: string;
  readonly name: string;
  readonly kind: StationKind;
  /** The VHF frequency tuned, MHz. For a DME or TACAN alone: the VHF frequency its channel is paired with. */
  readonly frequencyMhz: number;
  /** Paired DME channel such as "86X"; null where the station gives no distance. */
  readonly dmeChannel: string | null;
  readonly position: LatLon;
  /** Height of the antenna, feet above mean sea level. */
  readonly elevationFt: number;
  /** Where the DME stands when it is not beside the VOR; null: at `position`. */
  readonly dmeSite: { readonly position: LatLon; readonly elevationFt: number } | null;
  /** The north its radials are counted from, degrees east of true north. */
  readonly declinationDeg: number;
  /** True where the source gave no declination and the model's variation stands in. */
  readonly declinationEstimated: boolean;
  readonly vorClass: VorClass | null;
  readonly dmeClass: DmeClass | null;
  readonly status: StationStatus;
  /** Effective radiated power toward the horizon, watts. */
  readonly eirpW: number;
}

/** Whether it sends a bearing that a VOR receiver can use. */
export const givesBearing = (station: Station): boolean =>
  station.kind === "VOR" || station.kind === "VOR-DME" || station.kind === "VORTAC" || station.kind === "VOT";

/** Whether it answers a distance interrogation. */
export const givesDistance = (station: Station): boolean =>
  station.kind === "VOR-DME" ||
  station.kind === "VORTAC" ||
  station.kind === "DME" ||
  station.kind === "TACAN";
