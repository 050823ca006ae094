/**
 * The ground under a scene, as far as radio and chart need it: coast and relief to draw, peaks that block signals,
 * airfields. A peak is a cone: full height in the middle, sea level at its base radius.
 */

import type { LatLon } from "../earth/index.ts";

export interface Peak {
  readonly name: string;
  readonly position: LatLon;
  /** Feet above mean sea level. */
  readonly elevationFt: number;
  /** Where the cone meets sea level, NM from the summit. */
  readonly baseRadiusNm: number;
}

export interface Airfield {
  readonly name: string;
  readonly position: LatLon;
  readonly elevationFt: number;
  /** Runway direction as painted: 1 to 36 tens of degrees magnetic, the lower number; null when unknown. */
  readonly runway: number | null;
}

export interface Island {
  readonly name: string;
  /** Closed ring, first point not repeated, in either sense. */
  readonly coast: readonly LatLon[];
}

export interface ReliefArea {
  /** The land inside the ring rises above this, feet. */
  readonly aboveFt: number;
  readonly ring: readonly LatLon[];
}

export interface Land {
  readonly name: string;
  readonly islands: readonly Island[];
  /** Lowest first, so that higher ground is drawn over lower. */
  readonly relief: readonly ReliefArea[];
  readonly peaks: readonly Peak[];
  readonly airfields: readonly Airfield[];
}
