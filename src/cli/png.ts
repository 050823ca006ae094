/** A picture as pixels, in our own fonts only, so that it is the same on every machine. */

import { Resvg } from "@resvg/resvg-js";
import { heldOnSheet } from "./held-on-sheet.ts";
import { MONO_FAMILY, pictureFonts, WORDS_FAMILY } from "./picture-fonts.ts";

/** The PNG of an SVG, drawn to a width in pixels; the height follows from the SVG's own shape. */
export function pngFromSvg(svg: string, widthPx: number): Uint8Array {
  const picture = new Resvg(heldOnSheet(svg), {
    font: {
      loadSystemFonts: false,
      fontFiles: pictureFonts(),
      defaultFontFamily: WORDS_FAMILY,
      sansSerifFamily: WORDS_FAMILY,
      monospaceFamily: MONO_FAMILY,
    },
    fitTo: { mode: "width", value: widthPx },
  });
  return picture.render().asPng();
}
