/**
 * Rings of land made ready once for any view: longitudes run on without a jump where a ring crosses the antimeridian, and each ring
 * knows the box it lies in. A view then clips the few rings near it in degrees, before anything is projected.
 */

/** Longitude and latitude in degrees, east and north positive, as map files list them. */
export type LonLat = readonly number[];

/** Degrees. Longitudes may run beyond 180 either way. */
export interface DegreeBox {
  readonly west: number;
  readonly east: number;
  readonly south: number;
  readonly north: number;
}

export interface OutlineRing {
  /** Longitude and latitude of each point in turn; the last point is joined to the first. */
  readonly lonLatDeg: Float64Array;
  readonly box: DegreeBox;
}

export interface WorldOutlines {
  readonly rings: readonly OutlineRing[];
}

/** A ring that lies wholly this near a pole is the lid that some files put there, no coast. */
const LID_FROM_DEG = 89.5;

/** The outlines of rings as map files give them, closed or not, in either sense; a ring round a pole is closed through the pole. */
export function worldOutlines(rings: Iterable<readonly LonLat[]>): WorldOutlines {
  const outlines: OutlineRing[] = [];
  for (const ring of rings) {
    const lids = ring.every(([, latDeg = 0]) => Math.abs(latDeg) >= LID_FROM_DEG);
    if (ring.length >= 3 && !lids) outlines.push(outlineRing(ring));
  }
  return { rings: outlines };
}

function outlineRing(ring: readonly LonLat[]): OutlineRing {
  const lonLat: number[] = [];
  let lastLon = ring[0]?.[0] ?? 0;
  for (const [lonDeg = 0, latDeg = 0] of ring) {
    lastLon += nearTurn(lonDeg - lastLon);
    lonLat.push(lastLon, latDeg);
  }
  const firstLon = lonLat[0] ?? 0;
  // Back at its first point a whole turn away, the ring has gone round a pole.
  const turned = lastLon + nearTurn(firstLon - lastLon) - firstLon;
  if (Math.abs(turned) > 180) {
    const poleDeg = (lonLat[1] ?? 0) < 0 ? -90 : 90;
    lonLat.push(firstLon + turned, lonLat[1] ?? 0, firstLon + turned, poleDeg, firstLon, poleDeg);
  }
  return { lonLatDeg: Float64Array.from(lonLat), box: boxOf(lonLat) };
}

/** The shorter way round, in [-180, 180]. */
const nearTurn = (byDeg: number): number => (byDeg > 180 ? byDeg - 360 : byDeg < -180 ? byDeg + 360 : byDeg);

function boxOf(lonLat: readonly number[]): DegreeBox {
  let [west, east, south, north] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let at = 0; at < lonLat.length; at += 2) {
    const lon = lonLat[at] ?? 0;
    const lat = lonLat[at + 1] ?? 0;
    west = Math.min(west, lon);
    east = Math.max(east, lon);
    south = Math.min(south, lat);
    north = Math.max(north, lat);
  }
  return { west, east, south, north };
}

/**
 * The parts of the outlines inside a box, as closed rings of longitude and latitude in turn. `box` may lie anywhere along the equator;
 * longitudes come back in its own count. Along the box's edges the rings follow the edges.
 */
export function outlinesWithin({ rings }: WorldOutlines, box: DegreeBox): readonly (readonly number[])[] {
  const parts: (readonly number[])[] = [];
  for (const ring of rings) {
    if (ring.box.north < box.south || ring.box.south > box.north) continue;
    // The same ring, as often as its turns round the earth touch the box.
    const first = Math.ceil((box.west - ring.box.east) / 360);
    const last = Math.floor((box.east - ring.box.west) / 360);
    for (let turn = first; turn <= last; turn++) {
      const part = clipped(ring, turn * 360, box);
      if (part.length >= 6) parts.push(part);
    }
  }
  return parts;
}

const LON = 0;
const LAT = 1;

/** Sutherland and Hodgman's polygon clipping, edge by edge (Communications of the ACM 17, 1974). */
function clipped(ring: OutlineRing, shiftDeg: number, box: DegreeBox): readonly number[] {
  const inLat = cut(ring.lonLatDeg, LAT, box.south, 1, shiftDeg);
  const below = cut(inLat, LAT, box.north, -1, 0);
  const east = cut(below, LON, box.west, 1, 0);
  return cut(east, LON, box.east, -1, 0);
}

/** Keeps the side of the limit where `sign` times the coordinate is larger; `shiftDeg` is added to each longitude first. */
function cut(
  points: ArrayLike<number>,
  axis: typeof LON | typeof LAT,
  limit: number,
  sign: 1 | -1,
  shiftDeg: number,
): number[] {
  const kept: number[] = [];
  const count = points.length;
  if (count === 0) return kept;
  let fromLon = (points[count - 2] ?? 0) + shiftDeg;
  let fromLat = points[count - 1] ?? 0;
  let fromOver = sign * ((axis === LON ? fromLon : fromLat) - limit);
  for (let at = 0; at < count; at += 2) {
    const lon = (points[at] ?? 0) + shiftDeg;
    const lat = points[at + 1] ?? 0;
    const over = sign * ((axis === LON ? lon : lat) - limit);
    if (over >= 0 !== fromOver >= 0) {
      const part = fromOver / (fromOver - over);
      kept.push(
        axis === LON ? limit : fromLon + part * (lon - fromLon),
        axis === LAT ? limit : fromLat + part * (lat - fromLat),
      );
    }
    if (over >= 0) kept.push(lon, lat);
    fromLon = lon;
    fromLat = lat;
    fromOver = over;
  }
  return kept;
}
