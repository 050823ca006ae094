export * from "./reason.ts";
