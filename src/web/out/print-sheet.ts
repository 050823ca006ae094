/** One landscape page with the figure, its title, question and caution, in ink on white, whatever the screen's theme. */

import { THEMES } from "../../draw/index.ts";
import { figureText, onPaper, withoutBlendStyle } from "./figure-picture.ts";
import type { Shown } from "./shown.ts";

/** The inside of a landscape A4 page with margins of 8 mm, CSS pixels. A letter page takes it a little smaller. */
const PAGE_PX = { widthPx: 1062, heightPx: 733, transparent: true };
const CLASS = "print-sheet";

/** Puts the sheet into the page, where only print shows it; an older one goes. */
export function layPrintSheet(shown: Shown): void {
  takePrintSheetAway();
  const text = figureText({ ...shown, theme: onPaper(THEMES.light) }, PAGE_PX, "print");
  const picture = new DOMParser().parseFromString(withoutBlendStyle(text), "image/svg+xml").documentElement;
  const sheet = document.createElement("div");
  sheet.className = CLASS;
  sheet.append(document.importNode(picture, true));
  document.body.append(sheet);
  document.documentElement.dataset.printing = "figure";
}

export function takePrintSheetAway(): void {
  for (const sheet of document.querySelectorAll(`.${CLASS}`)) sheet.remove();
  delete document.documentElement.dataset.printing;
}
