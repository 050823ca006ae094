/** A figure as a file that stands alone: an XML header, its own size, its own fonts. */

import { h } from "preact";
import { renderToString } from "preact-render-to-string";
import { Figure, type FigureProps } from "./figure.tsx";

/** One font to carry in a picture. */
export interface EmbeddedFont {
  /** As our pictures call it. */
  readonly family: "B612" | "B612 Mono";
  readonly weight: 400 | 700;
  /** The WOFF2 file in base64. */
  readonly woff2Base64: string;
}

/** `@font-face` rules that carry the fonts themselves. Throws RangeError when a font's data is not base64. */
export const fontFaceCss = (fonts: readonly EmbeddedFont[]): string =>
  fonts
    .map(({ family, weight, woff2Base64 }) => {
      if (!/^[A-Za-z0-9+/]+={0,2}$/.test(woff2Base64))
        throw new RangeError(`the data of ${family} ${weight} is not base64`);
      return `@font-face{font-family:'${family}';font-weight:${weight};src:url(data:font/woff2;base64,${woff2Base64}) format('woff2')}`;
    })
    .join("");

/** The whole SVG file as text. */
export const figureSvg = (props: FigureProps): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n${allowedInXml(renderToString(h(Figure, props)))}\n`;

/** Leaves out what XML 1.0 has no place for: control characters, halves of characters. A scene's title may hold them. */
const allowedInXml = (text: string): string =>
  [...text].filter((sign) => "\t\n\r".includes(sign) || !/[\p{Cc}\p{Cs}\ufffe\uffff]/u.test(sign)).join("");
