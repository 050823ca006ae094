/**
 * Speed, time, distance and fuel on a leg (FAA Pilot's Handbook of Aeronautical Knowledge, ch. 16), and the
 * one-in-sixty rule. Fuel is in any one unit of volume or mass, its rate in that unit an hour.
 */

const MIN_PER_H = 60;

/** Minutes to cover a distance; distance from 0 up, groundspeed above 0. Throws RangeError outside. */
export function legTimeMin({
  distanceNm,
  groundspeedKt,
}: {
  distanceNm: number;
  groundspeedKt: number;
}): number {
  refuseNegative("distance in NM", distanceNm);
  refuseUnlessPositive("groundspeed in knots", groundspeedKt);
  return (distanceNm / groundspeedKt) * MIN_PER_H;
}

/** Groundspeed in knots over a distance in a time; distance from 0 up, time above 0. Throws RangeError outside. */
export function legGroundspeedKt({ distanceNm, timeMin }: { distanceNm: number; timeMin: number }): number {
  refuseNegative("distance in NM", distanceNm);
  refuseUnlessPositive("time in minutes", timeMin);
  return (distanceNm / timeMin) * MIN_PER_H;
}

/** NM covered at a groundspeed in a time, both from 0 up. Throws RangeError outside. */
export function legDistanceNm({
  groundspeedKt,
  timeMin,
}: {
  groundspeedKt: number;
  timeMin: number;
}): number {
  refuseNegative("groundspeed in knots", groundspeedKt);
  refuseNegative("time in minutes", timeMin);
  return (groundspeedKt * timeMin) / MIN_PER_H;
}

/** Fuel burnt in a time, both from 0 up. Throws RangeError outside. */
export function fuelUsed({ fuelPerHour, timeMin }: { fuelPerHour: number; timeMin: number }): number {
  refuseNegative("fuel rate an hour", fuelPerHour);
  refuseNegative("time in minutes", timeMin);
  return (fuelPerHour * timeMin) / MIN_PER_H;
}

/** Fuel burnt an hour, from what a time has burnt; fuel from 0 up, time above 0. Throws RangeError outside. */
export function fuelPerHourFromUse({ fuel, timeMin }: { fuel: number; timeMin: number }): number {
  refuseNegative("fuel quantity", fuel);
  refuseUnlessPositive("time in minutes", timeMin);
  return (fuel / timeMin) * MIN_PER_H;
}

/** Minutes that a quantity of fuel lasts; fuel from 0 up, rate above 0. Throws RangeError outside. */
export function enduranceMin({ fuel, fuelPerHour }: { fuel: number; fuelPerHour: number }): number {
  refuseNegative("fuel quantity", fuel);
  refuseUnlessPositive("fuel rate an hour", fuelPerHour);
  return (fuel / fuelPerHour) * MIN_PER_H;
}

/**
 * One in sixty: degrees that a sideways distance makes at a distance flown, 60 * off / along. Within 0.543 degree of the
 * exact angle (sine = off / along) up to 20 degrees. Right (positive `offNm`) gives a positive angle. Throws RangeError
 * unless along is above 0.
 */
export function oneInSixtyDeg({ offNm, alongNm }: { offNm: number; alongNm: number }): number {
  refuseUnlessPositive("distance along in NM", alongNm);
  return (60 * offNm) / alongNm + 0;
}

/**
 * Change of heading that brings an aircraft found off course straight to its destination, by one in sixty: the angle it
 * opened (to fly parallel) plus the angle that closes. Left (negative) when it is right of course. RangeError as above.
 */
export function offCourseCorrectionDeg(given: { offNm: number; flownNm: number; toFlyNm: number }): number {
  const { offNm, flownNm, toFlyNm } = given;
  const opened = oneInSixtyDeg({ offNm, alongNm: flownNm });
  const closing = oneInSixtyDeg({ offNm, alongNm: toFlyNm });
  return -(opened + closing) + 0;
}

function refuseNegative(name: string, value: number): void {
  if (!(value >= 0 && value < Number.POSITIVE_INFINITY))
    throw new RangeError(`a ${name} must be finite and 0 or more, got ${value}`);
}

function refuseUnlessPositive(name: string, value: number): void {
  if (!(value > 0 && value < Number.POSITIVE_INFINITY))
    throw new RangeError(`a ${name} must be finite and above 0, got ${value}`);
}
