export { historyTimeAt } from "./history-layout.ts";
export { type HistoryPoint, historySentence } from "./history-sentence.ts";
export { NeedleHistory, type NeedleHistoryProps } from "./needle-history.tsx";
export { timeTickS, timeWords } from "./time-words.ts";
export { Trail, type TrailPoint, type TrailProps } from "./trail.tsx";
