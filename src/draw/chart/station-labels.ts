/**
 * What is written about each station, and where: the information box for those tuned and for as many others as there is room
 * for; otherwise one line; otherwise the ident; in a crowd, nothing rather than a heap.
 */

import { type ChartFrame, inset, isSmall, NOTE_PX, onSheet } from "./frame.ts";
import { frequencyText, type InfoBoxForm, infoBoxSize } from "./info-box.tsx";
import { type BoxSize, besideCircle } from "./label-places.ts";
import {
  bestPlace,
  boxObstacle,
  type Candidate,
  type LabelBox,
  type Obstacle,
  type Placed,
} from "./placement.ts";
import { type StationOnSheet, stationReachPx } from "./station-plan.ts";
import { SYMBOL_RADIUS_PX } from "./station-symbol.tsx";
import { wordsBox } from "./words.tsx";

/** `outer` is the box with the numbers of the receivers beside it. */
export type StationLabel =
  | { readonly kind: "box"; readonly box: LabelBox; readonly outer: LabelBox; readonly form: InfoBoxForm }
  | { readonly kind: "line"; readonly box: LabelBox; readonly outer: LabelBox; readonly text: string };

export const LABEL_WEIGHT = 16;
/** A label of an untuned station may hide this much, as cost for each pixel of its own area. */
const ACCEPTABLE = 0.22;
/** With more stations than this on the sheet those untuned get no box, with more than the second no label. */
const BOXES_UP_TO = 12;
const LABELS_UP_TO = 80;
/** Directions tried, best liked first: beside, then above and below. */
const LIKED_DEG = [90, 270, 60, 300, 120, 240, 75, 285, 105, 255, 40, 320, 140, 220, 15, 345, 165, 195];
/** Rings tried, px beyond the station's reach. */
const FARTHER_PX = [10, 26, 52];
/** From one receiver's number to the next. */
export const TAG_STEP_PX = 18;

export const lineStyle = (typeScale: number) => ({ sizePx: NOTE_PX * typeScale, bold: true });

/**
 * Labels for these stations, in their order, each keeping clear of those before; a station without one is left out. `crowd` is
 * how many stations the whole sheet has.
 */
export function layOutStationLabels(
  frame: ChartFrame,
  stations: readonly StationOnSheet[],
  taken: readonly Obstacle[],
  crowd: number,
): Map<StationOnSheet, StationLabel> {
  const obstacles: Obstacle[] = [...taken];
  const labels = new Map<StationOnSheet, StationLabel>();
  stations.forEach((station, index) => {
    const isTuned = station.tunedBy.length > 0;
    if (!onSheet(frame, station.at) || (!isTuned && index >= LABELS_UP_TO)) return;
    const roomy = crowd <= BOXES_UP_TO && !isSmall(frame);
    const box = isTuned || roomy ? boxLabel(frame, station, obstacles, false) : null;
    const line = box ?? lineLabel(frame, station, obstacles);
    const label = line ?? (isTuned ? boxLabel(frame, station, obstacles, true) : null);
    if (!label) return;
    labels.set(station, label);
    obstacles.push(boxObstacle(label.outer, LABEL_WEIGHT, label.kind === "box" ? 8 : 2));
  });
  return labels;
}

function boxLabel(
  frame: ChartFrame,
  station: StationOnSheet,
  obstacles: readonly Obstacle[],
  always: boolean,
): StationLabel | null {
  const form = isSmall(frame) ? "compact" : "full";
  const size = infoBoxSize(station.station, frame.typeScale, form);
  const best = around(frame, station, size, stationReachPx(station), obstacles);
  if (!best || !(always || acceptable(best))) return null;
  return { kind: "box", box: withoutTags(frame, station, best.box), outer: best.box, form };
}

function lineLabel(
  frame: ChartFrame,
  station: StationOnSheet,
  obstacles: readonly Obstacle[],
): StationLabel | null {
  const { ident } = station.station;
  for (const text of [`${ident} ${frequencyText(station.station)}`, ident]) {
    const { widthPx, heightPx } = wordsBox(text, lineStyle(frame.typeScale), station.at);
    const reachPx = (SYMBOL_RADIUS_PX + 5) * station.symbolScale;
    const best = around(frame, station, { widthPx, heightPx }, reachPx, obstacles);
    if (best && acceptable(best))
      return { kind: "line", box: withoutTags(frame, station, best.box), outer: best.box, text };
  }
  return null;
}

/** Room on the left for the numbers of the receivers tuned to it. */
const tagsRoomPx = (frame: ChartFrame, { tunedBy }: StationOnSheet): number =>
  tunedBy.length === 0 ? 0 : (tunedBy.length * TAG_STEP_PX - 4) * frame.typeScale;

function withoutTags(frame: ChartFrame, station: StationOnSheet, box: LabelBox): LabelBox {
  const roomPx = tagsRoomPx(frame, station);
  return { ...box, widthPx: box.widthPx - roomPx, x: box.x + roomPx / 2 };
}

function acceptable<T>({ totalCost, cost, box }: Placed<T>): boolean {
  return totalCost - cost <= ACCEPTABLE * box.widthPx * box.heightPx;
}

function around(
  frame: ChartFrame,
  station: StationOnSheet,
  size: BoxSize,
  reachPx: number,
  obstacles: readonly Obstacle[],
): Placed<null> | null {
  const room = { widthPx: size.widthPx + tagsRoomPx(frame, station), heightPx: size.heightPx };
  const candidates: Candidate<null>[] = FARTHER_PX.flatMap((fartherPx, ring) =>
    LIKED_DEG.map((angleDeg, index) => {
      const clearPx = reachPx + (reachPx < 2 * SYMBOL_RADIUS_PX ? fartherPx / 4 : fartherPx);
      const centre = besideCircle(station.at, angleDeg, clearPx, room);
      return {
        box: { ...room, ...centre, turnDeg: 0 },
        cost: index * 8 + ring * 160,
        value: null,
      };
    }),
  );
  return bestPlace(candidates, obstacles, inset(frame.window, 8));
}
