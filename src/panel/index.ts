export * from "./reading.ts";
