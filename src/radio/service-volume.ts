/**
 * Standard service volumes: how far a station's signal is protected and promised, by class and height above the
 * transmitter. What can be received is another matter (`line-of-sight.ts`, `field-strength.ts`).
 * Source: FAA AIM 1-1-8, TBL 1-1-1. Heights are above the transmitter (ATH); editions before 2021 counted above ground.
 * Where bands overlap the larger radius holds. The cone straight above the station is not in the volume (`cone.ts`).
 */

import { radioHorizonNm } from "./line-of-sight.ts";
import { DME_CLASSES, type DmeClass, VOR_CLASSES, type VorClass } from "./station.ts";

export type ServiceClass = VorClass | DmeClass;
export type ServiceVolume = "inside" | "outside" | "unknown";

interface Band {
  readonly fromFt: number;
  /** Top of the band; the published words say whether it belongs to it. */
  readonly toFt: number;
  readonly topIncluded: boolean;
  readonly radiusNm: number;
}

const upTo = (fromFt: number, toFt: number, radiusNm: number): Band => ({
  fromFt,
  toFt,
  topIncluded: true,
  radiusNm,
});
const below = (fromFt: number, toFt: number, radiusNm: number): Band => ({
  ...upTo(fromFt, toFt, radiusNm),
  topIncluded: false,
});

/** From this height up the DME table gives radii; below, the line of sight. */
const DME_LINE_OF_SIGHT_BELOW_FT = 12_900;
const DME_RADIUS_NM = 130;

const BANDS: Readonly<Record<ServiceClass, readonly Band[]>> = {
  T: [upTo(1000, 12_000, 25)],
  L: [upTo(1000, 18_000, 40)],
  H: [upTo(1000, 14_500, 40), upTo(14_500, 60_000, 100), upTo(18_000, 45_000, 130)],
  VL: [below(1000, 5000, 40), below(5000, 18_000, 70)],
  VH: [below(1000, 5000, 40), below(5000, 14_500, 70), upTo(14_500, 60_000, 100), upTo(18_000, 45_000, 130)],
  // The radii above 12,900 ft are from memory.
  DL: [below(DME_LINE_OF_SIGHT_BELOW_FT, 18_000, DME_RADIUS_NM)],
  DH: [
    upTo(DME_LINE_OF_SIGHT_BELOW_FT, 60_000, 100),
    upTo(DME_LINE_OF_SIGHT_BELOW_FT, 45_000, DME_RADIUS_NM),
  ],
};

const isDmeClass = (serviceClass: ServiceClass): serviceClass is DmeClass =>
  (DME_CLASSES as readonly string[]).includes(serviceClass);

/** Whether a text names one of the published classes. */
export const isServiceClass = (text: string): text is ServiceClass =>
  ([...VOR_CLASSES, ...DME_CLASSES] as readonly string[]).includes(text);

/**
 * Radius of the published volume, NM, at a height above the transmitter, feet: 0 below its floor or above its top.
 * DL and DH below 12,900 ft: the 4/3-earth horizon from that height over ground level with the transmitter, and never
 * more than the 130 NM of the band above, which the published curve meets at 12,900 ft. Throws RangeError on NaN.
 */
export function serviceRadiusNm(serviceClass: ServiceClass, heightAboveFt: number): number {
  if (Number.isNaN(heightAboveFt))
    throw new RangeError("a height above the station must be a number of feet");
  if (isDmeClass(serviceClass) && heightAboveFt < DME_LINE_OF_SIGHT_BELOW_FT)
    return Math.min(radioHorizonNm(Math.max(0, heightAboveFt)), DME_RADIUS_NM);
  let radiusNm = 0;
  for (const band of BANDS[serviceClass]) {
    const belowTop = band.topIncluded ? heightAboveFt <= band.toFt : heightAboveFt < band.toFt;
    if (heightAboveFt >= band.fromFt && belowTop) radiusNm = Math.max(radiusNm, band.radiusNm);
  }
  return radiusNm;
}

/**
 * Whether a place lies in the published volume: ground distance (NM) at most the radius at that height (feet above the
 * transmitter). "unknown" without a class; a station's class is not guessed from its power.
 */
export function serviceVolume(
  serviceClass: ServiceClass | null,
  heightAboveFt: number,
  distanceNm: number,
): ServiceVolume {
  if (serviceClass === null) return "unknown";
  const radiusNm = serviceRadiusNm(serviceClass, heightAboveFt);
  return radiusNm > 0 && distanceNm <= radiusNm ? "inside" : "outside";
}
