/** What the bench loads only when a field is first chosen: the layer, its painters and inks, and the legend. */

export { FieldLegend } from "./field-legend.tsx";
export { NeedleField } from "./needle-field.tsx";
