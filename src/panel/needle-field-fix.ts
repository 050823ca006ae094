/**
 * The field of a cross fix: for every place, how far the fix of two receivers may be out when each is out by what its check
 * allows. It says in bands what `crossFixAt` says at each place.
 */

import { directionBack, type LatLon, type PlaceTable, trueDeg, turnBetween } from "../earth/index.ts";
import { crossFixErrorNm } from "./cross-fix.ts";
import { type FieldStation, fillCells, type NeedleField } from "./needle-field.ts";
import { fixBand, withFixBand } from "./needle-field-cell.ts";

export interface FixField {
  readonly first: NeedleField;
  readonly second: NeedleField;
  /** What each bearing may be out by, degrees. */
  readonly allowedErrorDeg: number;
}

/** The same places twice: in earth-centred metres, and in degrees. */
export interface FixPlaces {
  readonly table: PlaceTable;
  readonly latDeg: Float64Array;
  readonly lonDeg: Float64Array;
}

/**
 * Writes the cell of every place into `cells`, beginning at `from`: the first receiver's own, and in it the band of the fix.
 * `spare` has room for as many places, and is written over.
 */
export function fillFixCells(
  field: FixField,
  places: FixPlaces,
  cells: Uint32Array,
  from: number,
  spare: Uint32Array,
): void {
  const { first, second, allowedErrorDeg } = field;
  fillCells(first, places.table, cells, from);
  fillCells(second, places.table, spare, 0);
  for (let place = 0; place < places.table.count; place++) {
    const station1 = lineStation(first, place);
    const station2 = lineStation(second, place);
    if (station1 === null || station2 === null) continue;
    const here: LatLon = { latDeg: places.latDeg[place] ?? 0, lonDeg: places.lonDeg[place] ?? 0 };
    const errorNm = crossFixErrorNm({
      distance1Nm: station1.distanceNm[place] ?? 0,
      distance2Nm: station2.distanceNm[place] ?? 0,
      cutDeg: Math.abs(turnBetween(backFrom(here, station1, place), backFrom(here, station2, place))),
      error1Deg: allowedErrorDeg,
      error2Deg: allowedErrorDeg,
    });
    cells[from + place] = withFixBand(cells[from + place] ?? 0, fixBand(errorNm));
  }
}

/** The station that gives a line of position at a place; a test signal gives none. */
function lineStation({ stations, bearingFrom }: NeedleField, place: number): FieldStation | null {
  const station = stations[bearingFrom[place] ?? -1];
  return station === undefined || station.reach.onAir.station.kind === "VOT" ? null : station;
}

const backFrom = (here: LatLon, { reach, azimuthDeg }: FieldStation, place: number) =>
  directionBack(reach.onAir.station.position, here, trueDeg(azimuthDeg[place] ?? 0));
