/** The ways out of the bench and into it, over the whole page: the menu, dropped files, the keys, the line that tells. */

import type { JSX } from "preact";
import type { ChartView, FieldShown, Theme, TrailPoint } from "../../draw/index.ts";
import type { View } from "../../scene/index.ts";
import { DropPlace } from "../files/drop-place.tsx";
import { useFileKeys } from "../files/file-keys.ts";
import { later } from "../frame/later.tsx";
import type { Bench } from "../state/bench.ts";
import type { OutState } from "./out-state.ts";
import { SaidLine } from "./said-line.tsx";
import type { ShareMenuProps } from "./share-menu.tsx";
import type { Shown } from "./shown.ts";
import { usePrint } from "./use-print.ts";

const shareMenu = later<ShareMenuProps>(async () => (await import("./share-menu.tsx")).ShareMenu);

export interface OutProps {
  readonly bench: Bench;
  readonly out: OutState;
  readonly theme: Theme;
  /** The views on the screen now. */
  readonly views: () => readonly View[];
  /** The piece of the chart that a hand chose; null while it fits the scene by itself. */
  readonly chartView: () => ChartView | null;
  /** Where the aircraft has flown. */
  readonly trail: () => readonly TrailPoint[];
  /** The needle field that the chart wears. */
  readonly field: () => FieldShown | null;
  /** Whether something else than the bench fills the page: then there is nothing to save or to print. */
  readonly isAway: () => boolean;
  /** How often the menu was asked for; each time it opens. */
  readonly asked: number;
}

export function Out({
  bench,
  out,
  theme,
  views,
  chartView,
  trail,
  field,
  isAway,
  asked,
}: OutProps): JSX.Element {
  const { desk, said } = out;
  const shown = (): Shown => ({
    situation: bench.situation.value,
    views: views(),
    theme,
    receiver: bench.attended.value,
    chartView: chartView(),
    trail: trail(),
    field: field(),
  });
  const print = usePrint(() => (isAway() ? null : shown()));
  useFileKeys({
    open: () => void desk.pick(),
    save: isAway() ? null : () => void desk.save(),
    print: isAway() ? null : print,
  });
  return (
    <>
      {asked === 0 ? null : (
        <shareMenu.Part
          bench={bench}
          desk={desk}
          said={said}
          asked={asked}
          name={out.name}
          shown={shown}
          print={print}
        />
      )}
      <DropPlace onDropped={desk.take} />
      <SaidLine said={said} />
    </>
  );
}
