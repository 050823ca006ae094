/** What the bench loads only when the field's button is first pressed: its panel, the layer with painters and inks, the legend. */

export { FieldLegend } from "./field-legend.tsx";
export { FieldPanel } from "./field-panel.tsx";
export { NeedleField } from "./needle-field.tsx";
