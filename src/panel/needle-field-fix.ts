/**
 * The field of a cross fix: for every place, how far the fix of two receivers may be out when each is out by what its check
 * allows. It says in bands what `crossFixAt` says at each place.
 */

import { type LatLon, type PlaceTable, wrap180 } from "../earth/index.ts";
import { crossFixErrorNm } from "./cross-fix.ts";
import { fillCells, type NeedleField } from "./needle-field.ts";
import { fixBand, withFixBand } from "./needle-field-cell.ts";

export interface FixField {
  readonly first: NeedleField;
  readonly second: NeedleField;
  /** What each bearing may be out by, degrees. */
  readonly allowedErrorDeg: number;
}

/** Places, and how the meridians converge from each station of both receivers to each place. */
export interface FixPlaces {
  readonly table: PlaceTable;
  /** For every station of the first field, in its order: `convergenceDeg` from it to each place. */
  readonly convergences1Deg: readonly Float64Array[];
  readonly convergences2Deg: readonly Float64Array[];
}

/** The stations whose convergence a fix needs, in order. */
export const fixStations = ({ stations }: NeedleField): readonly LatLon[] =>
  stations.map(({ reach }) => reach.onAir.station.position);

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
    const index1 = lineStation(first, place);
    const index2 = lineStation(second, place);
    const station1 = first.stations[index1];
    const station2 = second.stations[index2];
    if (station1 === undefined || station2 === undefined) continue;
    // Back from the place to either station, less 180 degrees: as `directionBack`.
    const back1 = at(station1.azimuthDeg, place) + at(places.convergences1Deg[index1], place);
    const back2 = at(station2.azimuthDeg, place) + at(places.convergences2Deg[index2], place);
    const errorNm = crossFixErrorNm({
      distance1Nm: at(station1.distanceNm, place),
      distance2Nm: at(station2.distanceNm, place),
      cutDeg: Math.abs(wrap180(back1 - back2)),
      error1Deg: allowedErrorDeg,
      error2Deg: allowedErrorDeg,
    });
    cells[from + place] = withFixBand(cells[from + place] ?? 0, fixBand(errorNm));
  }
}

/** The station that gives a line of position at a place, by its number; a test signal gives none. */
function lineStation({ stations, bearingFrom }: NeedleField, place: number): number {
  const index = bearingFrom[place] ?? -1;
  return stations[index]?.reach.onAir.station.kind === "VOT" ? -1 : index;
}

const at = (list: Float64Array | undefined, place: number): number => list?.[place] ?? 0;
