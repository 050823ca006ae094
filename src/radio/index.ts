export * from "./land.ts";
export * from "./station.ts";
