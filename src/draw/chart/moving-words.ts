/**
 * The words on the lines and at the aircraft. A line is named along itself where there is room; where there is none, beside the
 * aircraft under its heading and height.
 */

import { threeDigits } from "../../earth/index.ts";
import { feet, miles } from "../../reason/index.ts";
import type { Situation } from "../../scene/index.ts";
import type { PaperPoint } from "../plain/paper.ts";
import { type AircraftOnSheet, VECTOR_START_PX } from "./aircraft.tsx";
import { type ChartFrame, inset, isSmall, onSheet, TEXT_PX } from "./frame.ts";
import { alongLine, aroundPoint, type BoxSize, besidePoint } from "./label-places.ts";
import type { DrawnReceiver } from "./lines-layout.ts";
import { bestPlace, boxObstacle, type Candidate, type LabelBox, type Obstacle } from "./placement.ts";
import { roseRadiusPx } from "./station-plan.ts";
import { wordsBox, wordsWidthPx } from "./words.tsx";

export type LabelInk = "course" | "radial" | "ink";

interface Label {
  readonly receiver: string;
  readonly part: "course" | "to-side" | "from-side" | "radial" | "offset";
  readonly text: string;
  readonly ink: LabelInk;
  /** Numbers of the receivers it speaks of, printed before the words; none in a scene with one receiver. */
  readonly tags: readonly number[];
}

export interface LineLabel extends Label {
  readonly box: LabelBox;
}

/** The lines of words at the aircraft: its heading and height, then what found no room along its own line. */
export interface AircraftBlock {
  readonly box: LabelBox;
  readonly rowPx: number;
  /** Which side of the aircraft the block stands on, so that its words lean toward it. */
  readonly leans: "start" | "middle" | "end";
  /** One line, or two on a small sheet; only the height while the heading is covered. */
  readonly headings: readonly string[];
  readonly lines: readonly Label[];
}

export interface Moving {
  readonly receivers: readonly DrawnReceiver[];
  readonly aircraft: AircraftOnSheet | null;
  readonly offsetShown: boolean;
}

/** The best of the places, unless it hides more than the limit. */
type Settle = (candidates: readonly Candidate<null>[], limit: number) => LabelBox | null;

const WORDS_WEIGHT = 16;
/** What words along a line may hide, as cost for each pixel of their own area, before they are written elsewhere or not at all. */
const LINE_LIMIT = 0.25;
/** Room for the receiver's number before the words, at type scale 1. */
export const TAG_ROOM_PX = 21;
const ROW_PX = 19;

export const lineLabelStyle = (typeScale: number) => ({ sizePx: TEXT_PX * typeScale, bold: true });
export const aircraftLabelStyle = (typeScale: number) => ({ sizePx: TEXT_PX * typeScale });

export function placeMovingWords(
  frame: ChartFrame,
  situation: Situation,
  moving: Moving,
  taken: readonly Obstacle[],
): { labels: LineLabel[]; block: AircraftBlock | null } {
  const obstacles: Obstacle[] = [...taken];
  const labels: LineLabel[] = [];
  const settle: Settle = (candidates, limit) => {
    const best = bestPlace(candidates, obstacles, inset(frame.window, 5));
    if (!best || best.totalCost - best.cost > limit * best.box.widthPx * best.box.heightPx) return null;
    obstacles.push(boxObstacle(best.box, WORDS_WEIGHT, 3));
    return best.box;
  };
  const write = (label: Label, candidates: readonly Candidate<null>[], limit: number): boolean => {
    const box = settle(candidates, limit);
    if (box) labels.push({ ...label, box });
    return box !== null;
  };
  const tagged = moving.receivers.length > 1;
  const homeless: Label[] = [];
  for (const { label, line } of radialLabels(frame, moving.receivers)) {
    if (!write(label, alongRadial(frame, line, sizeOf(frame, label)), LINE_LIMIT)) homeless.push(label);
  }
  for (const drawn of moving.receivers) {
    const name = courseLabel(frame, drawn, tagged);
    if (!name || write(name.label, name.places, LINE_LIMIT)) continue;
    if (moving.aircraft) homeless.push(name.label);
    else write(name.label, name.places, Number.POSITIVE_INFINITY);
  }
  const block = placeBlock(frame, situation, moving.aircraft, homeless, settle);
  for (const drawn of moving.receivers)
    for (const { label, places } of halfLabels(frame, drawn)) write(label, places, LINE_LIMIT);
  for (const drawn of moving.offsetShown ? moving.receivers : []) {
    const offset = offsetLabel(frame, drawn);
    if (offset) write(offset.label, offset.places, Number.POSITIVE_INFINITY);
  }
  return { labels, block };
}

function sizeOf(frame: ChartFrame, { text, tags }: Label): BoxSize {
  const { widthPx, heightPx } = wordsBox(text, lineLabelStyle(frame.typeScale), { x: 0, y: 0 });
  return { widthPx: widthPx + tags.length * TAG_ROOM_PX * frame.typeScale, heightPx };
}

const clearOfRosePx = (frame: ChartFrame): number => roseRadiusPx(frame) + 16;

