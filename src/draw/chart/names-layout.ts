/** Where the names of airfields, summits and islands are written. A name that would hide something is left out rather than forced in. */

import { magneticDeg, trueFromMagnetic } from "../../earth/index.ts";
import type { Airfield, Land, Peak } from "../../radio/index.ts";
import { distancePx, type PaperPoint } from "../plain/paper.ts";
import { type ChartFrame, drawable, inset, NOTE_PX, onSheet } from "./frame.ts";
import { aroundPoint } from "./label-places.ts";
import {
  bestPlace,
  boxObstacle,
  type Candidate,
  discObstacle,
  type LabelBox,
  type Obstacle,
} from "./placement.ts";
import { type TextStyle, wordsBox } from "./words.tsx";

export interface AirfieldOnSheet {
  readonly airfield: Airfield;
  readonly at: PaperPoint;
  /** Direction of the runway on the paper; null when unknown. */
  readonly runwayDeg: number | null;
  readonly name: PlacedName | null;
}

export interface PeakOnSheet {
  readonly peak: Peak;
  readonly at: PaperPoint;
  readonly name: PlacedName | null;
}

export interface PlacedName {
  readonly text: string;
  readonly box: LabelBox;
  /** Whether its middle lies on an island. */
  readonly onLand: boolean;
}

/** Airfields and summits; what is written at them goes before the labels of stations that nobody has tuned. */
export interface PointNames {
  readonly airfields: readonly AirfieldOnSheet[];
  readonly peaks: readonly PeakOnSheet[];
}

export interface Names extends PointNames {
  readonly islands: readonly PlacedName[];
}

export const AIRFIELD_RADIUS_PX = 4.5;
export const PEAK_RADIUS_PX = 5;
export const NAME_WEIGHT = 10;
/** Nearer than this two signs run into each other. */
const CRAMPED_PX = 14;
/** A name may hide this much, as cost for each pixel of its own area, before it is left out. */
const ACCEPTABLE = 0.5;

export const nameStyle = (typeScale: number) => ({ sizePx: NOTE_PX * typeScale });
export const islandStyle = (typeScale: number): Pick<TextStyle, "sizePx" | "spacingPx"> => ({
  sizePx: (NOTE_PX + 0.5) * typeScale,
  spacingPx: 3.2 * typeScale,
});

/** `taken` is what stands on the sheet already; `variationDeg` turns a painted runway number into a true direction. */
export function layOutPointNames(
  frame: ChartFrame,
  land: Land | null,
  variationDeg: number,
  stations: readonly PaperPoint[],
  taken: readonly Obstacle[],
): PointNames {
  if (land === null) return { airfields: [], peaks: [] };
  const s = frame.typeScale;
  // A sign that would lie under a station's is left out.
  const clear = ({ at }: { readonly at: PaperPoint }): boolean =>
    stations.every((station) => distancePx(at, station) > CRAMPED_PX * s);
  const airfieldPlaces = land.airfields.flatMap((airfield) => placesOf(frame, airfield)).filter(clear);
  const peakPlaces = land.peaks.flatMap((peak) => placesOf(frame, peak)).filter(clear);
  const place = placer(frame, land, [
    ...taken,
    ...airfieldPlaces.map(({ at }) => discObstacle(at, AIRFIELD_RADIUS_PX * s + 3, 4)),
    ...peakPlaces.map(({ at }) => discObstacle(at, PEAK_RADIUS_PX * s + 2, 3)),
  ]);
  const peaks = peakPlaces.map(({ thing: peak, at }) => {
    const text = `${peak.name} ${thousands(peak.elevationFt)}`;
    return {
      peak,
      at,
      name: place(text, aroundPoint(wordsBox(text, nameStyle(s), at), at, (PEAK_RADIUS_PX + 4) * s)),
    };
  });
  const airfields = airfieldPlaces.map(({ thing: airfield, at }) => {
    const text = `${airfield.name} ${thousands(airfield.elevationFt)}`;
    return {
      airfield,
      at,
      runwayDeg: runwayOnPaperDeg(frame, airfield, variationDeg),
      name: place(text, aroundPoint(wordsBox(text, nameStyle(s), at), at, (AIRFIELD_RADIUS_PX + 4) * s)),
    };
  });
  return { airfields, peaks };
}

