/** The aircraft as a paper dart turned to its true heading, its heading line with one arrowhead and its track with two. */

import type { VNode } from "preact";
import { wrap180 } from "../../earth/index.ts";
import type { Situation } from "../../scene/index.ts";
import { fromPoint, type PaperPoint, pathThrough } from "../plain/paper.ts";
import { angle, px } from "../plain/px.ts";
import type { ChartFrame } from "./frame.ts";
import { seenOnChart } from "./seen.ts";

export interface AircraftOnSheet {
  readonly at: PaperPoint;
  /** Where the nose points on the paper; null while the heading is covered. */
  readonly headingDeg: number | null;
  /** Where the aircraft goes over the ground, on the paper, and how long its arrow is; null when as the heading. */
  readonly track: { readonly angleDeg: number; readonly lengthPx: number } | null;
}

/** From the middle of the dart, at type scale 1. */
export const VECTOR_START_PX = 22;
const HEADING_VECTOR_PX = 46;
const NOSE_PX = 17;
/** A drift smaller than this draws the track over the heading and says nothing. */
const SMALLEST_DRIFT_DEG = 1;

export function aircraftOnSheet(frame: ChartFrame, situation: Situation): AircraftOnSheet {
  const { aircraft } = situation.scene;
  const northDeg = frame.projection.trueNorthAngle(aircraft.position);
  const heading = seenOnChart(situation).heading;
  const drifting = Math.abs(wrap180(situation.driftDeg)) >= SMALLEST_DRIFT_DEG;
  const ratio = situation.groundspeedKt / Math.max(1, aircraft.tasKt);
  return {
    at: frame.projection.toPaper(aircraft.position),
    headingDeg: heading ? northDeg + situation.headingTrue : null,
    track:
      heading && drifting
        ? {
            angleDeg: northDeg + situation.trackTrue,
            lengthPx: HEADING_VECTOR_PX * frame.typeScale * Math.min(2, Math.max(0.5, ratio)),
          }
        : null,
  };
}

/** The heading and track lines, for labels to keep clear of. */
export function vectorPaths({ at, headingDeg, track }: AircraftOnSheet, typeScale: number): PaperPoint[][] {
  const startPx = VECTOR_START_PX * typeScale;
  const vector = (angleDeg: number, lengthPx: number) => [
    at,
    fromPoint(at, angleDeg, startPx + lengthPx + 6),
  ];
  return [
    ...(headingDeg === null ? [] : [vector(headingDeg, HEADING_VECTOR_PX * typeScale)]),
    ...(track === null ? [] : [vector(track.angleDeg, track.lengthPx)]),
  ];
}

export function AircraftSign(props: {
  readonly frame: ChartFrame;
  readonly aircraft: AircraftOnSheet;
  readonly lit: { readonly aircraft: boolean; readonly heading: boolean; readonly track: boolean };
}): VNode {
  const { frame, aircraft, lit } = props;
  const { theme, typeScale: s } = frame;
  const { at, headingDeg, track } = aircraft;
  return (
    <g transform={`translate(${px(at.x)} ${px(at.y)})`}>
      {lit.aircraft && <circle r={px(27 * s)} fill={theme.ink} fill-opacity={0.14} />}
      {track && (
        <Vector
          part="track"
          angleDeg={track.angleDeg}
          lengthPx={track.lengthPx}
          heads={2}
          lit={lit.track}
          frame={frame}
        />
      )}
      {headingDeg !== null && (
        <Vector
          part="heading"
          angleDeg={headingDeg}
          lengthPx={HEADING_VECTOR_PX * s}
          heads={1}
          lit={lit.heading}
          frame={frame}
        />
      )}
      {headingDeg === null ? (
        <g data-part="aircraft" fill={theme.ink} stroke={theme.paper} stroke-width={2}>
          <circle r={px(9 * s)} />
          <circle r={px(3 * s)} fill={theme.paper} stroke="none" />
        </g>
      ) : (
        <Dart headingDeg={headingDeg} frame={frame} />
      )}
    </g>
  );
}

function Dart({ headingDeg, frame }: { readonly headingDeg: number; readonly frame: ChartFrame }): VNode {
  const { theme, typeScale: s } = frame;
  const nose = { x: 0, y: -NOSE_PX * s };
  const notch = { x: 0, y: 6.5 * s };
  const wing = (side: 1 | -1) => ({ x: side * 12 * s, y: 13 * s });
  return (
    <g transform={`rotate(${angle(headingDeg)})`} data-part="aircraft">
      <path
        d={pathThrough([nose, wing(1), notch, wing(-1)], true)}
        fill={theme.ink}
        stroke={theme.paper}
        stroke-width={px(3 * s)}
        stroke-linejoin="round"
        paint-order="stroke"
      />
      {/* The fold: one wing in a softer light. */}
      <path d={pathThrough([nose, wing(1), notch], true)} fill={theme.paper} fill-opacity={0.26} />
    </g>
  );
}

function Vector(props: {
  readonly part: "heading" | "track";
  readonly angleDeg: number;
  readonly lengthPx: number;
  readonly heads: 1 | 2;
  readonly lit: boolean;
  readonly frame: ChartFrame;
}): VNode {
  const { part, angleDeg, lengthPx, heads, lit, frame } = props;
  const { theme, typeScale: s } = frame;
  const start = -VECTOR_START_PX * s;
  const end = start - lengthPx;
  const head = (tip: number) =>
    `M${px(-4 * s)} ${px(tip + 7 * s)}L0 ${px(tip)}L${px(4 * s)} ${px(tip + 7 * s)}`;
  const d = `M0 ${px(start)}V${px(end)}${head(end)}${heads === 2 ? head(end + 6 * s) : ""}`;
  const widthPx = (lit ? 2.8 : 1.5) * Math.sqrt(s);
  const shared = { d, fill: "none", "stroke-linecap": "round", "stroke-linejoin": "round" } as const;
  return (
    <g transform={`rotate(${angle(angleDeg)})`} data-part={part}>
      <path {...shared} stroke={theme.sea} stroke-opacity={0.75} stroke-width={px(widthPx + 3)} />
      <path {...shared} stroke={part === "heading" ? theme.ink : theme.soft} stroke-width={px(widthPx)} />
    </g>
  );
}
