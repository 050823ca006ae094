export { type ChartField, chartField, type FieldPicture } from "./chart-field.ts";
export {
  choiceFor,
  coverOver,
  FIELD_KINDS,
  type FieldChoice,
  type FieldKind,
  type FieldShown,
  fieldFrom,
  fieldText,
  newChoice,
} from "./field-choice.ts";
export { FieldImage, type FieldImageProps } from "./field-image.tsx";
export { KIND_NAMES } from "./field-names.ts";
export { BY_RECEPTION, EDGES, shadeTable } from "./field-print.ts";
export { type FieldLook, receiversOf, sameSubject, subjectOf } from "./field-subject.ts";
export { FIX_WORDS, fieldCaption, fieldTitle, RECEPTION_WORDS } from "./field-words.ts";
export { EDGE_INK, FIX_INKS, INK_COUNT, inksFor, RECEPTION_INKS, TILE_CELLS } from "./inks.ts";
export { columnsOf } from "./paper-places.ts";
export {
  COARSE_FACTOR,
  makePlate,
  type Plate,
  type PlateFields,
  type PlatePaper,
  type PlateRequest,
  type PlateSubject,
  plateFields,
  printedSize,
} from "./plate.ts";
export { printPlate } from "./print-plate.ts";
