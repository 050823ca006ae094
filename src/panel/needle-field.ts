/**
 * The needle field: for every place of a chart, at one altitude, what a receiver would measure there. It answers as
 * `readReceiver` does at each place, cell for cell (`test/needle-field.test.ts`), having worked out beforehand all that does not
 * change from place to place. Places come as a table of earth-centred positions, such as a row of the chart.
 */

import { azimuthDistances, type PlaceTable, wrap360 } from "../earth/index.ts";
import { fieldMicrovoltPerM, serviceOf, slantRangeNm } from "../radio/index.ts";
import { type Airwaves, channelKhz, type OnAir } from "./airwaves.ts";
import {
  binOfRadial,
  type FieldReception,
  NO_BIN,
  packCell,
  receptionCode,
  TEST_SIGNAL_BIN,
} from "./needle-field-cell.ts";
import { type Reach, reachAt } from "./needle-field-reach.ts";
import { type Shadow, shadowAt } from "./needle-field-shadow.ts";
import type { ReceiverSettings } from "./reading.ts";
import { isUndisturbed } from "./reception.ts";

/** One station on the channel, and the places of the last table as seen from it. */
export interface FieldStation {
  readonly reach: Reach;
  readonly shadow: Shadow;
  readonly azimuthDeg: Float64Array;
  readonly distanceNm: Float64Array;
}

/** A receiver's field. Its arrays are written anew by each `fillCells`. */
export interface NeedleField {
  readonly bearingErrorDeg: number;
  readonly stations: readonly FieldStation[];
  /** Everywhere the same where no station uses the channel. */
  readonly emptyCell: number;
  /** By place: which of `stations` gives the bearing; -1 where none does. */
  readonly bearingFrom: Int16Array;
}

/** Which receiver's field, and how high the aircraft is. */
export interface FieldSettings extends Pick<ReceiverSettings, "frequencyMhz" | "bearingErrorDeg"> {
  /** Feet above mean sea level. */
  readonly altitudeFt: number;
  /** As many places as one table may hold. */
  readonly room: number;
}

/** Makes a receiver's field ready at an altitude. */
export function needleField(air: Airwaves, settings: FieldSettings): NeedleField {
  const { frequencyMhz, bearingErrorDeg, altitudeFt, room } = settings;
  const onChannel = air.byChannelKhz.get(channelKhz(frequencyMhz)) ?? [];
  const nothing = serviceOf(frequencyMhz) === "localizer" ? "localizer-channel" : "no-station";
  return {
    bearingErrorDeg,
    stations: onChannel.map((onAir) => fieldStation(onAir, altitudeFt, room)),
    emptyCell: packCell(NO_BIN, receptionCode(nothing)),
    bearingFrom: new Int16Array(room),
  };
}

function fieldStation(onAir: OnAir, altitudeFt: number, room: number): FieldStation {
  const reach = reachAt(onAir, altitudeFt);
  return {
    reach,
    shadow: shadowAt(onAir.site.terrain, altitudeFt, reach.horizonNm),
    azimuthDeg: new Float64Array(room),
    distanceNm: new Float64Array(room),
  };
}

/**
 * Writes the cell of every place of a table into `cells`, beginning at `from`. Throws RangeError when the field has no room for so
 * many places.
 */
export function fillCells(field: NeedleField, places: PlaceTable, cells: Uint32Array, from: number): void {
  const { stations, bearingFrom } = field;
  for (const { reach, azimuthDeg, distanceNm } of stations)
    azimuthDistances(reach.onAir.site.frame, places, azimuthDeg, distanceNm);
  const [only] = stations;
  for (let place = 0; place < places.count; place++) {
    const tuned = stations.length > 1 ? strongest(stations, place) : NO_RIVAL;
    const station = tuned.index < 0 ? only : stations[tuned.index];
    const cell =
      station === undefined
        ? field.emptyCell
        : tuned.disturbed
          ? TWO_AT_ONCE
          : cellFrom(field, station, place);
    cells[from + place] = cell;
    bearingFrom[place] = (cell & 0xffff) === NO_BIN ? -1 : Math.max(0, tuned.index);
  }
}

