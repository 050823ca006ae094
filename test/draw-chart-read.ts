/** Reads a chart back out of its SVG text: every element with where its corners really lie, after all turns and shifts. */

import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { renderToString } from "preact-render-to-string";
import { Chart, type ChartProps, type ChartView, fitView } from "../src/draw/chart/index.ts";
import { THEMES } from "../src/draw/theme.ts";
import { readScene, resolveScene, type Scene, type Situation } from "../src/scene/index.ts";

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A plane transform as SVG writes it: x' = ax + cy + e, y' = bx + dy + f. */
type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

export interface Drawn {
  readonly tag: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly Drawn[];
  /** All words inside, in order. */
  readonly words: string;
  readonly matrix: Matrix;
  /** The groups it stands in, from the outermost. */
  readonly groups: readonly Readonly<Record<string, string>>[];
}

const ENTITIES: Readonly<Record<string, string>> = { "&amp;": "&", "&lt;": "<", "&gt;": ">", "&quot;": '"' };
const decode = (text: string): string =>
  text.replace(/&(amp|lt|gt|quot);/g, (entity) => ENTITIES[entity] ?? entity);

const times = (m: Matrix, n: Matrix): Matrix => [
  m[0] * n[0] + m[2] * n[1],
  m[1] * n[0] + m[3] * n[1],
  m[0] * n[2] + m[2] * n[3],
  m[1] * n[2] + m[3] * n[3],
  m[0] * n[4] + m[2] * n[5] + m[4],
  m[1] * n[4] + m[3] * n[5] + m[5],
];

function matrixOf(transform: string | undefined): Matrix {
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  for (const [, name, list = ""] of (transform ?? "").matchAll(/(\w+)\(([^)]*)\)/g)) {
    const [a = 0, x = 0, y = 0] = list.split(/[ ,]+/).map(Number);
    if (name === "translate") matrix = times(matrix, [1, 0, 0, 1, a, x]);
    else if (name === "rotate") {
      const [cos, sin] = [Math.cos((a * Math.PI) / 180), Math.sin((a * Math.PI) / 180)];
      matrix = times(times(times(matrix, [1, 0, 0, 1, x, y]), [cos, sin, -sin, cos, 0, 0]), [
        1,
        0,
        0,
        1,
        -x,
        -y,
      ]);
    } else throw new Error(`a transform this reader does not know: ${name}`);
  }
  return matrix;
}

