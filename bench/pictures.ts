/** A 1920 by 1080 PNG of the demo's first scene, from its text to the file's bytes, beside the rasteriser's own time for it. */

import { packageFile } from "../src/cli/package-files.ts";
import { pngFromSvg } from "../src/cli/png.ts";
import { openBeside, readText } from "../src/cli/text-files.ts";
import { figureSvg, THEMES } from "../src/draw/index.ts";
import { reasonsFor } from "../src/reason/index.ts";
import { readScene, resolveScene } from "../src/scene/index.ts";
import { quickestMs } from "./rate.ts";

const SCENE = "demo/scenes/01-which-way-to-the-course.yaml";
const WIDTH_PX = 1920;
const HEIGHT_PX = 1080;
const RUNS = 7;

/** Lines of the report. */
export function pictures(): string[] {
  const svg = figureFromText();
  const rasteriserMs = quickestMs(RUNS, () => pngFromSvg(svg, WIDTH_PX));
  const wholeMs = quickestMs(RUNS, () => pngFromSvg(figureFromText(), WIDTH_PX));
  return [
    `rasteriser alone, 1920 by 1080 PNG             ${rasteriserMs.toFixed(0)} ms`,
    `figure from scene text to PNG                  ${wholeMs.toFixed(0)} ms   ${(wholeMs / rasteriserMs).toFixed(2)} times`,
  ];
}

function figureFromText(): string {
  const path = packageFile(SCENE);
  const opened = readText(path);
  if (!("text" in opened)) throw new Error(`${path} cannot be read`);
  const read = readScene(opened.text, { path, open: openBeside });
  if (!read.ok) throw new Error(`${path} is at fault`);
  const situation = resolveScene(read.scene);
  return figureSvg({
    situation,
    reasons: reasonsFor(situation),
    views: ["chart", "panel"],
    widthPx: WIDTH_PX,
    heightPx: HEIGHT_PX,
    theme: THEMES.light,
    idPrefix: "figure",
  });
}
