/**
 * Words of a picture on a PDF page: letters that can be searched and copied, placed as a browser places them. A halo is drawn as the
 * letters' outlines, not as letters once more, so that no reader finds the words twice.
 */

import type { Font } from "fontkit";
import type { PageFonts } from "./pdf-fonts.ts";
import { numberIn, numbers, type SvgStyle, styleOf } from "./svg-style.ts";

/** Letters in one font that stand close together. */
interface Run {
  readonly text: string;
  readonly font: Font;
  readonly style: SvgStyle;
  /** From the line's start. */
  readonly offsetPx: number;
}

/** Draws a `<text>` element whose `transform` has been applied. `style` is its own. */
export function drawText(doc: PDFKit.PDFDocument, fonts: PageFonts, element: Element, style: SvgStyle): void {
  const { runs, widthPx } = runsOf(element, style, fonts);
  const x = numberIn(element, "x") - { start: 0, middle: widthPx / 2, end: widthPx }[style.anchor];
  const y = numberIn(element, "y");
  if (style.stroke !== "none") {
    if (!style.strokeFirst) throw new RangeError("a page has no letters with their outline over them");
    for (const run of runs) drawHalo(doc, run, x + run.offsetPx, y);
  }
  for (const run of runs)
    doc
      .font(run.font as unknown as PDFKit.Mixins.PDFFontSource)
      .fontSize(run.style.fontSizePx)
      .fillColor(run.style.fill, run.style.opacity * run.style.fillOpacity)
      .text(run.text, x + run.offsetPx, y, {
        lineBreak: false,
        baseline: "alphabetic",
        characterSpacing: run.style.letterSpacingPx,
      });
}

/** The line's runs: a new one where the font changes, and where a letter is shifted by `dx`. */
function runsOf(
  element: Element,
  style: SvgStyle,
  fonts: PageFonts,
): { runs: readonly Run[]; widthPx: number } {
  const shifts = numbers(element.getAttribute("dx") ?? "");
  const runs: Run[] = [];
  let offsetPx = 0;
  let index = 0;
  for (const piece of element.childNodes) {
    const own = piece instanceof Element ? styleOf(piece, style) : style;
    const font = fonts.of(own.fontFamily, own.bold);
    for (const text of cutAtShifts(piece.textContent ?? "", shifts.slice(index))) {
      offsetPx += shifts[index] ?? 0;
      runs.push({ text, font, style: own, offsetPx });
      offsetPx += widthOf(text, font, own);
      index += text.length;
      for (const sign of text)
        if (!font.hasGlyphForCodePoint(sign.codePointAt(0) ?? 0)) fonts.missing.add(sign);
    }
  }
  return { runs, widthPx: offsetPx };
}

/** The text in pieces, a new one before every letter that has a shift of its own. Our shifted texts are digits: one unit a letter. */
function cutAtShifts(text: string, shifts: readonly number[]): readonly string[] {
  const pieces: string[] = [];
  let start = 0;
  for (let index = 1; index <= text.length; index++)
    if (index === text.length || (shifts[index] ?? 0) !== 0) {
      pieces.push(text.slice(start, index));
      start = index;
    }
  return pieces;
}

/** As a browser reckons it: every letter is followed by the letter spacing, the last too. */
const widthOf = (text: string, font: Font, { fontSizePx, letterSpacingPx }: SvgStyle): number =>
  (font.layout(text).advanceWidth / font.unitsPerEm) * fontSizePx + [...text].length * letterSpacingPx;

function drawHalo(doc: PDFKit.PDFDocument, { text, font, style }: Run, x: number, y: number): void {
  const { glyphs, positions } = font.layout(text);
  const scale = style.fontSizePx / font.unitsPerEm;
  doc.save();
  doc
    .lineWidth(style.strokeWidth)
    .lineJoin(style.lineJoin)
    .lineCap("round")
    .strokeColor(style.stroke, style.opacity * style.strokeOpacity);
  let penX = x;
  glyphs.forEach((glyph, index) => {
    const position = positions[index];
    // Letters grow upward, paper downward.
    const outline = glyph.path.scale(scale, -scale).translate(penX + (position?.xOffset ?? 0) * scale, y);
    const path = outline.toSVG();
    if (path !== "") doc.path(path).stroke();
    penX += (position?.xAdvance ?? 0) * scale + style.letterSpacingPx;
  });
  doc.restore();
}
