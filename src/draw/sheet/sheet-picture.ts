/** The pictures of a problem on paper: what is shown of its scene, and an empty instrument for what is to be found. */

import { h } from "preact";
import { renderToString } from "preact-render-to-string";
import type { LatLon } from "../../earth/index.ts";
import type { Situation } from "../../scene/index.ts";
import { Chart, chartDescription, fitView, type WorldOutlines } from "../chart/index.ts";
import { Panel, panelSentence } from "../faces/index.ts";
import { PRINT_THEME, type Theme } from "../theme.ts";
import { BlankDial, BlankRose } from "./blank-instruments.tsx";
import { type ChartMark, ChartMarks, viewAround } from "./chart-marks.tsx";

export type SheetPictureWanted =
  /** `marks`: letters at places to choose from. */
  | { readonly kind: "chart"; readonly marks: readonly ChartMark[] }
  | { readonly kind: "panel" }
  /** An empty face; `course` under its index, null where that is to be found too. */
  | { readonly kind: "blank-dial"; readonly course: number | null }
  /** An empty rose around a station. */
  | { readonly kind: "blank-rose"; readonly ident: string; readonly north: string };

export interface SheetPicture {
  readonly svg: string;
  /** In words, what is covered only named as covered. */
  readonly words: string;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** A picture of a problem. Where the chart has no land of its own, `world` stands in. */
export function sheetPicture(
  wanted: SheetPictureWanted,
  situation: Situation,
  size: {
    readonly widthPx: number;
    readonly heightPx: number;
    readonly idPrefix: string;
    /** For paper when not given. */
    readonly theme?: Theme;
  },
  world: WorldOutlines | null = null,
): SheetPicture {
  const common = { theme: PRINT_THEME, ...size };
  const { widthPx, heightPx } = size;
  const picture = (svg: string, words: string): SheetPicture => ({ svg, words, widthPx, heightPx });
  switch (wanted.kind) {
    case "chart": {
      const { marks } = wanted;
      const view = viewAround(
        fitView(situation, widthPx, heightPx, TYPE_SCALE),
        placesOf(situation, marks),
        size,
      );
      const chart = renderToString(h(Chart, { ...common, situation, view, world, typeScale: TYPE_SCALE }));
      const letters =
        marks.length === 0
          ? ""
          : renderToString(h(ChartMarks, { ...size, marks, view, theme: common.theme }));
      const named = marks.length === 0 ? "" : ` Marked ${marks.map(({ letter }) => letter).join(", ")}.`;
      // A chart ends with what lies above all else.
      return picture(
        chart.replace(/<\/svg>$/, `${letters}</svg>`),
        `Chart. ${chartDescription(situation)}${named}`,
      );
    }
    case "panel":
      return picture(
        renderToString(h(Panel, { ...common, situation, typeScale: TYPE_SCALE })),
        `Panel. ${panelSentence(situation)}`,
      );
    case "blank-dial":
      return picture(
        renderToString(h(BlankDial, { ...common, course: wanted.course })),
        "An empty course indicator to draw needle and flag in.",
      );
    case "blank-rose":
      return picture(
        renderToString(h(BlankRose, { ...common, ident: wanted.ident, north: wanted.north })),
        `An empty rose around ${wanted.ident} to draw in.`,
      );
  }
}

/** Of the pictures' words against 14 px: they stand a quarter smaller on paper than on a screen, and are read from nearer. */
const TYPE_SCALE = 0.86;

/** The marks with the stations they are counted from; none without marks. */
const placesOf = (situation: Situation, marks: readonly ChartMark[]): readonly LatLon[] =>
  marks.length === 0
    ? []
    : [
        ...marks.map(({ position }) => position),
        ...situation.receivers.flatMap(({ signal }) =>
          signal.kind === "good" || signal.kind === "weak" ? [signal.station.position] : [],
        ),
      ];
