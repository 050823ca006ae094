export * from "./direction.ts";
export * from "./position.ts";
