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
export { type Fault, faultLine } from "./fault.ts";
export { FAULT_CODES, type FaultCode } from "./fault-codes.ts";
export { type JsonSchema, landJsonSchema, sceneJsonSchema, stationsJsonSchema } from "./json-schema.ts";
export { type LandRead, readLand } from "./land-file.ts";
export { nearMatch } from "./near-match.ts";
export { resolver, resolveScene } from "./resolve.ts";
export { beatsWith } from "./rough-signal.ts";
export type { Aircraft, Scene } from "./scene.ts";
export { editScene, type SceneEdited } from "./scene-edit.ts";
export { editsBetween, type SceneEdit } from "./scene-edits.ts";
export { readScene, type SceneRead, type SceneReadOptions } from "./scene-file.ts";
export { type SceneLinkOptions, sceneToLink } from "./scene-link.ts";
export { isSceneLink, LONGEST_LINK } from "./scene-link-envelope.ts";
export type { LinkView, LinkWorld } from "./scene-link-pack.ts";
export { type SceneLinkRead, sceneFromLink } from "./scene-link-read.ts";
export { editStations, type StationsChange, type StationsEdited } from "./scene-stations-edit.ts";
export { type SceneWriteOptions, writeScene } from "./scene-write.ts";
export type { Situation } from "./situation.ts";
export { type Open, type Opened, openNothing, type SourceFile } from "./sources.ts";
export { readStations, type StationsRead, type StationsReadOptions } from "./station-file.ts";
export { type StationFileText, writeStationFile } from "./station-file-write.ts";
export {
  type DecodedText,
  decodeText,
  isTablePath,
  LARGEST_FILE_BYTES,
  LARGEST_TABLE_BYTES,
  largestBytes,
  tooBigFault,
} from "./text-file.ts";
export { directionText, positionText, windText } from "./written-values.ts";
