/** A problem set as a QTI 3 package on disk: a folder, or the same as a zip archive. */

import { existsSync, mkdirSync, readdirSync, renameSync, rmdirSync, rmSync, writeFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { zipSync } from "fflate";
import { sheetPicture, THEMES } from "../draw/index.ts";
import {
  type PackagePicture,
  type Problem,
  type ProblemSet,
  qtiPackage,
  sheetProblems,
} from "../practice/index.ts";
import { InputFault } from "./faults.ts";
import { pngFromSvg } from "./png.ts";
import { progress } from "./progress.ts";
import { systemReason } from "./system-reason.ts";
import { worldLandFor } from "./world-land.ts";
import { writeWhole } from "./write-whole.ts";

/** Of a picture as it is shown, px; it is drawn twice as fine. */
const SIZE = { widthPx: 480, heightPx: 360 };
const FINER = 2;

/** The same bytes whenever it is made. */
const ZIP_DAY = new Date("2000-01-01T00:00:00");

/**
 * Writes the package: an archive where the name ends in .zip, else a folder, which must not be there yet or be empty. Whole or not at all.
 * Throws InputFault when it cannot be written.
 */
export function writeQti(path: string, set: ProblemSet, inputs: readonly string[]): void {
  const files = packageFiles(set);
  if (/\.zip$/i.test(path)) {
    const entries = Object.fromEntries(
      [...files].map(([name, bytes]) => [name, [bytes, { mtime: ZIP_DAY }] as const]),
    );
    writeWhole(path, zipSync(entries as Parameters<typeof zipSync>[0]), inputs);
    return;
  }
  writeFolder(path, files);
}

function packageFiles(set: ProblemSet): ReadonlyMap<string, Uint8Array> {
  const files = new Map<string, Uint8Array>();
  const pictures = new Map<Problem, readonly PackagePicture[]>();
  const shown = progress("drawing");
  for (const [at, { drawings, situation, code }] of sheetProblems(set).entries()) {
    const problem = set.problems[at];
    if (problem === undefined) continue;
    const seen: PackagePicture[] = [];
    for (const drawing of drawings) {
      // On a screen nothing is drawn in by hand.
      if (drawing.kind === "blank-dial" || drawing.kind === "blank-rose") continue;
      const path = `pictures/${code}-${drawing.kind}.png`;
      const world = drawing.kind === "chart" ? worldLandFor(situation.scene) : null;
      const look = { ...SIZE, idPrefix: "picture", theme: THEMES.light };
      const { svg, words } = sheetPicture(drawing, situation, look, world);
      files.set(path, pngFromSvg(svg, SIZE.widthPx * FINER));
      seen.push({ path, words, ...SIZE });
    }
    pictures.set(problem, seen);
    shown.show((at + 1) / set.problems.length);
  }
  shown.end();
  const texts = qtiPackage(set, (problem) => pictures.get(problem) ?? []);
  const bytes = new TextEncoder();
  return new Map([...[...texts].map(([path, text]) => [path, bytes.encode(text)] as const), ...files]);
}

function writeFolder(folder: string, files: ReadonlyMap<string, Uint8Array>): void {
  if (existsSync(folder) && !isEmptyFolder(folder))
    throw new InputFault(
      `${folder} is there already; name a folder that is not, or a file that ends in .zip`,
    );
  // Beside the target, since a rename is only whole within one file system.
  const aside = join(dirname(folder), `.${basename(folder)}.${process.pid}.part`);
  try {
    for (const [path, bytes] of files) {
      const target = join(aside, path);
      mkdirSync(dirname(target), { recursive: true });
      writeFileSync(target, bytes);
    }
    if (existsSync(folder)) rmdirSync(folder);
    renameSync(aside, folder);
  } catch (error) {
    rmSync(aside, { recursive: true, force: true });
    throw new InputFault(`${folder}: ${systemReason(error)}`);
  }
}

function isEmptyFolder(path: string): boolean {
  try {
    return readdirSync(path).length === 0;
  } catch {
    // A file of that name.
    return false;
  }
}
