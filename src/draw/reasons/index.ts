export { chainOf, chainText, spokenSteps, type WithheldExtent, withheldWords } from "./chain.ts";
export { Reasons, type ReasonsProps } from "./reasons.tsx";
