/** Meridians and parallels, the border they meet in minutes ticked light and dark as an atlas does, and their figures in it. */

import type { VNode } from "preact";
import { type PaperPoint, pathThrough } from "../plain/paper.ts";
import { px } from "../plain/px.ts";
import { type ChartFrame, NOTE_PX } from "./frame.ts";
import {
  crossing,
  latitudeText,
  longitudeText,
  type Net,
  netOf,
  paperAt,
  type Side,
} from "./graticule-net.ts";
import { Words, wordsWidthPx } from "./words.tsx";

const BORDER_PX = 4;
/** The lines across the map; they go under everything but land. */
export function GraticuleLines({ frame }: { readonly frame: ChartFrame }): VNode | null {
  const net = netOf(frame);
  if (!net) return null;
  const { bounds } = net;
  const between = (from: number, to: number, place: (at: number) => PaperPoint) =>
    Array.from({ length: 13 }, (_, index) => place(from + ((to - from) * index) / 12));
  const paths = [
    ...net.parallelsMin.map((latMin) =>
      between(bounds.westMin, bounds.eastMin, (lonMin) => paperAt(frame, latMin, lonMin)),
    ),
    ...net.meridiansMin.map((lonMin) =>
      between(bounds.southMin, bounds.northMin, (latMin) => paperAt(frame, latMin, lonMin)),
    ),
  ];
  if (paths.length === 0) return null;
  return (
    <path
      d={paths.map((points) => pathThrough(points)).join("")}
      fill="none"
      stroke={frame.theme.line}
      stroke-width={0.8}
    />
  );
}

/** The border, with its figures; drawn last, over whatever runs off the sheet. */
export function GraticuleBorder({ frame }: { readonly frame: ChartFrame }): VNode {
  const { window, theme, widthPx, heightPx, typeScale } = frame;
  const net = netOf(frame);
  const outer = `M0 0H${px(widthPx)}V${px(heightPx)}H0Z`;
  const inner = `M${px(window.left)} ${px(window.top)}V${px(window.bottom)}H${px(window.right)}V${px(window.top)}Z`;
  const style = { sizePx: NOTE_PX * typeScale, fill: theme.soft };
  return (
    <g>
      <path d={outer + inner} fill={theme.paper} fill-rule="evenodd" />
      {net && <BorderTicks frame={frame} net={net} />}
      <path d={inner} fill="none" stroke={theme.soft} stroke-width={1} />
      {net?.meridiansMin.map((lonMin) => {
        const text = longitudeText(frame.view.centre.lonDeg * 60 + lonMin);
        const half = wordsWidthPx(text, style) / 2;
        const x = crossing(frame, "bottom", lonMin, net.bounds);
        if (x === null || x - half < window.left || x + half > window.right) return null;
        return <Words text={text} x={x} y={(window.bottom + BORDER_PX + heightPx) / 2} style={style} />;
      })}
      {net?.parallelsMin.map((latMin) => {
        const text = latitudeText(latMin);
        const half = wordsWidthPx(text, style) / 2;
        const y = crossing(frame, "left", latMin, net.bounds);
        if (y === null || y - half < window.top || y + half > window.bottom) return null;
        return <Words text={text} x={(window.left - BORDER_PX) / 2} y={y} style={style} turnDeg={-90} />;
      })}
    </g>
  );
}

/** Every second interval between two ticks is filled. */
function BorderTicks({ frame, net }: { readonly frame: ChartFrame; readonly net: Net }): VNode {
  const { window, theme } = frame;
  const bars = (side: Side): string => {
    const upright = side === "left" || side === "right";
    const tickMin = upright ? net.latTickMin : net.lonTickMin;
    const fromMin = upright ? net.bounds.southMin : net.bounds.westMin;
    const toMin = upright ? net.bounds.northMin : net.bounds.eastMin;
    const lowest = upright ? window.top : window.left;
    const highest = upright ? window.bottom : window.right;
    const offsetMin = upright ? 0 : frame.view.centre.lonDeg * 60;
    const parts: string[] = [];
    const first = Math.floor((fromMin + offsetMin) / tickMin);
    const last = Math.ceil((toMin + offsetMin) / tickMin);
    for (let tick = first; tick < last; tick++) {
      if (tick % 2 !== 0) continue;
      const a = crossing(frame, side, tick * tickMin - offsetMin, net.bounds);
      const b = crossing(frame, side, (tick + 1) * tickMin - offsetMin, net.bounds);
      if (a === null || b === null) continue;
      const start = Math.max(lowest, Math.min(a, b));
      const end = Math.min(highest, Math.max(a, b));
      if (end <= start) continue;
      const at = {
        left: window.left - BORDER_PX,
        right: window.right,
        top: window.top - BORDER_PX,
        bottom: window.bottom,
      }[side];
      parts.push(
        upright
          ? `M${px(at)} ${px(start)}h${BORDER_PX}v${px(end - start)}h${-BORDER_PX}Z`
          : `M${px(start)} ${px(at)}v${BORDER_PX}h${px(end - start)}v${-BORDER_PX}Z`,
      );
    }
    return parts.join("");
  };
  const all = (["left", "right", "top", "bottom"] as const).map(bars).join("");
  const { left, right, top, bottom } = window;
  const box = `M${px(left - BORDER_PX)} ${px(top - BORDER_PX)}H${px(right + BORDER_PX)}V${px(bottom + BORDER_PX)}H${px(left - BORDER_PX)}Z`;
  return (
    <g>
      {all !== "" && <path d={all} fill={theme.soft} fill-opacity={0.75} />}
      <path d={box} fill="none" stroke={theme.soft} stroke-width={0.7} />
    </g>
  );
}
