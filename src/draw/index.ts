export type { Lit } from "./lit.ts";
export * from "./theme.ts";