const code = (reception: FieldReception): number => packCell(NO_BIN, receptionCode(reception));
const TWO_AT_ONCE = code("two-at-once");
const OVERHEAD = code("overhead");
const BELOW_HORIZON = code("below-horizon");
const TERRAIN = code("terrain");
const TOO_WEAK = code("too-weak");
const MUTE = { silent: code("silent"), "distance-only": code("distance-only") } as const;

/** Receptions with a bearing, by strength and published volume. */
const GOOD_INSIDE = receptionCode("good-inside");
const WEAK = receptionCode("weak-inside") - GOOD_INSIDE;
const OUTSIDE = receptionCode("good-outside") - GOOD_INSIDE;
const UNKNOWN = receptionCode("good-unknown") - GOOD_INSIDE;

/** A station alone at a place, in the order of `receive`: why it is not heard, then overhead, then how well. */
function cellFrom({ bearingErrorDeg }: NeedleField, station: FieldStation, place: number): number {
  const { reach } = station;
  const distanceNm = station.distanceNm[place] ?? 0;
  const unheard = unheardCell(station, place);
  if (unheard !== null) return unheard;
  if (distanceNm < reach.coneNm) return OVERHEAD;
  const strength = distanceNm <= reach.goodNm ? 0 : WEAK;
  const volume = reach.serviceNm === null ? UNKNOWN : distanceNm <= reach.serviceNm ? 0 : OUTSIDE;
  const { kind, declinationDeg } = reach.onAir.station;
  // As `radialToward` in radio, on plain numbers, and then what the receiver adds.
  const radialDeg = within360((station.azimuthDeg[place] ?? 0) - declinationDeg);
  const bin = kind === "VOT" ? TEST_SIGNAL_BIN : binOfRadial(within360(radialDeg + bearingErrorDeg));
  return packCell(bin, GOOD_INSIDE + strength + volume);
}

/** The cell of a place where a station's bearing is not heard; null where it is. */
function unheardCell({ reach, shadow, azimuthDeg, distanceNm }: FieldStation, place: number): number | null {
  if (reach.mute !== null) return MUTE[reach.mute];
  const nm = distanceNm[place] ?? 0;
  if (nm > reach.horizonNm) return BELOW_HORIZON;
  if (shadow(azimuthDeg[place] ?? 0, nm)) return TERRAIN;
  return nm > reach.heardNm ? TOO_WEAK : null;
}

/** `wrap360` without its division where nothing is to be wrapped. */
const within360 = (deg: number): number => (deg >= 0 && deg < 360 ? deg : wrap360(deg));

interface Tuned {
  readonly index: number;
  /** Another station is heard, and not weak enough beside it. */
  readonly disturbed: boolean;
}
const NO_RIVAL: Tuned = { index: -1, disturbed: false };

/** The strongest of the stations heard at a place; where none is heard, the nearest. */
function strongest(stations: readonly FieldStation[], place: number): Tuned {
  let best = { index: -1, microvolt: 0 };
  let second = 0;
  let nearest = { index: 0, nm: Number.POSITIVE_INFINITY };
  stations.forEach((station, index) => {
    const nm = station.distanceNm[place] ?? 0;
    if (nm < nearest.nm) nearest = { index, nm };
    if (unheardCell(station, place) !== null) return;
    const { onAir, heightAboveFt } = station.reach;
    const microvolt = fieldMicrovoltPerM(onAir.station.eirpW, slantRangeNm(nm, heightAboveFt));
    if (best.index < 0 || microvolt > best.microvolt) {
      second = Math.max(second, best.microvolt);
      best = { index, microvolt };
    } else second = Math.max(second, microvolt);
  });
  if (best.index < 0) return { index: nearest.index, disturbed: false };
  return { index: best.index, disturbed: second > 0 && !isUndisturbed(best.microvolt, second) };
}
