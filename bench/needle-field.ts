/** The needle field of 960 by 600 pixels over the demo world: making its plate, and printing it anew for a turn of the course. */

import { packageFile } from "../src/cli/package-files.ts";
import { openBeside, readText } from "../src/cli/text-files.ts";
import { type FieldKind, newChoice } from "../src/draw/field/field-choice.ts";
import { shadeTable } from "../src/draw/field/field-print.ts";
import { subjectOf } from "../src/draw/field/field-subject.ts";
import { INK_COUNT, inksFor, TILE_CELLS } from "../src/draw/field/inks.ts";
import {
  COARSE_FACTOR,
  makePlate,
  type Plate,
  type PlateRequest,
  plateFields,
} from "../src/draw/field/plate.ts";
import { printPlate } from "../src/draw/field/print-plate.ts";
import { type ChartView, fitView, THEMES } from "../src/draw/index.ts";
import { stationDeg } from "../src/earth/index.ts";
import { readScene, resolveScene, type Scene } from "../src/scene/index.ts";
import { quickestMs } from "./rate.ts";

const WIDTH_PX = 960;
const HEIGHT_PX = 600;
const RUNS = 7;

/** Lines of the report. */
export function needleFields(): string[] {
  return [
    ...plateLines("needle", "01-which-way-to-the-course"),
    ...plateLines("reception", "14-what-the-mountain-hides"),
    ...plateLines("fix", "22-two-lines-one-mailboat"),
    ...printLines(),
  ];
}

function plateLines(kind: FieldKind, name: string): string[] {
  const request = requestFor(kind, demoScene(name));
  const coarse = { ...request, cellPx: COARSE_FACTOR };
  const fields = plateFields(request.subject, WIDTH_PX);
  const coarseMs = quickestMs(RUNS, () => wholePlate(coarse));
  const anewMs = quickestMs(RUNS, () => wholePlate(request));
  const againMs = quickestMs(RUNS, () => whole(makePlate(request, fields)));
  return [
    `${`field, plate for ${kind}`.padEnd(46)} ${coarseMs.toFixed(1)} ms in fours, ${anewMs.toFixed(0)} ms in full, ${againMs.toFixed(0)} ms for another view`,
  ];
}

/** By hand; on a graphics card the page measures it. */
function printLines(): string[] {
  const plate = wholePlate(requestFor("needle", demoScene("01-which-way-to-the-course")));
  const table = shadeTable();
  const inks = new Uint32Array(inksFor("needle", THEMES.light).buffer, 0, INK_COUNT * TILE_CELLS);
  const pixels = new Uint32Array(WIDTH_PX * HEIGHT_PX);
  let course = 0;
  const ms = quickestMs(100, () => {
    course = (course + 1) % 360;
    const look = { kind: "needle", course: stationDeg(course), bearingErrorDeg: 0 } as const;
    table.turnTo(look);
    printPlate({ plate, pixelsPerCell: 1, look, shades: table.shades, inks, pixels, width: WIDTH_PX });
  });
  return [`field, printed by hand for a course            ${ms.toFixed(2)} ms`];
}

function whole(making: Generator<undefined, Plate>): Plate {
  for (;;) {
    const step = making.next();
    if (step.done) return step.value;
  }
}

const wholePlate = (request: PlateRequest): Plate =>
  whole(makePlate(request, plateFields(request.subject, WIDTH_PX)));

function requestFor(kind: FieldKind, scene: Scene): PlateRequest {
  const names = scene.receivers.map(({ name }) => name);
  const choice = { ...newChoice(kind, names[0] ?? ""), other: names[1] ?? "" };
  const subject = subjectOf(scene, choice);
  if (subject === null) throw new Error(`${scene.title} has no receivers for a field`);
  const view: ChartView = fitView(resolveScene(scene), WIDTH_PX, HEIGHT_PX);
  return { subject, paper: { view, widthPx: WIDTH_PX, heightPx: HEIGHT_PX }, cellPx: 1 };
}

function demoScene(name: string): Scene {
  const path = packageFile(`demo/scenes/${name}.yaml`);
  const opened = readText(path);
  if (!("text" in opened)) throw new Error(`${path} cannot be read`);
  const read = readScene(opened.text, { path, open: openBeside });
  if (!read.ok) throw new Error(`${path} is at fault`);
  return read.scene;
}