export function layOutIslandNames(
  frame: ChartFrame,
  land: Land | null,
  taken: readonly Obstacle[],
): PlacedName[] {
  const place = placer(frame, land, taken);
  return (land?.islands ?? []).flatMap((island) => {
    const ring = island.coast.filter((corner) => drawable(frame, corner)).map(frame.projection.toPaper);
    if (ring.length < 3) return [];
    const text = island.name.toUpperCase();
    return place(text, overRing(text, islandStyle(frame.typeScale), ring)) ?? [];
  });
}

/** Settles one name after another, each keeping clear of those before; null for a name that would hide too much. */
function placer(
  frame: ChartFrame,
  land: Land | null,
  taken: readonly Obstacle[],
): (text: string, candidates: readonly Candidate<null>[]) => PlacedName | null {
  const obstacles: Obstacle[] = [...taken];
  const rings = (land?.islands ?? [])
    .filter(({ coast }) => coast.every((corner) => drawable(frame, corner)))
    .map(({ coast }) => coast.map(frame.projection.toPaper));
  return (text, candidates) => {
    const best = bestPlace(candidates, obstacles, inset(frame.window, 4));
    if (!best || best.totalCost > ACCEPTABLE * best.box.widthPx * best.box.heightPx) return null;
    obstacles.push(boxObstacle(best.box, NAME_WEIGHT, 1));
    return { text, box: best.box, onLand: rings.some((ring) => insideRing(best.box, ring)) };
  };
}

/** The names as obstacles for what is placed after them. */
export function namesAsObstacles(names: PointNames, typeScale: number): Obstacle[] {
  const placed = [...names.airfields, ...names.peaks].flatMap(({ name }) => name ?? []);
  return [
    ...placed.map(({ box }) => boxObstacle(box, NAME_WEIGHT, 1)),
    ...names.airfields.map(({ at }) => discObstacle(at, (AIRFIELD_RADIUS_PX + 3) * typeScale, 3)),
    ...names.peaks.map(({ at }) => discObstacle(at, (PEAK_RADIUS_PX + 2) * typeScale, 2)),
  ];
}

/** Places for a name across the middle of a ring, then below it, then above. */
function overRing(
  text: string,
  style: Pick<TextStyle, "sizePx" | "spacingPx">,
  ring: readonly PaperPoint[],
): Candidate<null>[] {
  const left = Math.min(...ring.map(({ x }) => x));
  const right = Math.max(...ring.map(({ x }) => x));
  const top = Math.min(...ring.map(({ y }) => y));
  const bottom = Math.max(...ring.map(({ y }) => y));
  const x = (left + right) / 2;
  const size = wordsBox(text, style, { x, y: (top + bottom) / 2 });
  const clearPx = size.heightPx * 0.8;
  const fits = right - left > size.widthPx * 1.2;
  const heights = fits ? [0.5, 0.62, 0.38, 0.75, 0.25].map((part) => top + (bottom - top) * part) : [];
  return [...heights, bottom + clearPx, top - clearPx].flatMap((y, index) =>
    [0, 0.15, -0.15].map((shift) => ({
      box: { ...size, x: x + shift * (right - left), y },
      cost: index * 10 + Math.abs(shift) * 40,
      value: null,
    })),
  );
}

/** Whether a point lies inside a ring: a line from it to the right crosses the ring an odd number of times. */
function insideRing(point: PaperPoint, ring: readonly PaperPoint[]): boolean {
  let isInside = false;
  let previous = ring.at(-1);
  for (const corner of ring) {
    if (previous && corner.y > point.y !== previous.y > point.y) {
      const t = (point.y - corner.y) / (previous.y - corner.y);
      if (point.x < corner.x + t * (previous.x - corner.x)) isInside = !isInside;
    }
    previous = corner;
  }
  return isInside;
}

function placesOf<T extends Airfield | Peak>(frame: ChartFrame, thing: T): { thing: T; at: PaperPoint }[] {
  if (!drawable(frame, thing.position)) return [];
  const at = frame.projection.toPaper(thing.position);
  return onSheet(frame, at, -6) ? [{ thing, at }] : [];
}

function runwayOnPaperDeg(frame: ChartFrame, airfield: Airfield, variationDeg: number): number | null {
  if (airfield.runway === null) return null;
  const along = trueFromMagnetic(magneticDeg(airfield.runway * 10), variationDeg);
  return frame.projection.trueNorthAngle(airfield.position) + along;
}

const thousands = (value: number): string =>
  Math.round(value)
    .toString()
    .replace(/\B(?=(\d{3})+$)/g, ",");
