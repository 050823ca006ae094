/** The fonts of every picture, fetched when a picture is made: the very files that the page itself is set in. */

import words from "@fontsource/b612/files/b612-latin-400-normal.woff2?url";
import wordsBold from "@fontsource/b612/files/b612-latin-700-normal.woff2?url";
import mono from "@fontsource/b612-mono/files/b612-mono-latin-400-normal.woff2?url";
import monoBold from "@fontsource/b612-mono/files/b612-mono-latin-700-normal.woff2?url";
import { type EmbeddedFont, fontFaceCss } from "../../draw/index.ts";

export interface PictureFont extends Pick<EmbeddedFont, "family" | "weight"> {
  readonly woff2: Uint8Array<ArrayBuffer>;
}

const FILES = [
  { family: "B612", weight: 400, url: words },
  { family: "B612", weight: 700, url: wordsBold },
  { family: "B612 Mono", weight: 400, url: mono },
  { family: "B612 Mono", weight: 700, url: monoBold },
] as const;

let fetched: Promise<readonly PictureFont[]> | null = null;

/** The fonts' files, fetched once. Rejects with an Error when one cannot be had; the next call tries again. */
export function pictureFonts(): Promise<readonly PictureFont[]> {
  fetched ??= Promise.all(
    FILES.map(async ({ family, weight, url }) => {
      const answer = await fetch(url);
      if (!answer.ok) throw new Error(`the font ${family} cannot be fetched (${answer.status})`);
      return { family, weight, woff2: new Uint8Array(await answer.arrayBuffer()) };
    }),
  ).catch((error: unknown) => {
    fetched = null;
    throw error;
  });
  return fetched;
}

/** Rules that carry the fonts inside a picture, so that it looks the same wherever it is opened. */
export async function embeddedFontCss(): Promise<string> {
  const fonts = await pictureFonts();
  return fontFaceCss(fonts.map(({ woff2, ...font }) => ({ ...font, woff2Base64: base64(woff2) })));
}

/** In pieces, since a call takes only so many arguments. */
function base64(bytes: Uint8Array): string {
  const pieces: string[] = [];
  for (let start = 0; start < bytes.length; start += 8192)
    pieces.push(String.fromCharCode(...bytes.subarray(start, start + 8192)));
  return btoa(pieces.join(""));
}
