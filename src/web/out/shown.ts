/** What a picture of the bench shows: the scene as it stands, in the views and colours that are on the screen. */

import type { ChartView, FieldShown, Theme, TrailPoint } from "../../draw/index.ts";
import type { Situation, View } from "../../scene/index.ts";

export interface Shown {
  readonly situation: Situation;
  readonly views: readonly View[];
  readonly theme: Theme;
  /** The receiver whose argument is shown. */
  readonly receiver: string;
  /** The piece of the earth that the chart shows; null while it fits the scene by itself. */
  readonly chartView: ChartView | null;
  /** Where the aircraft has flown. */
  readonly trail: readonly TrailPoint[];
  /** The needle field that the chart wears; null for none. */
  readonly field: FieldShown | null;
}
