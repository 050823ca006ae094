export { leastRadialDeviationDeg } from "./bearing-noise.ts";
export { carrierToNoiseDbHz, TYPICAL_NOISE_DB } from "./carrier-to-noise.ts";
export {
  type ChannelVerdict,
  explainFrequency,
  type FrequencyRead,
  type FrequencyService,
  frequencyText,
  LOCALIZER_CHANNELS_MHZ,
  nearestVorChannels,
  readFrequency,
  sameChannel,
  serviceOf,
  VOR_CHANNELS_MHZ,
} from "./channel-plan.ts";
export {
  type Composite,
  composite,
  type Echo,
  type PropellerModulation,
  type SampleOptions,
  type VorSignal,
} from "./composite.ts";
export {
  abeamToleranceNm,
  coneRadiusNm,
  elevationAngleDeg,
  isInCone,
  timeAcrossConeS,
  VOR_CONE_HALF_ANGLE_DEG,
} from "./cone.ts";
export { type BrokenRow, readCsvRows } from "./csv-rows.ts";
export {
  type DemodulatorOptions,
  type SignalMeasurement,
  type VorDemodulator,
  vorDemodulator,
} from "./demodulate.ts";
export { DME_MAX_RANGE_NM, dmeAccuracyFaaNm, dmeToleranceIcaoNm } from "./dme-accuracy.ts";
export {
  type DmeChannel,
  type DmeChannelRead,
  type DmeMode,
  dmeChannel,
  pairedDmeChannel,
  readDmeChannel,
} from "./dme-pairing.ts";
export {
  defaultEirpW,
  type FieldVerdict,
  fieldMicrovoltPerM,
  fieldVerdict,
  freeSpaceLossDb,
  MINIMUM_FIELD_MICROVOLT_PER_M,
  powerFluxDbwPerM2,
  TYPICAL_EIRP_W,
  WEAKEST_FIELD_MICROVOLT_PER_M,
} from "./field-strength.ts";
export { HEARD_FACTOR, loweredSubcarrier, raisedTones } from "./heard-parts.ts";
export {
  DME_IDENT_HZ,
  IDENT_PERIOD_S,
  IDENT_WORDS_PER_MINUTE,
  type IdentCall,
  type IdentSource,
  identCalls,
  identDurationS,
  identPeriodS,
  keying,
  TEST_IDENT,
  type ToneStroke,
  usableParts,
  VOR_IDENT_HZ,
} from "./ident.ts";
export type { IdentListener, Loudness } from "./ident-listener.ts";
export {
  callSamples,
  IDENT_AMPLITUDE,
  IDENT_SAMPLE_RATE_HZ,
  type IdentSoundOptions,
  identSamples,
} from "./ident-sound.ts";
export type { Airfield, Island, Land, Peak, ReliefArea } from "./land.ts";
export {
  EARTH_RADIUS_NM,
  EFFECTIVE_EARTH_RADIUS_NM,
  leastHeightByRuleFt,
  leastHeightFt,
  lineOfSightByRuleNm,
  lineOfSightNm,
  radioHorizonNm,
} from "./line-of-sight.ts";
export {
  decodeMorse,
  dotMs,
  isMorseText,
  type MorseStroke,
  morseCode,
  morseStrokes,
  morseUnits,
  printedMorse,
  WORD_GAP_UNITS,
} from "./morse.ts";
export { radialToward, VOT_RADIAL } from "./radial.ts";
export { type KeyingRead, readKeying } from "./read-keying.ts";
export {
  LEAST_RECORDING_S,
  type RecordedSignal,
  type Recording,
  type RecordingFault,
  type RecordingRead,
  readRecording,
} from "./recording.ts";
export { type Bend, bendDeg, pathPhaseRad, wavelengthM } from "./reflection.ts";
export { LEAST_SAMPLE_RATE_HZ } from "./samples.ts";
export {
  isServiceClass,
  type ServiceClass,
  type ServiceVolume,
  serviceRadiusNm,
  serviceVolume,
} from "./service-volume.ts";
export {
  readSigmf,
  type SigmfMetadata,
  type SigmfRead,
  sigmfChannels,
  sigmfText,
} from "./sigmf.ts";
export { type RecordedForm, type SignalFile, type SignalFileOptions, signalFile } from "./signal-file.ts";
export { type FlagCause, flagCause, LEAST_CARRIER_TO_NOISE_DB_HZ, LEAST_DEPTH } from "./signal-monitor.ts";
export {
  flightPlanPoint,
  placeOfPoint,
  readSignificantPoint,
  type SignificantPoint,
  type SignificantPointRead,
  type StationPoint,
  spokenPoint,
} from "./significant-point.ts";
export {
  groundRangeByPansOpsNm,
  groundRangeNm,
  slantErrorIsNegligible,
  slantRangeNm,
} from "./slant-range.ts";
export {
  DME_CLASSES,
  type DmeClass,
  givesBearing,
  givesDistance,
  STATION_KINDS,
  STATION_STATUSES,
  type Station,
  type StationKind,
  type StationStatus,
  VOR_CLASSES,
  type VorClass,
} from "./station.ts";
export {
  type Aloft,
  coneSurfaceFt,
  type FromAntenna,
  type TerrainAround,
  type TerrainVerdict,
  terrainAround,
  terrainBetween,
  terrainToward,
} from "./terrain.ts";
export {
  DEVIATION_RATIO,
  DEVIATION_RATIO_TOLERANCE,
  frequencyDeviationHz,
  IDENT_DEPTH,
  type IdentModulation,
  MODULATION_DEPTH,
  MODULATION_DEPTH_TOLERANCE,
  SIGNAL_KINDS,
  type SignalKind,
  STANDARD_MODULATION,
  SUBCARRIER_HZ,
  TONE_HZ,
  TONE_TOLERANCE,
  type VorModulation,
} from "./vor-modulation.ts";
export { wavBytes } from "./wav.ts";
export {
  type NotTheTable,
  type RowNote,
  readWorldwideTable,
  type WorldwideCounts,
  type WorldwideTable,
} from "./worldwide-table.ts";
