/** The pictures of a problem on paper: what is shown of its scene, and an empty instrument for what is to be found. */

import { h } from "preact";
import { renderToString } from "preact-render-to-string";
import type { Situation } from "../../scene/index.ts";
import { Chart, chartDescription, fitView, type WorldOutlines } from "../chart/index.ts";
import { Panel, panelSentence } from "../faces/index.ts";
import { PRINT_THEME, type Theme } from "../theme.ts";
import { BlankDial, BlankRose, type RoseMark } from "./blank-instruments.tsx";

export type SheetPictureWanted =
  | { readonly kind: "chart" }
  | { readonly kind: "panel" }
  /** An empty face; `course` under its index, null where that is to be found too. */
  | { readonly kind: "blank-dial"; readonly course: number | null }
  /** An empty rose around a station. */
  | {
      readonly kind: "blank-rose";
      readonly ident: string;
      readonly north: string;
      readonly marks: readonly RoseMark[];
    };

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
      const view = fitView(situation, widthPx, heightPx, TYPE_SCALE);
      const chart = renderToString(h(Chart, { ...common, situation, view, world, typeScale: TYPE_SCALE }));
      return picture(chart, `Chart. ${chartDescription(situation)}`);
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
        renderToString(
          h(BlankRose, { ...common, ident: wanted.ident, north: wanted.north, marks: wanted.marks }),
        ),
        `An empty rose around ${wanted.ident} to draw in.`,
      );
  }
}

/** Of the pictures' words against 14 px: they stand a quarter smaller on paper than on a screen, and are read from nearer. */
const TYPE_SCALE = 0.86;
