/** How the receivers lie on a panel of a given width, so that one to four are read without cramping. */

export interface PanelArrangement {
  readonly columns: number;
  /** Face above its controls, or beside them. */
  readonly form: "stacked" | "beside";
}

/** Narrowest column in which a face with its controls below is easily read, px. */
const LEAST_STACKED_PX = 138;
/** Narrowest column for a face beside its controls, px. */
const LEAST_BESIDE_PX = 250;

/** Columns side by side where they are wide enough; else faces beside their controls, in two columns or in one. */
export function arrangePanel(receivers: number, widthPx: number): PanelArrangement {
  if (receivers > 1 && widthPx >= receivers * LEAST_STACKED_PX)
    return { columns: receivers, form: "stacked" };
  return { columns: receivers > 3 && widthPx >= 2 * LEAST_BESIDE_PX ? 2 : 1, form: "beside" };
}
