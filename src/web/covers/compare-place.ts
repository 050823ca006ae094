/**
 * A guessed place beside the aircraft's own: how far off, which way, and whether it lies on the radials that the panel gives. Places are
 * told from the stations that may be named: those tuned, whose frequency and ident are not covered.
 */

import {
  geodesicDistanceNm,
  inverse,
  type LatLon,
  latLonText,
  type StationDeg,
  stationFromTrue,
  type TrueDeg,
  threeDigits,
  turnBetween,
} from "../../earth/index.ts";
import { givesBearing, type Station } from "../../radio/index.ts";
import { miles } from "../../reason/index.ts";
import { isCovered, type Situation } from "../../scene/index.ts";

/** Nearer than this is as good as a pencil on a chart, NM. Our judgement. */
const THERE_WITHIN_NM = 1;
/** A guess this near a radial is on it, degrees: one dot; or this near across it, NM. Our judgement. */
const ON_RADIAL_WITHIN_DEG = 2;
const ON_RADIAL_WITHIN_NM = 0.5;
/** A distance this near is right, NM, or as a part of the distance. Our judgement. */
const RIGHT_DISTANCE_WITHIN_NM = 1;
const RIGHT_DISTANCE_WITHIN_PART = 0.05;
/** More stations than this make a sentence nobody reads. */
const MOST_STATIONS = 2;

const WINDS = [
  "north",
  "north-east",
  "east",
  "south-east",
  "south",
  "south-west",
  "west",
  "north-west",
] as const;

/** "246 radial of TXJ, 18.0 NM", or latitude and longitude where no station may be named. */
export function placeWords(situation: Situation, position: LatLon): string {
  const [station] = namedStations(situation);
  const seen = station === undefined ? null : fromStation(station, position);
  if (station === undefined || seen === null) return latLonText(position);
  return `${threeDigits(seen.radial)} radial of ${station.ident}, ${miles(seen.distanceNm)}`;
}

/** How a guessed place compares with where the aircraft is. */
export function comparePlace(situation: Situation, guess: LatLon): string {
  const truth = situation.scene.aircraft.position;
  const line = inverse(guess, truth);
  const offNm = geodesicDistanceNm(guess, truth);
  if (line.kind === "same-place" || offNm < THERE_WITHIN_NM)
    return `Right there: ${miles(offNm)} off, no more than a pencil's point.`;
  const clauses = namedStations(situation)
    .slice(0, MOST_STATIONS)
    .map((station) => stationClause(station, guess, truth))
    .filter((clause) => clause !== "");
  const where = `${miles(offNm)} off: the aircraft is to the ${windOf(line.azimuth)} of your guess`;
  return clauses.length === 0 ? `${where}.` : `${where}. ${capital(clauses.join("; "))}.`;
}

/** The eighth of the compass rose that a direction lies in. */
const windOf = (azimuth: TrueDeg): string => WINDS[Math.round(azimuth / 45) % 8] ?? "north";

/** Tuned stations with radials that the covers let be named, each once, in panel order. */
function namedStations(situation: Situation): Station[] {
  const { covers } = situation.scene;
  const stations = situation.receivers.flatMap(({ station, settings: { name } }) => {
    if (station === null || !givesBearing(station) || station.kind === "VOT") return [];
    const hidden = isCovered(covers, name, "frequency") || isCovered(covers, name, "ident");
    return hidden ? [] : [station];
  });
  return [...new Set(stations)];
}

/** Null overhead, where every radial is as good as another. */
function fromStation(
  station: Station,
  place: LatLon,
): { readonly radial: StationDeg; readonly distanceNm: number } | null {
  const line = inverse(station.position, place);
  if (line.kind === "same-place") return null;
  return { radial: stationFromTrue(line.azimuth, station.declinationDeg), distanceNm: line.distanceNm };
}

/** "on the right radial of TXJ, 6.0 NM too far out"; empty where a radial says nothing. */
function stationClause(station: Station, guess: LatLon, truth: LatLon): string {
  const is = fromStation(station, truth);
  const guessed = fromStation(station, guess);
  if (is === null || guessed === null) return "";
  const offDeg = Math.abs(turnBetween(is.radial, guessed.radial));
  const acrossNm = guessed.distanceNm * Math.sin((Math.min(offDeg, 90) * Math.PI) / 180);
  const tooFarNm = guessed.distanceNm - is.distanceNm;
  const rightDistance =
    Math.abs(tooFarNm) <= Math.max(RIGHT_DISTANCE_WITHIN_NM, RIGHT_DISTANCE_WITHIN_PART * is.distanceNm);
  const distance = rightDistance
    ? "at the right distance"
    : `${miles(Math.abs(tooFarNm))} too ${tooFarNm > 0 ? "far out" : "near"}`;
  const radial = `${threeDigits(is.radial)} radial of ${station.ident}`;
  if (offDeg <= ON_RADIAL_WITHIN_DEG || acrossNm <= ON_RADIAL_WITHIN_NM)
    return `on the right radial of ${station.ident}, ${distance}`;
  if (180 - offDeg <= ON_RADIAL_WITHIN_DEG)
    return `on the opposite side of ${station.ident}: the ${radial} leads the other way`;
  return `${Math.round(offDeg)}° off the ${radial}${rightDistance ? `, ${distance}` : ""}`;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
