/** A picture as a PDF of one page, in the browser: lines stay lines and letters stay letters, so that it prints sharp at any size. */

import PDFDocument from "pdfkit";
import type { PictureFont } from "../figure-fonts.ts";
import { pageFonts } from "./pdf-fonts.ts";
import { drawElement } from "./svg-draw.ts";
import { FIRST_STYLE, numberIn } from "./svg-style.ts";

/** Points in a CSS pixel: 72 to the inch against 96. */
const PT_PER_PX = 0.75;

export interface MadePdf {
  readonly blob: Blob;
  /** Characters of the picture's words that its fonts have no letter for: boxes stand for them. */
  readonly missing: readonly string[];
}

/**
 * The PDF of one of our SVG pictures, on a page of its size. Its description goes with it for screen readers. Throws RangeError when
 * the picture holds something that the page would not show.
 */
export async function pdfFromSvg(svg: string, fonts: readonly PictureFont[]): Promise<MadePdf> {
  const picture = new DOMParser().parseFromString(svg, "image/svg+xml").documentElement;
  if (picture.tagName !== "svg") throw new RangeError("the picture cannot be read as SVG");
  const [widthPx, heightPx] = [numberIn(picture, "width"), numberIn(picture, "height")];
  const doc = new PDFDocument({
    size: [widthPx * PT_PER_PX, heightPx * PT_PER_PX],
    margin: 0,
    pdfVersion: "1.7",
    tagged: true,
    displayTitle: true,
    lang: "en",
    // None of the standard ones: the picture brings its own.
    font: "",
    info: { Title: wordsOf(picture, "title"), Producer: "Needlework", Creator: "Needlework" },
  });
  const whole = wholeOf(doc);
  const page = {
    doc,
    fonts: pageFonts(fonts),
    svg: picture,
    acrossPx: Math.hypot(widthPx, heightPx),
  };
  doc.scale(PT_PER_PX);
  doc.addStructure(
    doc.struct("Figure", { alt: wordsOf(picture, "desc") }, () => drawElement(page, picture, FIRST_STYLE)),
  );
  doc.end();
  return { blob: await whole, missing: [...page.fonts.missing] };
}

/** The words of a child such as `title`; empty when there is none. */
const wordsOf = (element: Element, tagName: string): string =>
  [...element.children].find((child) => child.tagName === tagName)?.textContent ?? "";

function wholeOf(doc: PDFKit.PDFDocument): Promise<Blob> {
  const pieces: Uint8Array<ArrayBuffer>[] = [];
  return new Promise((resolve, reject) => {
    doc.on("data", (piece: Uint8Array<ArrayBuffer>) => pieces.push(piece));
    doc.on("end", () => resolve(new Blob(pieces, { type: "application/pdf" })));
    doc.on("error", reject);
  });
}
