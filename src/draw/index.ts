export * from "./chart/index.ts";
export * from "./faces/index.ts";
export * from "./field/index.ts";
export * from "./figure/index.ts";
export type { Lit } from "./lit.ts";
export * from "./plots/index.ts";
export * from "./reasons/index.ts";
export * from "./signal/ident-keying.tsx";
export * from "./theme.ts";
