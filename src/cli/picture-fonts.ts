/** The TrueType files that the build made from the font packages. */

import { existsSync } from "node:fs";
import { packageFile } from "./package-files.ts";

export const WORDS_FAMILY = "B612";
export const MONO_FAMILY = "B612 Mono";

const FILES = ["B612-Regular", "B612-Bold", "B612Mono-Regular", "B612Mono-Bold"];

/** Folder of the fonts. Throws Error when the build has not made them: a picture without its letters is no picture. */
export function fontFolder(): string {
  const folder = packageFile("dist/fonts");
  if (!existsSync(folder)) throw new Error(`the fonts are missing from ${folder}`);
  return folder;
}

/** Absolute paths of the fonts of every picture. */
export const pictureFonts = (): readonly string[] => FILES.map((name) => `${fontFolder()}/${name}.ttf`);
