export { type OpenSteps, openSteps } from "./open-steps.ts";
export { Reasons, type ReasonsProps, reasonsText } from "./reasons.tsx";
