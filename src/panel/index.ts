export { type Airwaves, airwaves, channelKhz, type OnAir, type Site } from "./airwaves.ts";
export { courseForRadial } from "./course-for-radial.ts";
export {
  ABEAM_HALF_WIDTH_DEG,
  CENTRED_WITHIN_DEG,
  DEGREES_PER_DOT,
  DOTS_EACH_SIDE,
  deviationDeg,
  FULL_SCALE_DEG,
  indicate,
  NO_DEVIATION,
  offCourseByDotsFt,
  offCourseNm,
  offCourseOneInSixtyNm,
  toFrom,
} from "./deviation-indicator.ts";
export { type DmeGeometry, readDme } from "./dme.ts";
export { identHeard } from "./ident-heard.ts";
export { NEEDLE_TIME_CONSTANT_S, stepNeedle } from "./needle-lag.ts";
export {
  type Deviation,
  type DmeReading,
  FACES,
  type Face,
  type Flag,
  type IdentHeard,
  type NeedleSide,
  type NoSignal,
  type ReceiverReading,
  type ReceiverSettings,
  type Signal,
  type StationGeometry,
} from "./reading.ts";
export { type Flight, readReceiver } from "./receiver.ts";
export { type Candidate, PROTECTION_RATIO_DB, receive, type SeenFrom } from "./reception.ts";
