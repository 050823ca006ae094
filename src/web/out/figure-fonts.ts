/** The fonts of every picture, fetched when a picture is made. */

import wordsWoff from "@fontsource/b612/files/b612-latin-400-normal.woff?url";
import words from "@fontsource/b612/files/b612-latin-400-normal.woff2?url";
import wordsBoldWoff from "@fontsource/b612/files/b612-latin-700-normal.woff?url";
import wordsBold from "@fontsource/b612/files/b612-latin-700-normal.woff2?url";
import monoWoff from "@fontsource/b612-mono/files/b612-mono-latin-400-normal.woff?url";
import mono from "@fontsource/b612-mono/files/b612-mono-latin-400-normal.woff2?url";
import monoBoldWoff from "@fontsource/b612-mono/files/b612-mono-latin-700-normal.woff?url";
import monoBold from "@fontsource/b612-mono/files/b612-mono-latin-700-normal.woff2?url";
import { type EmbeddedFont, fontFaceCss } from "../../draw/index.ts";

/** A font's file. */
export interface PictureFont extends Pick<EmbeddedFont, "family" | "weight"> {
  readonly bytes: Uint8Array<ArrayBuffer>;
}

const FILES = [
  { family: "B612", weight: 400, woff: wordsWoff, woff2: words },
  { family: "B612", weight: 700, woff: wordsBoldWoff, woff2: wordsBold },
  { family: "B612 Mono", weight: 400, woff: monoWoff, woff2: mono },
  { family: "B612 Mono", weight: 700, woff: monoBoldWoff, woff2: monoBold },
] as const;

/** For a page of letters: WOFF 1, whose letters lie there one by one to be taken out. Rejects with an Error when one cannot be had. */
export const pageFontFiles = (): Promise<readonly PictureFont[]> => fetched("woff");

const fetched = (form: "woff" | "woff2"): Promise<readonly PictureFont[]> =>
  Promise.all(
    FILES.map(async ({ family, weight, ...files }) => {
      // Kept by the browser: their names carry their contents' hash.
      const answer = await fetch(files[form]);
      if (!answer.ok) throw new Error(`the font ${family} cannot be fetched (${answer.status})`);
      return { family, weight, bytes: new Uint8Array(await answer.arrayBuffer()) };
    }),
  );

/** Rules that carry the fonts inside a picture, so that it looks the same wherever it is opened: those the page itself is set in. */
export async function embeddedFontCss(): Promise<string> {
  const fonts = await fetched("woff2");
  return fontFaceCss(fonts.map(({ bytes, ...font }) => ({ ...font, woff2Base64: base64(bytes) })));
}

/** In pieces, since a call takes only so many arguments. */
function base64(bytes: Uint8Array): string {
  const pieces: string[] = [];
  for (let start = 0; start < bytes.length; start += 8192)
    pieces.push(String.fromCharCode(...bytes.subarray(start, start + 8192)));
  return btoa(pieces.join(""));
}
