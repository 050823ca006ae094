/** A picture of pixels on a PDF page, as ink over ink where its `data-blend` says so (PDF 1.7, 11.3.5: blend modes have the names of CSS). */

import { numberIn } from "./svg-style.ts";

const BLENDS: Readonly<Record<string, string>> = {
  multiply: "Multiply",
  screen: "Screen",
};

/** Throws RangeError on an address that is no PNG inside the picture, or a blend that a page would not show. */
export function drawImage(doc: PDFKit.PDFDocument, image: Element): void {
  const href = image.getAttribute("href") ?? "";
  if (!href.startsWith("data:image/png;base64,"))
    throw new RangeError(`a page has no counterpart of the image ${href.slice(0, 40)}`);
  const wanted = image.getAttribute("data-blend") ?? "";
  const blend = BLENDS[wanted];
  if (wanted !== "" && blend === undefined) throw new RangeError(`a page has no counterpart of ${wanted}`);
  if (blend !== undefined) {
    const state = doc.ref({ Type: "ExtGState", BM: blend });
    state.end(undefined);
    const page: PageOfPdfkit = doc.page;
    const name = `Blend${blend}`;
    page.ext_gstates[name] = state;
    doc.addContent(`/${name} gs`);
  }
  const width = numberIn(image, "width");
  const height = numberIn(image, "height");
  doc.image(href, numberIn(image, "x"), numberIn(image, "y"), { width, height });
}

/** The part of a page that the types leave out: its graphics states by name. */
type PageOfPdfkit = PDFKit.PDFPage & { readonly ext_gstates: Record<string, unknown> };
