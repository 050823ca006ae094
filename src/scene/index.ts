export * from "./fault.ts";
export * from "./scene.ts";
export * from "./situation.ts";
export { TRAINING_CAUTION } from "./cautions.ts";
export { resolver, resolveScene } from "./resolve.ts";
