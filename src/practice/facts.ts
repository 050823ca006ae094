/** What the reference functions may look at: the numbers of one scene, as the engine knows them, and the task's own. */

import type { MagneticDeg, StationDeg, TrueDeg, Wind } from "../earth/index.ts";
import type { Flag } from "../panel/index.ts";

/** One aircraft and the station it is tuned to. */
export interface Facts {
  /** From the station to the aircraft. */
  readonly azimuth: TrueDeg;
  /** The north the station's radials are counted from, degrees, east positive. */
  readonly declinationDeg: number;
  /** Of the compass, at the aircraft today, degrees, east positive. */
  readonly variationDeg: number;
  /** Selected. */
  readonly course: StationDeg;
  readonly heading: MagneticDeg;
  /** Over the ground, NM. */
  readonly distanceNm: number;
  /** Above the station, NM. */
  readonly heightNm: number;
  readonly tasKt: number;
  readonly wind: Wind;
}

/** What a deviation indicator shows. Right is positive. */
export interface Panel {
  readonly course: StationDeg;
  readonly flag: Flag;
  /** The needle's deflection, degrees, -10 to 10 as drawn; a full needle says only that it is more. */
  readonly needleDeg: number;
}

/** "Inbound on the 246 radial". */
export interface Clearance {
  readonly way: "inbound" | "outbound";
  readonly radial: StationDeg;
  /** The angle at which the line is to be cut, degrees. */
  readonly cutDeg: number;
}

/** Whether a station can be heard, as the published volume, the horizon and the ground have it. */
export interface Reach {
  readonly distanceNm: number;
  /** Of the published service volume at this height; 0 outside its heights. */
  readonly classRadiusNm: number;
  readonly lineOfSightNm: number;
  readonly terrainClear: boolean;
}

/** What a receiver tells about its own signal. */
export interface Health {
  readonly signalValid: boolean;
  readonly identHeard: string | null;
  readonly identWanted: string;
  /** As drawn, parked in the middle without a signal. */
  readonly needleDeg: number;
}

export type CheckPlace = "ground" | "test signal" | "airborne" | "two receivers";

/** A leg between two stations. */
export interface Leg {
  readonly lengthNm: number;
  /** How far the first station reaches by its class, NM. */
  readonly classRadiusNm: number;
  /** Where the route bends or the chart puts the change; null on a straight leg without one. */
  readonly changeAtNm: number | null;
}
