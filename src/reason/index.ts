export { cutFor } from "./fly.ts";
export { type ReadingJson, type ReceiverJson, readingJson, type SituationJson } from "./reading-json.ts";
export { type Part, REASON_RULES, type Reason, type ReasonRule } from "./reason.ts";
export { reasonsFor } from "./reasons-for.ts";
export { MONITOR_WORDS } from "./received.ts";
export {
  cautionsUnderCovers,
  type SpokenReason,
  underCovers,
  type WithheldReason,
  withheldBy,
} from "./under-covers.ts";
export { degrees, dotsText, eastWest, feet, miles } from "./words.ts";
