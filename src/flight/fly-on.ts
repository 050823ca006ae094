/**
 * An aircraft flown on: its heading in the wind, standard-rate turns, a steady climb. Kinematics only: it rolls in and out at once and
 * keeps its true airspeed along the ground plane. Heading is magnetic, and its north is looked up anew on the way, so a long leg on one
 * heading bends as a real one does. Exact in form (arcs, midpoint rule), so a flight cut into other steps leads to the same place.
 */

import {
  convergenceDeg,
  direct,
  type LatLon,
  type MadeGood,
  type MagneticDeg,
  type MagneticModel,
  magneticModel,
  STANDARD_RATE_DEG_PER_S,
  trackForHeading,
  trueDeg,
  trueFromMagnetic,
  turnBetween,
  turned,
  type Wind,
} from "../earth/index.ts";
import type { Aircraft } from "../scene/index.ts";

/** Common practice for a light aircraft, and the least that controllers count on (FAA AIM 4-4-10). */
export const CLIMB_FT_PER_MIN = 500;

const S_PER_H = 3600;

/** The longest piece taken at once, seconds. In ten of them at 600 kt a track bends by less than 0.05 degree up to 60 degrees of latitude. */
const LONGEST_PIECE_S = 10;
/** In a turn the north changes faster; the arc itself is exact. */
const LONGEST_TURN_PIECE_S = 2;
/** Nearer than this a turn is over, degrees, and a climb, feet: what is left is the last figure of a sum. */
const TURNED_WITHIN_DEG = 1e-9;
const CLIMBED_WITHIN_FT = 1e-6;

/** An aircraft and what it has been told. */
export interface Flight {
  readonly aircraft: Aircraft;
  /** The heading it turns to, the shorter way round (to the right when it is opposite); null while it holds its heading. */
  readonly turningTo: MagneticDeg | null;
  /** The altitude it climbs or descends to, feet above mean sea level; null in level flight. */
  readonly climbingToFt: number | null;
}

/** What it flies in. */
export interface Air {
  readonly wind: Wind;
  /** ISO date, for the variation. */
  readonly date: string;
}

export const levelFlight = (aircraft: Aircraft): Flight => ({
  aircraft,
  turningTo: null,
  climbingToFt: null,
});

/**
 * The flight so many seconds later; the very same object after none. A turn or climb that is over by then is no longer ordered.
 * Throws RangeError on a negative or endless time, and as `trackForHeading` and `variation` do.
 */
export function flyOn(flight: Flight, air: Air, stepS: number): Flight {
  if (!(stepS >= 0 && stepS < Number.POSITIVE_INFINITY))
    throw new RangeError(`a flight goes on for 0 s or more, got ${stepS}`);
  const model = magneticModel(air.date);
  let now = flight;
  let leftS = stepS;
  while (leftS > 0) {
    const turnS = turnSecondsLeft(now);
    const pieceS =
      turnS > 0 ? Math.min(leftS, turnS, LONGEST_TURN_PIECE_S) : Math.min(leftS, LONGEST_PIECE_S);
    now = flyPiece(now, air.wind, model, pieceS);
    leftS -= pieceS;
  }
  return now;
}

const turnSecondsLeft = ({ aircraft, turningTo }: Flight): number =>
  turningTo === null ? 0 : Math.abs(turnBetween(aircraft.heading, turningTo)) / STANDARD_RATE_DEG_PER_S;

/** One piece, in which the aircraft turns all the time or not at all. */
function flyPiece(flight: Flight, wind: Wind, model: MagneticModel, pieceS: number): Flight {
  const { aircraft, turningTo, climbingToFt } = flight;
  const toTurnDeg = turningTo === null ? 0 : turnBetween(aircraft.heading, turningTo);
  const turnDeg = Math.sign(toTurnDeg) * Math.min(Math.abs(toTurnDeg), STANDARD_RATE_DEG_PER_S * pieceS);
  const altitudeFt = climbed(aircraft.altitudeFt, climbingToFt, pieceS);
  const position = moved(aircraft, turnDeg, wind, model, pieceS);
  const isTurned = turningTo !== null && Math.abs(toTurnDeg - turnDeg) <= TURNED_WITHIN_DEG;
  return {
    aircraft: {
      ...aircraft,
      position,
      heading: isTurned ? turningTo : turned(aircraft.heading, turnDeg),
      altitudeFt,
    },
    turningTo: isTurned ? null : turningTo,
    climbingToFt: altitudeFt === climbingToFt ? null : climbingToFt,
  };
}

function climbed(altitudeFt: number, toFt: number | null, pieceS: number): number {
  if (toFt === null) return altitudeFt;
  const mostFt = (CLIMB_FT_PER_MIN / 60) * pieceS;
  return Math.abs(toFt - altitudeFt) <= mostFt + CLIMBED_WITHIN_FT
    ? toFt
    : altitudeFt + Math.sign(toFt - altitudeFt) * mostFt;
}

/**
 * Where a piece ends: along the chord of its arc through the air, carried by the wind, with north and the meridians' convergence taken
 * half way, which makes the error of a step vanish with its cube.
 */
function moved(
  aircraft: Aircraft,
  turnDeg: number,
  wind: Wind,
  model: MagneticModel,
  pieceS: number,
): LatLon {
  const { position } = aircraft;
  const made = meanMadeGood(aircraft, turnDeg, wind, model, position);
  if (made.kind === "standing") return position;
  const middle = direct(position, made.track, (made.groundspeedKt * pieceS) / 2 / S_PER_H);
  const there = meanMadeGood(aircraft, turnDeg, wind, model, middle);
  if (there.kind === "standing") return position;
  const azimuth = trueDeg(there.track - convergenceDeg(position, middle));
  return direct(position, azimuth, (there.groundspeedKt * pieceS) / S_PER_H);
}

/** Mean track and groundspeed over an arc that turns by so much, with north as it is at a place. */
function meanMadeGood(
  { heading, tasKt, altitudeFt }: Aircraft,
  turnDeg: number,
  wind: Wind,
  model: MagneticModel,
  northAt: LatLon,
): MadeGood {
  const { variationDeg } = model.field(northAt, altitudeFt);
  const halfTurnRad = (Math.abs(turnDeg) / 2) * (Math.PI / 180);
  // The chord of an arc is shorter than the arc by sin(half)/half, and lies along the heading half way round.
  const chordPerArc = halfTurnRad === 0 ? 1 : Math.sin(halfTurnRad) / halfTurnRad;
  return trackForHeading({
    heading: trueFromMagnetic(turned(heading, turnDeg / 2), variationDeg),
    tasKt: tasKt * chordPerArc,
    wind,
  });
}
