export * from "./chart/index.ts";
export * from "./faces/index.ts";
export * from "./figure/index.ts";
export type { Lit } from "./lit.ts";
export * from "./reasons/index.ts";
export * from "./theme.ts";
