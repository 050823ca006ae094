export { type AircraftPlaceRead, readAircraftPlace } from "./aircraft-place.ts";
export { TRAINING_CAUTION } from "./cautions.ts";
export {
  COVER_WORDS,
  type CoverPart,
  type CoverTarget,
  coverText,
  isCovered,
  isReceiverCovered,
  parseCover,
  RECEIVER_PARTS,
  type ReceiverPart,
  VIEWS,
  type View,
} from "./cover.ts";
// The parts that other files of ours, and their links, are read and written with.
export { readDate } from "./date-field.ts";
export { type Fault, faultLine } from "./fault.ts";
export { FAULT_CODES, type FaultCode } from "./fault-codes.ts";
export { openFile } from "./file-kind.ts";
export {
  type JsonSchema,
  landJsonSchema,
  publishedSchema,
  sceneJsonSchema,
  stationsJsonSchema,
} from "./json-schema.ts";
export { readLandField } from "./land-field.ts";
export { type LandRead, readLand } from "./land-file.ts";
export { landLines } from "./land-text.ts";
export { nearMatch } from "./near-match.ts";
export { addFault, cited, inReadingOrder, type Reading } from "./reading.ts";
export {
  type FileRecord,
  offsetOf,
  type RecordField,
  readField,
  readScalar,
  scalarText,
} from "./record.ts";
export { resolver, resolveScene } from "./resolve.ts";
export { beatsWith } from "./rough-signal.ts";
export { sameSignal } from "./same-signal.ts";
export type { Aircraft, Scene } from "./scene.ts";
export { editScene, type SceneEdited } from "./scene-edit.ts";
export { editsBetween, type SceneEdit } from "./scene-edits.ts";
export { readScene, type SceneRead, type SceneReadOptions } from "./scene-file.ts";
export { type SceneLinkOptions, sceneToLink } from "./scene-link.ts";
export { isLink, isSceneLink, LONGEST_LINK, openLink, sealLink } from "./scene-link-envelope.ts";
export { type LinkGroundRead, readLinkGround } from "./scene-link-ground.ts";
export type { LinkView, LinkWorld } from "./scene-link-pack.ts";
export { packGround } from "./scene-link-pack.ts";
export { type SceneLinkRead, sceneFromLink } from "./scene-link-read.ts";
export { dateLeafFor, landShapeFor, stationsShapeFor } from "./scene-shape.ts";
export { editStations, type StationsChange, type StationsEdited } from "./scene-stations-edit.ts";
export { type SceneWriteOptions, writeScene } from "./scene-write.ts";
export { noted, type RecordShape, textLeaf } from "./shape.ts";
export {
  MOST_REFLECTORS,
  NOISE_DB,
  type NumberLimits,
  PROPELLER_BLADES,
  PROPELLER_SPEED_RPM,
  REFLECTOR_AMPLITUDE,
} from "./signal-limits.ts";
export type { Situation } from "./situation.ts";
export { type Open, type Opened, openNothing, type SourceFile, sourceFile } from "./sources.ts";
export { readStations, type StationsRead, type StationsReadOptions } from "./station-file.ts";
export { type StationFileText, writeStationFile } from "./station-file-write.ts";
export { gather, gathering } from "./station-files.ts";
export { stationLines } from "./station-text.ts";
export {
  type DecodedText,
  decodeText,
  isTablePath,
  LARGEST_FILE_BYTES,
  LARGEST_TABLE_BYTES,
  largestBytes,
  tooBigFault,
} from "./text-file.ts";
export { directionText, positionText, quotedIfNeeded, textPair, windText } from "./written-values.ts";
export { pairOf, withKey, withValue } from "./yaml-edit.ts";
export { parseYamlFile } from "./yaml-file.ts";
export { flowText } from "./yaml-flow.ts";
