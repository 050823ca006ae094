export { type OpenSteps, openSteps } from "./open-steps.ts";
export { Reasons, type ReasonsProps } from "./reasons.tsx";
