/** Where title, question, views and caution of a figure stand. Plain arithmetic in px. */

import type { Reason } from "../../reason/index.ts";
import { type Situation, TRAINING_CAUTION, type View } from "../../scene/index.ts";
import { LINE_HEIGHT, shortenText, textWidthPx, wrapText } from "../plain/text-width.ts";
import { spokenSteps } from "../reasons/index.ts";
import { arrangeViews, type Box, type PlacedView } from "./arrange-views.ts";
import { showsField } from "./figure-sentence.ts";
import { legibilityOf } from "./legibility.ts";

export interface FigureLine {
  readonly role: "title" | "place" | "ask" | "field" | "caution";
  readonly text: string;
  readonly x: number;
  /** Baseline. */
  readonly y: number;
  readonly sizePx: number;
  readonly anchor: "start" | "end";
}

export interface FigureLayout {
  readonly scale: number;
  readonly words: readonly FigureLine[];
  readonly views: readonly PlacedView[];
  /** Whose argument is drawn: everyone's where it can be read, else one receiver's. */
  readonly argued: readonly string[];
}

export interface FigureRequest {
  readonly situation: Situation;
  readonly reasons: readonly Reason[];
  readonly views: readonly View[];
  readonly widthPx: number;
  readonly heightPx: number;
  readonly typeScale?: number | undefined;
  readonly receiver?: string | undefined;
  readonly field?: { readonly words: string } | null | undefined;
}

/** A page this large is read at arm's length at scale 1; 1920 by 1080 is 24 px and more, for the back row. */
const PAGE_WIDTH_PX = 960;
const PAGE_HEIGHT_PX = 600;
const MOST_ASK_LINES = 3;

export const figureScale = (widthPx: number, heightPx: number): number =>
  Math.max(1, Math.min(widthPx / PAGE_WIDTH_PX, heightPx / PAGE_HEIGHT_PX));

export function layoutFigure(request: FigureRequest): FigureLayout {
  const { situation, widthPx, heightPx } = request;
  const { scene } = situation;
  const scale = request.typeScale ?? figureScale(widthPx, heightPx);
  const marginPx = 14 * scale;
  const gapPx = 11 * scale;
  const insidePx = widthPx - 2 * marginPx;
  const words: FigureLine[] = [];

  const titlePx = 18 * scale;
  const title = shortenText(scene.title, insidePx, titlePx, "words-bold");
  const titleY = marginPx * 0.75 + titlePx;
  words.push({ role: "title", text: title, x: marginPx, y: titleY, sizePx: titlePx, anchor: "start" });
  const place = scene.land?.name ?? "";
  const placePx = 14 * scale;
  const placeRoomPx = insidePx - textWidthPx(title, titlePx, "words-bold") - 18 * scale;
  if (place !== "" && textWidthPx(place, placePx, "words") <= placeRoomPx)
    words.push({
      role: "place",
      text: place,
      x: widthPx - marginPx,
      y: titleY,
      sizePx: placePx,
      anchor: "end",
    });

  const askPx = 16 * scale;
  const askLines = wrapText(scene.ask, insidePx, askPx, "words").slice(0, MOST_ASK_LINES);
  askLines.forEach((text, index) => {
    const y = titleY + (index + 1) * askPx * LINE_HEIGHT + 3 * scale;
    words.push({ role: "ask", text, x: marginPx, y, sizePx: askPx, anchor: "start" });
  });

  const cautionPx = Math.max(12, 11.5 * scale);
  const cautionLines = wrapText(TRAINING_CAUTION, insidePx, cautionPx, "words");
  const cautionTop = heightPx - 9 * scale - (cautionLines.length - 1) * cautionPx * LINE_HEIGHT;
  cautionLines.forEach((text, index) => {
    const y = cautionTop + index * cautionPx * LINE_HEIGHT;
    words.push({ role: "caution", text, x: marginPx, y, sizePx: cautionPx, anchor: "start" });
  });

  const fieldWords = showsField(situation, request.views) ? (request.field?.words ?? "") : "";
  const fieldLines = fieldWords === "" ? [] : wrapText(fieldWords, insidePx, cautionPx, "words");
  const fieldHeightPx = fieldLines.length * cautionPx * LINE_HEIGHT;
  fieldLines.forEach((text, index) => {
    const y = cautionTop - fieldHeightPx + index * cautionPx * LINE_HEIGHT;
    words.push({ role: "field", text, x: marginPx, y, sizePx: cautionPx, anchor: "start" });
  });

  const top =
    titleY + askLines.length * askPx * LINE_HEIGHT + (askLines.length > 0 ? 3 : 0) * scale + 11 * scale;
  const bottom = cautionTop - fieldHeightPx - cautionPx - 8 * scale;
  const box = { x: marginPx, y: top, widthPx: insidePx, heightPx: Math.max(1, bottom - top) };
  return { scale, words, ...arrange(request, box, { gapPx, scale }) };
}

/** Type this much smaller than full size is too small to argue for every receiver at once. */
const READABLE = 0.72;

function arrange(request: FigureRequest, box: Box, { gapPx, scale }: { gapPx: number; scale: number }) {
  const { situation, views } = request;
  const open = spokenSteps(request.reasons, situation.scene.covers);
  const everyone = [...new Set(request.reasons.map((reason) => reason.receiver))];
  const first = request.receiver ?? everyone[0];
  const arrangeFor = (argued: readonly string[]) => {
    const legibility = legibilityOf({
      dials: situation.receivers.length,
      reasons: open.filter((reason) => argued.includes(reason.receiver)),
      scale,
      areaPx2: box.widthPx * box.heightPx,
    });
    const placed = arrangeViews(views, box, gapPx, legibility);
    const sheet = placed.find((each) => each.view === "reasons");
    const readable =
      sheet === undefined || legibility("reasons", sheet.box.widthPx, sheet.box.heightPx) >= READABLE;
    return { views: placed, argued, readable };
  };
  const all = arrangeFor(everyone);
  return all.readable || first === undefined ? all : arrangeFor([first]);
}
