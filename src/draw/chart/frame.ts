/** One sheet: its projection, its window inside the border, its type sizes and colours. Everything a part of the chart needs to draw. */

import type { LatLon } from "../../earth/index.ts";
import type { PaperPoint } from "../plain/paper.ts";
import type { Theme } from "../theme.ts";
import type { PaperWindow } from "./placement.ts";
import { type ChartProjection, type ChartView, chartProjection } from "./projection.ts";

export interface FrameProps {
  readonly view: ChartView;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly theme: Theme;
  /** Put before every id in the drawing, so that two charts can share a page. */
  readonly idPrefix: string;
  /** 1 on a screen, up to 2 when projecting. */
  readonly typeScale?: number;
}

export interface ChartFrame {
  readonly view: ChartView;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly theme: Theme;
  readonly idPrefix: string;
  readonly typeScale: number;
  readonly projection: ChartProjection;
  /** The map itself, inside the border. */
  readonly window: PaperWindow;
}

/** What every size of type is multiplied from, px at type scale 1. Nothing on the chart is smaller than a note. */
export const NOTE_PX = 12;
export const TEXT_PX = 13;
export const NAME_PX = 14;

/** Room for the graticule's figures, on the left and at the bottom. */
const LABELLED_EDGE_PX = 22;
const PLAIN_EDGE_PX = 8;

/** The frame of a chart; the same arguments give the same frame. */
export function chartFrame(props: FrameProps): ChartFrame {
  const { view, widthPx, heightPx, theme, idPrefix, typeScale = 1 } = props;
  return {
    view,
    widthPx,
    heightPx,
    theme,
    idPrefix,
    typeScale,
    projection: chartProjection(view, widthPx, heightPx),
    window: {
      left: LABELLED_EDGE_PX * typeScale,
      top: PLAIN_EDGE_PX,
      right: widthPx - PLAIN_EDGE_PX,
      bottom: heightPx - LABELLED_EDGE_PX * typeScale,
    },
  };
}

/** On a sheet this small, words are shorter and boxes say less. */
const SMALL_BELOW_PX = 500;
export const isSmall = ({ widthPx, heightPx, typeScale }: ChartFrame): boolean =>
  Math.min(widthPx, heightPx) < SMALL_BELOW_PX * typeScale;

/** The window with its edge moved in by so much (out, when negative). */
export function inset(window: PaperWindow, byPx: number): PaperWindow {
  return {
    left: window.left + byPx,
    top: window.top + byPx,
    right: window.right - byPx,
    bottom: window.bottom - byPx,
  };
}

/** Whether a place lies on the sheet, or within so many pixels of it. */
export function onSheet(frame: ChartFrame, point: PaperPoint, marginPx = 0): boolean {
  const { left, top, right, bottom } = inset(frame.window, -marginPx);
  return point.x >= left && point.x <= right && point.y >= top && point.y <= bottom;
}

/**
 * Places this far from the middle, in degrees of arc, are not drawn at all: the cone is torn on the far side of the earth, and
 * nothing that a VOR receiver could hear is there.
 */
const FARTHEST_DEG = 40;

/** Whether a place is near enough to the view for the cone to draw it truly. */
export function drawable(frame: ChartFrame, { latDeg, lonDeg }: LatLon): boolean {
  const centre = frame.view.centre;
  const rad = Math.PI / 180;
  const cosine =
    Math.sin(latDeg * rad) * Math.sin(centre.latDeg * rad) +
    Math.cos(latDeg * rad) * Math.cos(centre.latDeg * rad) * Math.cos((lonDeg - centre.lonDeg) * rad);
  return cosine > Math.cos(FARTHEST_DEG * rad);
}
