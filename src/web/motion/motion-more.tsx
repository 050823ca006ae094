/** Behind "More": what the aircraft is told to do, and what the attended receiver has shown over the flight. */

import type { ComponentChildren, JSX } from "preact";
import { useMemo, useRef } from "preact/hooks";
import { historyTimeAt, NeedleHistory, type Theme } from "../../draw/index.ts";
import { useElementSize } from "../frame/element-size.ts";
import { followPointer } from "../input/drag.ts";
import type { Bench } from "../state/bench.ts";
import { historyOf } from "./flight-log.ts";
import { FlightOrders } from "./flight-orders.tsx";
import type { Player } from "./player.ts";

export interface MotionMoreProps {
  readonly bench: Bench;
  readonly player: Player;
  readonly theme: Theme;
  readonly typeScale: number;
  /** What stands above them. */
  readonly children?: ComponentChildren;
}

const PLOT_HEIGHT_PX = 132;

export function MotionMore(props: MotionMoreProps): JSX.Element {
  const { bench, player, theme, typeScale, children } = props;
  return (
    <div class="motion-more">
      {children}
      <FlightOrders bench={bench} player={player} />
      <History bench={bench} player={player} theme={theme} typeScale={typeScale} />
    </div>
  );
}

function History({ bench, player, theme, typeScale }: MotionMoreProps): JSX.Element {
  const holder = useRef<HTMLDivElement>(null);
  const widthPx = useElementSize(holder)?.widthPx ?? 0;
  const heightPx = PLOT_HEIGHT_PX * typeScale;
  const name = bench.attended.value;
  const log = player.log.value;
  const points = useMemo(() => historyOf(log, name), [log, name]);
  const face = bench.scene.value.receivers.find((receiver) => receiver.name === name)?.face ?? "cdi";
  const startS = points[0]?.timeS ?? 0;
  const scrub = (press: PointerEvent) => {
    const box = holder.current?.getBoundingClientRect();
    if (press.button !== 0 || !press.isPrimary || box === undefined || points.length < 2) return;
    const size = { widthPx, heightPx, scale: typeScale, startS, endS: points.at(-1)?.timeS ?? 0 };
    const to = (clientX: number) => player.scrubTo(historyTimeAt(size, clientX - box.left));
    to(press.clientX);
    followPointer(press, ({ x }) => to(x));
  };
  const { covers } = bench.scene.value;
  // The mark of the moment moves by less than a pixel in a second's part: no need to draw all anew with every frame.
  const secondS = Math.floor(player.nowS.value);
  const picture = useMemo(
    () =>
      widthPx === 0 || points.length < 2 ? null : (
        <NeedleHistory
          receiver={name}
          face={face}
          points={points}
          nowS={secondS}
          covers={covers}
          widthPx={widthPx}
          heightPx={heightPx}
          theme={theme}
          idPrefix="history"
          typeScale={typeScale}
        />
      ),
    [name, face, points, secondS, covers, widthPx, heightPx, theme, typeScale],
  );
  return (
    <div class="motion-history" ref={holder} style={{ height: `${heightPx}px` }} onPointerDown={scrub}>
      {picture ?? <p class="note">Play, and what {name} shows is drawn here against time.</p>}
    </div>
  );
}
