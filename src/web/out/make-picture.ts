/** Pictures of what is shown, each part of the work loaded when it is first asked for. */

import type { PictureSize } from "./picture-size.ts";
import type { Shown } from "./shown.ts";

export interface PictureLook extends PictureSize {
  readonly transparent: boolean;
}

export interface MadePicture {
  readonly blob: Blob;
  /** What a person should know of it; null when nothing. */
  readonly note: string | null;
}

export const PICTURE_KINDS = ["png", "svg", "pdf"] as const;
export type PictureKind = (typeof PICTURE_KINDS)[number];

/** Rejects with an Error when the browser cannot make it. */
export async function makePicture(kind: PictureKind, shown: Shown, look: PictureLook): Promise<MadePicture> {
  const { figureOf, withoutBlendStyle } = await import("./figure-picture.ts");
  if (kind === "pdf") {
    const [{ pdfFromSvg }, { pageFontFiles }] = await Promise.all([
      import("./pdf/pdf-from-svg.ts"),
      import("./figure-fonts.ts"),
    ]);
    const svg = await figureOf(shown, look, { fonts: false });
    const { blob, missing } = await pdfFromSvg(withoutBlendStyle(svg), await pageFontFiles());
    return { blob, note: missing.length === 0 ? null : missingNote(missing) };
  }
  const svg = await figureOf(shown, look, { fonts: true });
  if (kind === "svg") return { blob: new Blob([svg], { type: "image/svg+xml" }), note: null };
  const { pngFromSvg } = await import("./png.ts");
  return { blob: await pngFromSvg(svg, look), note: null };
}

const missingNote = (missing: readonly string[]): string =>
  `its fonts lack ${missing.join(" ")}, so boxes stand there; the PNG has them`;
