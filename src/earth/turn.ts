/**
 * Level turns: rate, radius and bank, exact for a coordinated turn (tan bank = v * rate / g, radius = v / rate).
 * The handbooks' rounded forms, TAS^2 / (11.26 tan bank) ft and 1091 tan bank / TAS degrees a second
 * (FAA Pilot's Handbook of Aeronautical Knowledge, ch. 5), differ from these by 0.3 % and 0.1 %.
 */

import { M_PER_NM, mPerSFromKt } from "./units.ts";

/** Standard gravity (CGPM 1901). */
export const GRAVITY_M_PER_S2 = 9.80665;
/** Standard rate, also called rate one: a full circle in two minutes (FAA Instrument Flying Handbook). */
export const STANDARD_RATE_DEG_PER_S = 3;

const RAD_PER_DEG = Math.PI / 180;

/** Degrees a second of a level turn; bank in [0, 90) degrees, TAS above 0 kt. Throws RangeError outside. */
export function rateOfTurnDegPerS({ tasKt, bankDeg }: { tasKt: number; bankDeg: number }): number {
  refuseUnlessPositive("true airspeed in knots", tasKt);
  refuseBadBank(bankDeg);
  return (GRAVITY_M_PER_S2 * Math.tan(bankDeg * RAD_PER_DEG)) / mPerSFromKt(tasKt) / RAD_PER_DEG;
}

/** Radius in NM of a level turn; bank in (0, 90) degrees, TAS above 0 kt. Throws RangeError outside. */
export function turnRadiusNm({ tasKt, bankDeg }: { tasKt: number; bankDeg: number }): number {
  refuseUnlessPositive("bank in degrees", bankDeg);
  return turnRadiusAtRateNm({ tasKt, rateDegPerS: rateOfTurnDegPerS({ tasKt, bankDeg }) });
}

/** Radius in NM of a turn at so many degrees a second; both above 0. Throws RangeError outside. */
export function turnRadiusAtRateNm({ tasKt, rateDegPerS }: { tasKt: number; rateDegPerS: number }): number {
  refuseUnlessPositive("true airspeed in knots", tasKt);
  refuseUnlessPositive("rate of turn in degrees a second", rateDegPerS);
  return mPerSFromKt(tasKt) / (rateDegPerS * RAD_PER_DEG) / M_PER_NM;
}

/** Bank in degrees that turns at a rate (standard rate when not given); both above 0. Throws RangeError outside. */
export function bankForRateDeg(given: { tasKt: number; rateDegPerS?: number }): number {
  const { tasKt, rateDegPerS = STANDARD_RATE_DEG_PER_S } = given;
  refuseUnlessPositive("true airspeed in knots", tasKt);
  refuseUnlessPositive("rate of turn in degrees a second", rateDegPerS);
  return Math.atan((mPerSFromKt(tasKt) * rateDegPerS * RAD_PER_DEG) / GRAVITY_M_PER_S2) / RAD_PER_DEG;
}

/** Rule of thumb for the bank of a standard-rate turn: 15 percent of TAS in knots (FAA Instrument Flying Handbook). */
export const ruleOfThumbBankDeg = (tasKt: number): number => 0.15 * tasKt;

/** Seconds to turn so many degrees, either way, at a rate (standard rate when not given). Throws RangeError on a rate of 0 or less. */
export function turnTimeS(turnDeg: number, rateDegPerS = STANDARD_RATE_DEG_PER_S): number {
  refuseUnlessPositive("rate of turn in degrees a second", rateDegPerS);
  return Math.abs(turnDeg) / rateDegPerS;
}

/** Degrees before the new heading at which to begin the roll-out: half the bank (instrument study texts). */
export const rollOutLeadDeg = (bankDeg: number): number => bankDeg / 2;

function refuseBadBank(bankDeg: number): void {
  if (!(bankDeg >= 0 && bankDeg < 90))
    throw new RangeError(`a bank must lie in [0, 90) degrees, got ${bankDeg}`);
}

function refuseUnlessPositive(name: string, value: number): void {
  if (!(value > 0 && value < Number.POSITIVE_INFINITY))
    throw new RangeError(`a ${name} must be finite and above 0, got ${value}`);
}
