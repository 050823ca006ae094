export { compassFromMagnetic, magneticFromCompass } from "./compass.ts";
export { convergenceDeg, directionBack } from "./convergence.ts";
export { type CoordinatesRead, latLonText, readLatLon } from "./coordinates.ts";
export {
  type CompassDeg,
  compassDeg,
  type Direction,
  type MagneticDeg,
  magneticDeg,
  magneticFromTrue,
  reciprocal,
  type StationDeg,
  stationDeg,
  stationFromTrue,
  type TrueDeg,
  threeDigits,
  trueDeg,
  trueFromMagnetic,
  trueFromStation,
  turnBetween,
  turned,
  wrap180,
  wrap360,
} from "./direction.ts";
export {
  direct,
  type GeodesicLine,
  geodesicDistanceNm,
  inverse,
  SAME_PLACE_M,
  type SamePlace,
} from "./geodesic.ts";
export {
  decimalYear,
  type MagneticField,
  type MagneticModel,
  type ModelLife,
  magneticModel,
  magneticModelAtYear,
  type Variation,
  variation,
} from "./magnetism.ts";
export { type LatLon, latLon, refuseBadPlace, wrapLongitude } from "./position.ts";
export {
  enduranceMin,
  fuelPerHourFromUse,
  fuelUsed,
  legDistanceNm,
  legGroundspeedKt,
  legTimeMin,
  offCourseCorrectionDeg,
  oneInSixtyDeg,
} from "./speed-time-distance.ts";
export {
  type AzimuthDistance,
  azimuthDistance,
  azimuthDistances,
  FRAME_LIMIT_LAT_DEG,
  fromStation,
  type PlaceTable,
  placeTable,
  SERIES_LIMIT_NM,
  type StationFrame,
  stationFrame,
} from "./station-frame.ts";
export {
  bankForRateDeg,
  GRAVITY_M_PER_S2,
  rateOfTurnDegPerS,
  rollOutLeadDeg,
  ruleOfThumbBankDeg,
  STANDARD_RATE_DEG_PER_S,
  turnRadiusAtRateNm,
  turnRadiusNm,
  turnTimeS,
} from "./turn.ts";
export {
  FIX_LIMIT_NM,
  LEAST_CUT_DEG,
  type LineFromStation,
  type TwoLineFix,
  twoLineFix,
} from "./two-line-fix.ts";
export {
  FT_PER_NM,
  ftFromKm,
  ftFromM,
  ftFromNm,
  kmFromFt,
  kmFromNm,
  ktFromMPerS,
  M_PER_FT,
  M_PER_NM,
  M_PER_SM,
  mFromFt,
  mFromNm,
  mPerSFromKt,
  nmFromFt,
  nmFromKm,
  nmFromM,
  nmFromSm,
  smFromNm,
} from "./units.ts";
export {
  type HeldCourse,
  headingAndTasForTrack,
  headingForCourse,
  type MadeGood,
  trackForHeading,
  type Wind,
  windAlong,
  windFromTriangle,
} from "./wind-triangle.ts";
