export { chainOf, chainText, spokenSteps } from "./chain.ts";
export { Reasons, type ReasonsProps } from "./reasons.tsx";
