export * from "./fault.ts";
export * from "./scene.ts";
export * from "./situation.ts";
