/** The letters of a PDF page: the picture's own fonts, of which the page carries the letters it uses. */

import type { Buffer } from "node:buffer";
import { create, type Font } from "fontkit";
import type { PictureFont } from "../figure-fonts.ts";

export interface PageFonts {
  /** The font of a family and weight. Throws RangeError when the picture asks for one that it may not. */
  readonly of: (family: string, bold: boolean) => Font;
  /** Characters met that the fonts have no letter for. */
  readonly missing: Set<string>;
}

export function pageFonts(fonts: readonly PictureFont[]): PageFonts {
  const opened = new Map<string, Font>();
  for (const { family, weight, bytes } of fonts) {
    // The types speak of Node's buffer; any bytes will do.
    const font = create(bytes as Buffer);
    if ("layout" in font) opened.set(`${family} ${weight}`, font);
  }
  return {
    of: (family, bold) => {
      const font = opened.get(`${family} ${bold ? 700 : 400}`);
      if (font === undefined) throw new RangeError(`the picture has no font ${family}${bold ? " bold" : ""}`);
      return font;
    },
    missing: new Set(),
  };
}
