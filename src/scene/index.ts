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
export { type LandRead, readLand } from "./land-file.ts";
export { nearMatch } from "./near-match.ts";
export { resolver, resolveScene } from "./resolve.ts";
export type { Aircraft, Scene } from "./scene.ts";
export { readScene, type SceneRead, type SceneReadOptions } from "./scene-file.ts";
export type { Situation } from "./situation.ts";
export { type Open, type Opened, openNothing, type SourceFile } from "./sources.ts";
export { readStations, type StationsRead, type StationsReadOptions } from "./station-file.ts";
export {
  type DecodedText,
  decodeText,
  isTablePath,
  LARGEST_FILE_BYTES,
  LARGEST_TABLE_BYTES,
  largestBytes,
  tooBigFault,
} from "./text-file.ts";