/** One label for each station: receivers tuned to the same one share it, the chosen speaking for all. */
function radialLabels(
  frame: ChartFrame,
  receivers: readonly DrawnReceiver[],
): { readonly label: Label; readonly line: readonly PaperPoint[] }[] {
  const byStation = new Map<unknown, DrawnReceiver[]>();
  for (const drawn of receivers)
    if (drawn.aircraft)
      byStation.set(drawn.reading.station, [...(byStation.get(drawn.reading.station) ?? []), drawn]);
  return [...byStation.values()].flatMap((sharing) => {
    const spokesman = sharing.find(({ chosen }) => chosen) ?? sharing[0];
    if (!spokesman?.aircraft || !spokesman.reading.geometry) return [];
    const { station } = spokesman.reading;
    const start = spokesman.aircraft.radial[0];
    const whose = station && start && !onSheet(frame, start) ? `${station.ident} ` : "";
    const label: Label = {
      receiver: spokesman.reading.settings.name,
      part: "radial",
      text: `${whose}radial ${threeDigits(spokesman.reading.geometry.trueRadial)}`,
      ink: "radial",
      tags: receivers.length > 1 ? sharing.map(({ number }) => number) : [],
    };
    return [{ label, line: spokesman.aircraft.radial }];
  });
}

function alongRadial(frame: ChartFrame, line: readonly PaperPoint[], size: BoxSize): Candidate<null>[] {
  const clearPx = clearOfRosePx(frame);
  const stopPx = (VECTOR_START_PX + 2) * frame.typeScale;
  return alongLine(line, frame.window, size, { clearPx, stopPx, wishPx: clearPx });
}

interface Offered {
  readonly label: Label;
  readonly places: readonly Candidate<null>[];
}

/** The course on whichever half has room. */
function courseLabel(frame: ChartFrame, drawn: DrawnReceiver, tagged: boolean): Offered | null {
  const { course, reading, number } = drawn;
  if (!course) return null;
  const label: Label = {
    receiver: reading.settings.name,
    part: "course",
    text: `course ${threeDigits(reading.settings.course)}`,
    ink: "course",
    tags: tagged ? [number] : [],
  };
  // Beyond the words TO and FROM.
  const wishPx = clearOfRosePx(frame) + 64 * frame.typeScale;
  const onFromHalf = alongHalf(frame, course.fromHalf, label, wishPx);
  return {
    label,
    places: [
      ...alongHalf(frame, course.toHalf, label, wishPx),
      ...onFromHalf.map((each) => ({ ...each, cost: each.cost + 30 })),
    ],
  };
}

function halfLabels(frame: ChartFrame, { course, reading, halvesShown }: DrawnReceiver): Offered[] {
  if (!course || !halvesShown) return [];
  const receiver = reading.settings.name;
  const to: Label = { receiver, part: "to-side", text: "TO", ink: "course", tags: [] };
  const from: Label = { receiver, part: "from-side", text: "FROM", ink: "course", tags: [] };
  const wishPx = clearOfRosePx(frame) + 6;
  return [
    { label: to, places: alongHalf(frame, course.toHalf, to, wishPx) },
    { label: from, places: alongHalf(frame, course.fromHalf, from, wishPx) },
  ];
}

function alongHalf(
  frame: ChartFrame,
  half: readonly PaperPoint[],
  label: Label,
  wishPx: number,
): Candidate<null>[] {
  const clearPx = clearOfRosePx(frame);
  return alongLine(half, frame.window, sizeOf(frame, label), { clearPx, stopPx: 6, wishPx });
}

function offsetLabel(frame: ChartFrame, drawn: DrawnReceiver): Offered | null {
  const { aircraft, course, chosen, seen, reading } = drawn;
  if (!chosen || !seen.offset || !aircraft || !course) return null;
  const label: Label = {
    receiver: reading.settings.name,
    part: "offset",
    text: miles(aircraft.offsetNm),
    ink: "course",
    tags: [],
  };
  const [from, to] = aircraft.offset;
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const places = [12, 26, 44].flatMap((clearPx) =>
    besidePoint(sizeOf(frame, label), middle, clearPx * frame.typeScale).map((each) => ({
      ...each,
      cost: each.cost + clearPx * 3,
    })),
  );
  return { label, places };
}

function placeBlock(
  frame: ChartFrame,
  situation: Situation,
  aircraft: AircraftOnSheet | null,
  lines: readonly Label[],
  settle: Settle,
): AircraftBlock | null {
  if (!aircraft || !onSheet(frame, aircraft.at)) return null;
  const s = frame.typeScale;
  const height = feet(situation.scene.aircraft.altitudeFt);
  const heading = `heading ${threeDigits(situation.scene.aircraft.heading)}`;
  // On a small sheet that also names lines here the height gives way: the panel says it, and the block hides less.
  const shortened = lines.length > 0 ? [heading] : [heading, height];
  const headings =
    aircraft.headingDeg === null ? [height] : isSmall(frame) ? shortened : [`${heading} · ${height}`];
  const widths = [
    ...headings.map((text) => wordsWidthPx(text, aircraftLabelStyle(s)) + 4),
    ...lines.map((label) => sizeOf(frame, label).widthPx),
  ];
  const size = {
    widthPx: Math.max(...widths),
    heightPx: ROW_PX * s * (headings.length + lines.length) - 4 * s,
  };
  const places = [26, 34, 44, 56, 70, 86, 104, 126, 150].flatMap((clearPx, ring) =>
    aroundPoint(size, aircraft.at, clearPx * s).map((each) => ({ ...each, cost: each.cost + ring * 45 })),
  );
  const box = settle(places, Number.POSITIVE_INFINITY);
  if (!box) return null;
  const asidePx = box.x - aircraft.at.x;
  const leans = Math.abs(asidePx) < box.widthPx / 3 ? "middle" : asidePx > 0 ? "start" : "end";
  return { box, rowPx: ROW_PX * s, leans, headings, lines };
}
