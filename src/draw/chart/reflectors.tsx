/** What throws a station's signal back, where the scene has such a thing: a wall that a ray breaks on, with its name in words. */

import type { VNode } from "preact";
import type { Reflector } from "../../panel/index.ts";
import { isCovered, type Situation } from "../../scene/index.ts";
import { px } from "../plain/px.ts";
import { type ChartFrame, drawable, onSheet } from "./frame.ts";
import { nameStyle } from "./names-layout.ts";
import { Words } from "./words.tsx";

/** Half the length of the wall, px at type scale 1. */
const HALF_PX = 7;
/** Half the width of the name over it, with some to spare: beyond that from the sheet's edge nothing of it would be seen. */
const SIGN_REACH_PX = 40;

/**
 * Whether the reflectors may not be seen: while the signal is covered, or anything of a receiver that tells its station, for each stands
 * near the station whose signal it throws back.
 */
export const reflectorsCovered = ({ covers, receivers }: Situation["scene"]): boolean =>
  isCovered(covers, null, "signal") ||
  receivers.some(({ name }) => isCovered(covers, name, "frequency") || isCovered(covers, name, "ident"));

/** The reflectors that may be seen. */
export const reflectorsSeen = ({ scene }: Situation): readonly Reflector[] =>
  scene.signal === null || reflectorsCovered(scene) ? [] : scene.signal.reflectors;

export function ReflectorSigns(props: {
  readonly frame: ChartFrame;
  readonly situation: Situation;
}): VNode | null {
  const { frame, situation } = props;
  const reachPx = SIGN_REACH_PX * frame.typeScale;
  const seen = reflectorsSeen(situation).filter(
    ({ position }) =>
      drawable(frame, position) && onSheet(frame, frame.projection.toPaper(position), reachPx),
  );
  if (seen.length === 0) return null;
  return (
    <g>
      {seen.map((reflector) => (
        <ReflectorSign frame={frame} reflector={reflector} />
      ))}
    </g>
  );
}

function ReflectorSign({
  frame,
  reflector,
}: {
  readonly frame: ChartFrame;
  readonly reflector: Reflector;
}): VNode {
  const { theme, typeScale, projection } = frame;
  const at = projection.toPaper(reflector.position);
  const half = HALF_PX * typeScale;
  const halo = { stroke: theme.sea, "stroke-width": px(5 * Math.sqrt(typeScale)), "stroke-opacity": 0.85 };
  const ink = { stroke: theme.soft, "stroke-width": px(2 * Math.sqrt(typeScale)) };
  const wall = `M${px(-half)} 0H${px(half)}`;
  const ray = `M${px(-0.8 * half)} ${px(-1.3 * half)}L0 ${px(-0.25 * half)}L${px(0.8 * half)} ${px(-1.3 * half)}`;
  return (
    <g data-reflector={reflector.ident}>
      <g
        transform={`translate(${px(at.x)} ${px(at.y)})`}
        fill="none"
        stroke-linecap="round"
        stroke-linejoin="round"
      >
        <path d={`${wall}${ray}`} {...halo} />
        <path d={wall} {...ink} />
        <path d={ray} {...ink} stroke-width={px(1.2 * Math.sqrt(typeScale))} />
      </g>
      <Words
        text="reflector"
        x={at.x}
        y={at.y - 1.3 * half - 10 * typeScale}
        style={{ ...nameStyle(typeScale), fill: theme.soft, halo: theme.sea, haloPx: 2.6 }}
      />
    </g>
  );
}
