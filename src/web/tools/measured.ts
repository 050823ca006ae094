/**
 * What a ruler on the chart reads between two ends: distance, true and magnetic bearing, and at a station its radial. An end follows
 * what it was laid at: measured from the aircraft, the line moves with it. Pure.
 */

import {
  inverse,
  type LatLon,
  latLonText,
  type MagneticDeg,
  magneticFromTrue,
  type StationDeg,
  type TrueDeg,
  threeDigits,
  turned,
  variation,
} from "../../earth/index.ts";
import { givesBearing, radialToward, type Station } from "../../radio/index.ts";
import { isCovered, type Scene } from "../../scene/index.ts";

export type MeasureEnd =
  | { readonly kind: "aircraft" }
  | { readonly kind: "station"; readonly ident: string }
  | { readonly kind: "airfield"; readonly name: string }
  | { readonly kind: "place"; readonly at: LatLon };

export interface Measure {
  readonly from: MeasureEnd;
  readonly to: MeasureEnd;
}

/** An end as it stands in the scene. */
export interface EndInScene {
  readonly place: LatLon;
  /** "TXJ", "Tamsel Lagoon", "the aircraft"; null for a bare place. */
  readonly name: string | null;
  /** A station whose radials mean something. */
  readonly station: Station | null;
}

/** Null where the scene no longer has it, or where a cover hides it. */
export function endInScene(end: MeasureEnd, scene: Scene): EndInScene | null {
  switch (end.kind) {
    case "aircraft": {
      if (!aircraftIsSeen(scene)) return null;
      return { place: scene.aircraft.position, name: "the aircraft", station: null };
    }
    case "station": {
      const station = scene.stations.find(({ ident }) => ident === end.ident);
      if (station === undefined) return null;
      return { place: station.position, name: station.ident, station: hasRadials(station) ? station : null };
    }
    case "airfield": {
      const airfield = scene.land?.airfields.find(({ name }) => name === end.name);
      return airfield === undefined ? null : { place: airfield.position, name: airfield.name, station: null };
    }
    case "place":
      return { place: end.at, name: null, station: null };
  }
}

export const aircraftIsSeen = ({ covers }: Scene): boolean =>
  !isCovered(covers, null, "aircraft") && !isCovered(covers, null, "chart");

/** A TACAN's are counted as a VOR's are; a test signal sends one and the same everywhere. */
const hasRadials = (station: Station): boolean =>
  station.kind !== "VOT" && (givesBearing(station) || station.kind === "TACAN");

export interface Measured {
  readonly from: EndInScene;
  readonly to: EndInScene;
  readonly distanceNm: number;
  /** Bearing at the first end; null where both ends are one place. */
  readonly bearing: { readonly true: TrueDeg; readonly magnetic: MagneticDeg } | null;
  /** The radial of the station at the first end that leads to the second. */
  readonly radialOut: StationDeg | null;
  /** The radial of the station at the second end that the first end is on. */
  readonly radialIn: StationDeg | null;
}

/**
 * What the ruler reads; null where an end is not to be seen. Magnetic by the variation at the first end, on the scene's date and at the
 * aircraft's altitude.
 */
export function measured({ from, to }: Measure, scene: Scene): Measured | null {
  const start = endInScene(from, scene);
  const end = endInScene(to, scene);
  if (start === null || end === null) return null;
  const line = inverse(start.place, end.place);
  if (line.kind === "same-place")
    return { from: start, to: end, distanceNm: 0, bearing: null, radialOut: null, radialIn: null };
  const { altitudeFt } = scene.aircraft;
  const { variationDeg } = variation({ position: start.place, altitudeFt, date: scene.date });
  return {
    from: start,
    to: end,
    distanceNm: line.distanceNm,
    bearing: { true: line.azimuth, magnetic: magneticFromTrue(line.azimuth, variationDeg) },
    radialOut: start.station && radialToward(start.station, line.azimuth),
    radialIn: end.station && radialToward(end.station, turned(line.arrivalAzimuth, 180)),
  };
}

/** "18.0 NM": to the tenth, which is what a DME shows. */
export const milesText = (distanceNm: number): string => `${distanceNm.toFixed(1)} NM`;

/** The reading in one or two lines: first what is asked most, then the bearings. */
export function measuredLines({ from, to, distanceNm, bearing, radialOut, radialIn }: Measured): string[] {
  const miles = milesText(distanceNm);
  if (bearing === null) return [`${miles}, the same place`];
  const bearings = `${threeDigits(bearing.true)} true, ${threeDigits(bearing.magnetic)} magnetic`;
  if (radialOut !== null) {
    const onward = radialIn === null ? "" : `, on ${to.name} radial ${threeDigits(radialIn)}`;
    return [`from ${from.name}: radial ${threeDigits(radialOut)}, ${miles}`, bearings + onward];
  }
  if (radialIn !== null) return [`to ${to.name}: ${miles}, on its radial ${threeDigits(radialIn)}`, bearings];
  const named = from.name === null ? (to.name === null ? "" : `to ${to.name}: `) : `from ${from.name}: `;
  return [named + miles, bearings];
}

/** The reading as one sentence, with both ends named: for who does not see the line. */
export function measuredSentence(reading: Measured): string {
  const [first = "", ...bearings] = measuredLines(reading);
  const other = first.startsWith("from")
    ? ` to ${endWords(reading.to)}`
    : first.startsWith("to")
      ? ` from ${endWords(reading.from)}`
      : ` from ${endWords(reading.from)} to ${endWords(reading.to)}`;
  return [first + other, ...bearings].join("; ");
}

/** The end's name, or its latitude and longitude. */
export const endWords = ({ name, place }: EndInScene): string => name ?? latLonText(place);