/** The whole picture as a tree. Throws when the text is not well formed. */
export function parseSvg(svg: string): Drawn {
  type Open = {
    tag: string;
    attributes: Record<string, string>;
    children: Drawn[];
    words: string;
    matrix: Matrix;
    groups: Drawn["groups"];
  };
  const root: Open = {
    tag: "",
    attributes: {},
    children: [],
    words: "",
    matrix: [1, 0, 0, 1, 0, 0],
    groups: [],
  };
  const stack: Open[] = [root];
  for (const [whole, close, tag = "", list = "", self, words] of svg.matchAll(
    /<(\/)?([\w:]+)((?:\s+[\w:-]+="[^"]*")*)\s*(\/)?>|([^<]+)/g,
  )) {
    const top = stack.at(-1);
    if (!top) throw new Error(`more ends than starts at ${whole}`);
    if (words !== undefined) {
      for (const each of stack) each.words += decode(words);
      continue;
    }
    if (close) {
      if (top.tag !== tag) throw new Error(`</${tag}> ends <${top.tag}>`);
      stack.pop();
      stack.at(-1)?.children.push(top);
      continue;
    }
    const attributes = Object.fromEntries(
      [...list.matchAll(/([\w:-]+)="([^"]*)"/g)].map(([, name = "", value = ""]) => [name, decode(value)]),
    );
    const open: Open = {
      tag,
      attributes,
      children: [],
      words: "",
      matrix: times(top.matrix, matrixOf(attributes.transform)),
      groups: [...top.groups, top.attributes],
    };
    if (self) top.children.push(open);
    else stack.push(open);
  }
  if (stack.length !== 1) throw new Error(`<${stack.at(-1)?.tag}> has no end`);
  const [picture] = root.children;
  if (!picture) throw new Error("nothing is drawn");
  return picture;
}

export function all(picture: Drawn, wanted: (element: Drawn) => boolean): Drawn[] {
  const below = picture.children.flatMap((child) => all(child, wanted));
  return wanted(picture) ? [picture, ...below] : below;
}

/** Elements with this data-part, of this receiver when one is named. */
export const partsOf = (picture: Drawn, part: string, receiver?: string): Drawn[] =>
  all(
    picture,
    ({ attributes }) =>
      attributes["data-part"] === part &&
      (receiver === undefined || (attributes["data-receiver"] ?? "").split(" ").includes(receiver)),
  );

/** The only one of a list. */
export function only<T>(list: readonly T[]): T {
  const [one] = list;
  if (one === undefined || list.length !== 1) throw new Error(`one was wanted, ${list.length} are drawn`);
  return one;
}

export const moved = ({ x, y }: Point, [a, b, c, d, e, f]: Matrix): Point => ({
  x: a * x + c * y + e,
  y: b * x + d * y + f,
});

/** The corners of a path, on the sheet. Knows M, L, H, V, h, v, l, m and Z. */
export function cornersOfPath(path: Drawn): Point[] {
  const points: Point[] = [];
  let at: Point = { x: 0, y: 0 };
  for (const [, command = "", list = ""] of (path.attributes.d ?? "").matchAll(
    /([MLHVhvlmZ])([^MLHVhvlmZ]*)/g,
  )) {
    const numbers = list
      .trim()
      .split(/[ ,]+/)
      .filter((text) => text !== "")
      .map(Number);
    const [p = 0, q = 0] = numbers;
    if (numbers.some((value) => !Number.isFinite(value)))
      throw new Error(`not a number in ${path.attributes.d}`);
    if (command === "M" || command === "L") at = { x: p, y: q };
    else if (command === "H") at = { x: p, y: at.y };
    else if (command === "V") at = { x: at.x, y: p };
    else if (command === "h") at = { x: at.x + p, y: at.y };
    else if (command === "v") at = { x: at.x, y: at.y + p };
    else if (command === "l" || command === "m") at = { x: at.x + p, y: at.y + q };
    if (command !== "Z") points.push(at);
  }
  return points.map((point) => moved(point, path.matrix));
}

/** Direction on the sheet from one point to another, degrees clockwise from straight up. */
export const directionDeg = (from: Point, to: Point): number =>
  ((Math.atan2(to.x - from.x, from.y - to.y) * 180) / Math.PI + 360) % 360;

/** How far two directions are apart, degrees. */
export const apartDeg = (a: number, b: number): number => Math.abs(((((a - b) % 360) + 540) % 360) - 180);

/** How far a point lies from a line of straight pieces, px. */
export function distanceToLine(point: Point, line: readonly Point[]): number {
  let nearest = Number.POSITIVE_INFINITY;
  for (let index = 1; index < line.length; index++) {
    const a = line[index - 1]!;
    const b = line[index]!;
    const length2 = (b.x - a.x) ** 2 + (b.y - a.y) ** 2;
    const t = length2 === 0 ? 0 : ((point.x - a.x) * (b.x - a.x) + (point.y - a.y) * (b.y - a.y)) / length2;
    const inside = Math.max(0, Math.min(1, t));
    nearest = Math.min(
      nearest,
      Math.hypot(a.x + (b.x - a.x) * inside - point.x, a.y + (b.y - a.y) * inside - point.y),
    );
  }
  return nearest;
}

/** Whether a point lies inside a ring. */
export function isInside(point: Point, ring: readonly Point[]): boolean {
  let inside = false;
  for (let index = 0, before = ring.length - 1; index < ring.length; before = index++) {
    const a = ring[index]!;
    const b = ring[before]!;
    if (a.y > point.y !== b.y > point.y && point.x < a.x + ((point.y - a.y) / (b.y - a.y)) * (b.x - a.x))
      inside = !inside;
  }
  return inside;
}

export interface Sheet extends Partial<Omit<ChartProps, "situation">> {
  readonly view?: ChartView;
}

/** The props of a chart as large as the bench's, with what is said otherwise. */
export function propsOf(situation: Situation, sheet: Sheet = {}): ChartProps {
  const { widthPx = 1000, heightPx = 700, typeScale = 1 } = sheet;
  return {
    situation,
    view: fitView(situation, widthPx, heightPx, typeScale),
    widthPx,
    heightPx,
    theme: THEMES.light,
    idPrefix: "test",
    ...sheet,
  };
}

export const chartSvg = (situation: Situation, sheet: Sheet = {}): string =>
  renderToString(Chart(propsOf(situation, sheet)));

export const chartOf = (situation: Situation, sheet: Sheet = {}): Drawn =>
  parseSvg(chartSvg(situation, sheet));

const SCENES = resolve(import.meta.dirname, "../demo/scenes");

function demoScene(name: string): Scene {
  const path = join(SCENES, name);
  const read = readScene(readFileSync(path, "utf8"), {
    path,
    open: (wanted, from) => {
      const file = resolve(dirname(from), wanted);
      return { path: file, text: readFileSync(file, "utf8") };
    },
  });
  if (!read.ok) throw new Error(`${name}: ${read.faults.map(({ message }) => message).join("; ")}`);
  return read.scene;
}

/** Every scene of the demo, resolved, without its covers. */
export const demoSituations = (): { readonly name: string; readonly situation: Situation }[] =>
  readdirSync(SCENES)
    .filter((name) => name.endsWith(".yaml"))
    .sort()
    .map((name) => ({ name, situation: resolveScene({ ...demoScene(name), covers: [] }) }));
