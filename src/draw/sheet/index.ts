export type { ChartMark } from "./chart-marks.tsx";
export {
  learnerDocument,
  type PaperLearner,
  type PaperReport,
  type PaperReportIdea,
  reportDocument,
} from "./report-typst.ts";
export { type SheetPicture, type SheetPictureWanted, sheetPicture } from "./sheet-picture.ts";
export {
  keyDocument,
  PAPERS,
  type Paper,
  type PaperAnswer,
  type PaperHead,
  type PaperKey,
  type PaperProblem,
  sheetDocument,
  type TypstDocument,
} from "./sheet-typst.ts";
