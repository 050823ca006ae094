/** The font files that the build made from the font packages: TrueType for drawing, WOFF2 for carrying in a picture. */

import { existsSync, readFileSync } from "node:fs";
import { type EmbeddedFont, fontFaceCss } from "../draw/index.ts";
import { packageFile } from "./package-files.ts";

export const WORDS_FAMILY = "B612";
export const MONO_FAMILY = "B612 Mono";

const FONTS = [
  { file: "B612-Regular", family: WORDS_FAMILY, weight: 400 },
  { file: "B612-Bold", family: WORDS_FAMILY, weight: 700 },
  { file: "B612Mono-Regular", family: MONO_FAMILY, weight: 400 },
  { file: "B612Mono-Bold", family: MONO_FAMILY, weight: 700 },
] as const;

/** Folder of the fonts. Throws Error when the build has not made them: a picture without its letters is no picture. */
export function fontFolder(): string {
  const folder = packageFile("dist/fonts");
  if (!existsSync(folder)) throw new Error(`the fonts are missing from ${folder}`);
  return folder;
}

/** Absolute paths of the TrueType fonts of every picture. */
export const pictureFonts = (): string[] => FONTS.map(({ file }) => `${fontFolder()}/${file}.ttf`);

/** Rules that carry the fonts inside a picture, so that it looks the same wherever it is opened. */
export const embeddedFontCss = (): string => {
  const folder = fontFolder();
  const fonts: EmbeddedFont[] = FONTS.map(({ file, family, weight }) => ({
    family,
    weight,
    woff2Base64: readFileSync(`${folder}/${file}.woff2`).toString("base64"),
  }));
  return fontFaceCss(fonts);
};
