/** Sheets and keys for the bench's page, by the same typesetter as `needlework sheet`. */

import { problemSetFromLink } from "../practice/index.ts";
import type { PaperSource } from "../server/index.ts";
import { readIsles } from "./isles.ts";

export const benchPaper: PaperSource = async ({ link, what, paper }) => {
  const read = problemSetFromLink(link, await readIsles());
  if (!read.ok) return read.faults.join("; ");
  // The typesetter is large: fetched when first wanted.
  const { keyPdf, sheetPdf } = await import("./sheet-pdf.ts");
  return what === "key" ? keyPdf(read.set, paper) : sheetPdf(read.set, paper);
};
