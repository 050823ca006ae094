export { type Airwaves, airwaves, channelKhz, type OnAir, type Site } from "./airwaves.ts";
export { courseForRadial } from "./course-for-radial.ts";
export {
  AIRBORNE_CHECK_ERROR_DEG,
  type CrossFix,
  crossFixAt,
  crossFixErrorNm,
  GROUND_CHECK_ERROR_DEG,
} from "./cross-fix.ts";
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
export {
  arrivingSignal,
  type HeardFrom,
  type MeasuredSignal,
  measureSignal,
  standardSignal,
} from "./measured-signal.ts";
export { type FieldSettings, fillCells, type NeedleField, needleField } from "./needle-field.ts";
export {
  BEARING_EDGE,
  BIN_COUNT,
  binOfCell,
  FIELD_RECEPTIONS,
  FIX_BANDS_NM,
  FIX_EDGE,
  type FieldReception,
  fieldCell,
  fieldReception,
  fixBand,
  fixBandOfCell,
  NO_BIN,
  NO_FIX,
  RECEPTION_EDGE,
  receptionCode,
  receptionCodeOfCell,
  receptionOfCell,
  TEST_SIGNAL_BIN,
  withFixBand,
} from "./needle-field-cell.ts";
export { type FixField, type FixPlaces, fillFixCells, fixStations } from "./needle-field-fix.ts";
export {
  courseShift,
  SHADE_COUNT,
  SHADE_OFF,
  type Shade,
  STEPS_EACH_SIDE,
  shadeMeaning,
  shadeNumber,
  shadeOf,
  shadesForCourse,
  testSignalShade,
} from "./needle-field-shade.ts";
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
export { type Flight, type OverTheAir, readReceiver } from "./receiver.ts";
export { type Candidate, PROTECTION_RATIO_DB, receive, type SeenFrom } from "./reception.ts";
export type { Propeller, Reflector, SignalConditions } from "./signal-conditions.ts";
