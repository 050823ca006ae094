/**
 * A needle field as one still picture on a chart, for figures: the plate that the bench makes, printed with the bench's own inks, as a
 * PNG that lies over the chart's ground as ink over ink.
 */

import { encode } from "fast-png";
import type { Scene } from "../../scene/index.ts";
import type { Theme } from "../theme.ts";
import { coverOver, type FieldShown } from "./field-choice.ts";
import { shadeTable } from "./field-print.ts";
import { receiversOf, subjectOf } from "./field-subject.ts";
import { fieldCaption } from "./field-words.ts";
import { INK_COUNT, inksFor, TILE_CELLS } from "./inks.ts";
import { columnsOf } from "./paper-places.ts";
import { makePlate, type Plate, type PlatePaper, type PlateRequest, plateFields } from "./plate.ts";
import { printPlate } from "./print-plate.ts";

/** What a figure needs of a field. */
export interface ChartField {
  /** What it is and what its inks mean, in one sentence. */
  readonly words: string;
  /** The picture for a chart of that size and view, in px; its cells are a pixel wide, or half a pixel on a small chart. */
  readonly pictureOn: (paper: PlatePaper, theme: Theme) => FieldPicture;
}

export interface FieldPicture {
  /** A `data:` address of a PNG without transparency. */
  readonly href: string;
  /** What the whole picture spans on the chart, px: at least the chart. */
  readonly widthPx: number;
  readonly heightPx: number;
}

/** A chart of less than so many pixels is for paper or a small slide: there half a pixel is still seen. */
const SMALL_PX2 = 700_000;

/** The field of a scene as `choiceFor` gives it; null where a cover is in its way or the scene has no such receiver. */
export function chartField(scene: Scene, choice: FieldShown): ChartField | null {
  const subject = subjectOf(scene, choice);
  const first = receiversOf(scene, choice)?.first;
  if (subject === null || first === undefined || coverOver(scene, choice) !== null) return null;
  const { kind } = choice;
  const { course, bearingErrorDeg } = first;
  return {
    words: fieldCaption(choice, scene.aircraft.altitudeFt),
    pictureOn: (paper, theme) => {
      const cellPx = paper.widthPx * paper.heightPx < SMALL_PX2 ? 0.5 : 1;
      const plate = wholePlate({ subject, paper, cellPx });
      const table = shadeTable();
      table.turnTo({ kind, course, bearingErrorDeg });
      const inks = inksFor(kind, theme);
      const pixels = new Uint32Array(plate.columns * plate.rows);
      printPlate({
        plate,
        pixelsPerCell: 1,
        look: { kind, course, bearingErrorDeg },
        shades: table.shades,
        inks: new Uint32Array(inks.buffer, inks.byteOffset, INK_COUNT * TILE_CELLS),
        pixels,
        width: plate.columns,
      });
      return {
        href: `data:image/png;base64,${base64(pngOf(plate, new Uint8Array(pixels.buffer)))}`,
        widthPx: plate.columns * cellPx,
        heightPx: plate.rows * cellPx,
      };
    },
  };
}

function wholePlate(request: PlateRequest): Plate {
  const making = makePlate(
    request,
    plateFields(request.subject, columnsOf({ ...request.paper, ...request })),
  );
  for (;;) {
    const step = making.next();
    if (step.done) return step.value;
  }
}

/** Without the fourth byte, which is opaque everywhere. */
function pngOf({ columns, rows }: Plate, bytes: Uint8Array): Uint8Array {
  const data = new Uint8Array(columns * rows * 3);
  for (let pixel = 0, to = 0, from = 0; pixel < columns * rows; pixel++, from += 4) {
    data[to++] = bytes[from] as number;
    data[to++] = bytes[from + 1] as number;
    data[to++] = bytes[from + 2] as number;
  }
  return encode({ width: columns, height: rows, data, channels: 3, depth: 8 });
}

/** In pieces, since a call takes only so many arguments. */
function base64(bytes: Uint8Array): string {
  const pieces: string[] = [];
  for (let start = 0; start < bytes.length; start += 8192)
    pieces.push(String.fromCharCode(...bytes.subarray(start, start + 8192)));
  return btoa(pieces.join(""));
}
