/**
 * The wind triangle: air vector (heading, true airspeed) plus wind vector makes the ground vector (track, groundspeed).
 * Everything from true north; wind is named by where it blows from. Drift is the turn from heading to track and
 * correction the turn from course to heading, both right positive, in degrees. Speeds may be in any one unit; the
 * names say knots. Source: the triangle itself (FAA Pilot's Handbook of Aeronautical Knowledge, ch. 16).
 */

import { type TrueDeg, trueDeg, turnBetween, turned } from "./direction.ts";

const RAD_PER_DEG = Math.PI / 180;
/** Slower than this over the ground, in knots, no track can be named. */
const STANDING_KT = 1e-6;

export interface Wind {
  /** Where it blows from. */
  readonly from: TrueDeg;
  /** Calm is 0. */
  readonly speedKt: number;
}

export type HeldCourse =
  | {
      readonly kind: "held";
      readonly heading: TrueDeg;
      /** Turn from course to heading, right positive, in [-90, 90]. */
      readonly correctionDeg: number;
      /** Above 0. */
      readonly groundspeedKt: number;
    }
  | {
      readonly kind: "wind-too-strong";
      /** `crosswind`: the wind across the course exceeds the airspeed; `headwind`: no headway is left along it. */
      readonly why: "crosswind" | "headwind";
      /** Wind across the course, from the right positive. */
      readonly crosswindKt: number;
      /** Wind against the course; a tailwind is negative. */
      readonly headwindKt: number;
    };

/**
 * Heading and groundspeed that keep a course in a wind. A wind too strong for that is a variant, not a number.
 * Throws RangeError when airspeed or wind speed is negative or not finite.
 */
export function headingForCourse(given: {
  readonly course: TrueDeg;
  readonly tasKt: number;
  readonly wind: Wind;
}): HeldCourse {
  const { course, tasKt, wind } = given;
  refuseBadSpeed("true airspeed", tasKt);
  const { crosswindKt, headwindKt } = windAlong(course, wind);
  if (Math.abs(crosswindKt) > tasKt)
    return { kind: "wind-too-strong", why: "crosswind", crosswindKt, headwindKt };
  const groundspeedKt = Math.sqrt(tasKt * tasKt - crosswindKt * crosswindKt) - headwindKt;
  if (groundspeedKt <= STANDING_KT)
    return { kind: "wind-too-strong", why: "headwind", crosswindKt, headwindKt };
  const correctionDeg = Math.asin(crosswindKt / tasKt) / RAD_PER_DEG + 0;
  return { kind: "held", heading: turned(course, correctionDeg), correctionDeg, groundspeedKt };
}

export type MadeGood =
  | {
      readonly kind: "moving";
      readonly track: TrueDeg;
      readonly groundspeedKt: number;
      /** Turn from heading to track, right positive, in (-180, 180]. */
      readonly driftDeg: number;
    }
  /** The wind holds the aircraft still over the ground: there is no track. */
  | { readonly kind: "standing"; readonly groundspeedKt: 0 };

/** Track, groundspeed and drift made good on a heading. Throws RangeError on a negative or non-finite speed. */
export function trackForHeading(given: {
  readonly heading: TrueDeg;
  readonly tasKt: number;
  readonly wind: Wind;
}): MadeGood {
  const { heading, tasKt, wind } = given;
  refuseBadSpeed("true airspeed", tasKt);
  const { crosswindKt, headwindKt } = windAlong(heading, wind);
  const ahead = tasKt - headwindKt;
  // The air moves away from where the wind comes from: a wind from the right drifts the aircraft left.
  const rightward = -crosswindKt;
  const groundspeedKt = Math.hypot(ahead, rightward);
  if (groundspeedKt <= STANDING_KT) return { kind: "standing", groundspeedKt: 0 };
  const track = turned(heading, Math.atan2(rightward, ahead) / RAD_PER_DEG);
  return { kind: "moving", track, groundspeedKt, driftDeg: turnBetween(heading, track) };
}

/**
 * The wind that turns an air vector into a ground vector. Calm (under a millionth of a knot) is from 0 at 0 kt.
 * Throws RangeError on a negative or non-finite speed.
 */
export function windFromTriangle(given: {
  readonly heading: TrueDeg;
  readonly tasKt: number;
  readonly track: TrueDeg;
  readonly groundspeedKt: number;
}): Wind {
  const { heading, tasKt, track, groundspeedKt } = given;
  refuseBadSpeed("true airspeed", tasKt);
  refuseBadSpeed("groundspeed", groundspeedKt);
  const headingRad = heading * RAD_PER_DEG;
  const trackRad = track * RAD_PER_DEG;
  const east = tasKt * Math.sin(headingRad) - groundspeedKt * Math.sin(trackRad);
  const north = tasKt * Math.cos(headingRad) - groundspeedKt * Math.cos(trackRad);
  const speedKt = Math.hypot(east, north);
  if (speedKt <= STANDING_KT) return { from: trueDeg(0), speedKt: 0 };
  return { from: trueDeg(Math.atan2(east, north) / RAD_PER_DEG), speedKt };
}

/**
 * Heading and airspeed that make a wanted track and groundspeed good. Where they cancel out (the wind alone does it)
 * the airspeed is 0 and the heading is the track. Throws RangeError on a negative or non-finite speed.
 */
export function headingAndTasForTrack(given: {
  readonly track: TrueDeg;
  readonly groundspeedKt: number;
  readonly wind: Wind;
}): { readonly heading: TrueDeg; readonly tasKt: number; readonly correctionDeg: number } {
  const { track, groundspeedKt, wind } = given;
  refuseBadSpeed("groundspeed", groundspeedKt);
  const { crosswindKt, headwindKt } = windAlong(track, wind);
  const ahead = groundspeedKt + headwindKt;
  const tasKt = Math.hypot(ahead, crosswindKt);
  if (tasKt <= STANDING_KT) return { heading: track, tasKt: 0, correctionDeg: 0 };
  const heading = turned(track, Math.atan2(crosswindKt, ahead) / RAD_PER_DEG);
  return { heading, tasKt, correctionDeg: turnBetween(track, heading) };
}

/** Wind split along a direction: against it, and across it from the right. Throws RangeError on a bad wind speed. */
export function windAlong(direction: TrueDeg, wind: Wind): { headwindKt: number; crosswindKt: number } {
  refuseBadSpeed("wind speed", wind.speedKt);
  const angleRad = turnBetween(direction, wind.from) * RAD_PER_DEG;
  return {
    headwindKt: wind.speedKt * Math.cos(angleRad) + 0,
    crosswindKt: wind.speedKt * Math.sin(angleRad) + 0,
  };
}

function refuseBadSpeed(name: string, kt: number): void {
  if (!(kt >= 0 && kt < Number.POSITIVE_INFINITY))
    throw new RangeError(`a ${name} must be a finite number of knots from 0 up, got ${kt}`);
}
