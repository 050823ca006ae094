/** The demo's scenes read and resolved in Node: what the page must agree with. */

import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import {
  type ChartProjection,
  type ChartView,
  chartProjection,
  faceSentence,
  fitView,
} from "../../src/draw/index.ts";
import { type Open, readScene, resolveScene, type Scene, type Situation } from "../../src/scene/index.ts";

const demoPath = (path: string): string => fileURLToPath(new URL(`../../demo/${path}`, import.meta.url));

const openBeside: Open = (wanted) => {
  const path = wanted.replace("../", "");
  return { path, text: readFileSync(demoPath(path), "utf8") };
};

/** A scene of the demo by its file's name without the ending. */
export function demoScene(key: string): Scene {
  const path = `scenes/${key}.yaml`;
  const read = readScene(readFileSync(demoPath(path), "utf8"), { path, open: openBeside });
  if (!read.ok) throw new Error(`${path} cannot be read: ${read.faults[0]?.message}`);
  return read.scene;
}

/** What the faces say in a scene, in panel order. */
export const facesOf = (scene: Scene): string[] =>
  resolveScene(scene).receivers.map((reading) => faceSentence(reading, scene.covers));

/** What the faces on the page say. */
export const facesOn = (page: Page): Promise<string[]> =>
  page.locator(".receiver .face svg desc").allTextContents();

export interface ChartOnPage {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Where the paper's corner is on the screen. */
  readonly left: number;
  readonly top: number;
  readonly view: ChartView;
  readonly projection: ChartProjection;
}

/** The chart as the page frames a scene that nobody has moved. */
export async function chartOn(page: Page, asOpened: Situation): Promise<ChartOnPage> {
  const { widthPx, heightPx, left, top } = await page.locator(".chart-ground").evaluate((ground) => {
    const box = ground.getBoundingClientRect();
    return {
      widthPx: Math.floor(ground.clientWidth),
      heightPx: Math.floor(ground.clientHeight),
      left: box.left,
      top: box.top,
    };
  });
  const view = fitView(asOpened, widthPx, heightPx);
  return { widthPx, heightPx, left, top, view, projection: chartProjection(view, widthPx, heightPx) };
}
