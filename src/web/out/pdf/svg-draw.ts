/** Shapes and groups of a picture on a PDF page, line for line. What a page cannot show as the picture has it is an error. */

import type { PageFonts } from "./pdf-fonts.ts";
import { drawImage } from "./svg-image.ts";
import { numberIn, numbers, type SvgStyle, styleOf } from "./svg-style.ts";
import { drawText } from "./svg-text.ts";
import { type Stripe, stripesOf } from "./tile-stripes.ts";

export interface Page {
  readonly doc: PDFKit.PDFDocument;
  readonly fonts: PageFonts;
  /** For what is named by `url(#id)`. */
  readonly svg: Element;
  /** No two points of the picture are farther apart, px. */
  readonly acrossPx: number;
}

/** Draws an element with everything in it. Throws RangeError on an element that a page would not show. */
export function drawElement(page: Page, element: Element, inherited: SvgStyle): void {
  if (NEVER_DRAWN.has(element.tagName)) return;
  const { doc } = page;
  const style = styleOf(element, inherited);
  doc.save();
  transform(doc, element.getAttribute("transform"));
  const clip = element.getAttribute("clip-path");
  if (clip !== null) clipTo(page, clip);
  switch (element.tagName) {
    case "svg":
      openWindow(doc, element);
      drawChildren(page, element, style);
      break;
    case "g":
      drawChildren(page, element, style);
      break;
    case "image":
      drawImage(doc, element);
      break;
    case "text":
      drawText(doc, page.fonts, element, style);
      break;
    default:
      paint(page, element, style);
  }
  doc.restore();
}

const NEVER_DRAWN = new Set(["title", "desc", "defs", "style"]);

function drawChildren(page: Page, element: Element, style: SvgStyle): void {
  for (const child of element.children) drawElement(page, child, style);
}

/** `translate`, `rotate` and `scale`, one after another. */
function transform(doc: PDFKit.PDFDocument, text: string | null): void {
  for (const [, kind = "", inside = ""] of (text ?? "").matchAll(/(\w+)\s*\(([^)]*)\)/g)) {
    const [a = 0, b, c] = numbers(inside);
    if (kind === "translate") doc.translate(a, b ?? 0);
    else if (kind === "scale") doc.scale(a, b ?? a);
    else if (kind === "rotate") doc.rotate(a, { origin: [b ?? 0, c ?? 0] });
    else throw new RangeError(`a page has no counterpart of ${kind}(${inside})`);
  }
}

/** A picture inside the picture: its own corner, scale and edge. */
function openWindow(doc: PDFKit.PDFDocument, element: Element): void {
  const [widthPx, heightPx] = [numberIn(element, "width"), numberIn(element, "height")];
  const [left = 0, top = 0, width = widthPx, height = heightPx] = numbers(
    element.getAttribute("viewBox") ?? "",
  );
  doc.translate(numberIn(element, "x"), numberIn(element, "y"));
  doc.rect(0, 0, widthPx, heightPx).clip();
  // As preserveAspectRatio has it when it is not given: whole, and in the middle.
  const scale = Math.min(widthPx / width, heightPx / height);
  doc.translate((widthPx - width * scale) / 2, (heightPx - height * scale) / 2);
  doc.scale(scale).translate(-left, -top);
}

function clipTo(page: Page, reference: string): void {
  for (const shape of named(page, reference, "clipPath").children) outline(page.doc, shape);
  page.doc.clip();
}

function named({ svg }: Page, reference: string, tagName: string): Element {
  const id = /^url\(#(.+)\)$/.exec(reference)?.[1];
  const element = [...svg.querySelectorAll(tagName)].find((each) => each.id === id);
  if (element === undefined) throw new RangeError(`the picture has no ${tagName} ${reference}`);
  return element;
}

/** Puts the shape's outline on the page's path, to be painted or clipped to. */
function outline(doc: PDFKit.PDFDocument, shape: Element): void {
  const at = (name: string) => numberIn(shape, name);
  switch (shape.tagName) {
    case "rect": {
      const radius = numberIn(shape, "rx", at("ry"));
      if (radius > 0) doc.roundedRect(at("x"), at("y"), at("width"), at("height"), radius);
      else doc.rect(at("x"), at("y"), at("width"), at("height"));
      break;
    }
    case "circle":
      doc.circle(at("cx"), at("cy"), at("r"));
      break;
    case "ellipse":
      doc.ellipse(at("cx"), at("cy"), at("rx"), at("ry"));
      break;
    case "line":
      doc.moveTo(at("x1"), at("y1")).lineTo(at("x2"), at("y2"));
      break;
    case "path":
      doc.path(shape.getAttribute("d") ?? "");
      break;
    case "polygon":
    case "polyline": {
      const points = (shape.getAttribute("points") ?? "").trim();
      doc.path(points === "" ? "" : `M${points}${shape.tagName === "polygon" ? "Z" : ""}`);
      break;
    }
    default:
      throw new RangeError(`a page has no counterpart of <${shape.tagName}>`);
  }
}

function paint(page: Page, shape: Element, style: SvgStyle): void {
  const { doc } = page;
  const isStroked = style.stroke !== "none" && style.strokeWidth > 0;
  if (isStroked && style.strokeFirst) stroke(doc, shape, style);
  if (style.fill.startsWith("url(")) hatch(page, shape, style);
  else if (style.fill !== "none" && shape.tagName !== "line") {
    outline(doc, shape);
    doc.fillColor(style.fill, style.opacity * style.fillOpacity).fill(ruleOf(style));
  }
  if (isStroked && !style.strokeFirst) stroke(doc, shape, style);
}

const ruleOf = ({ evenOdd }: SvgStyle): PDFKit.Mixins.RuleValue => (evenOdd ? "even-odd" : "non-zero");

function stroke(doc: PDFKit.PDFDocument, shape: Element, style: SvgStyle): void {
  outline(doc, shape);
  doc.lineWidth(style.strokeWidth).lineCap(style.lineCap).lineJoin(style.lineJoin);
  doc.strokeColor(style.stroke, style.opacity * style.strokeOpacity);
  // An odd number of lengths is gone through twice (SVG 1.1, 11.4); PDF counts the same way.
  if (style.dashes.some((length) => length > 0)) doc.addContent(`[${style.dashes.join(" ")}] 0 d`);
  doc.stroke();
}

/** A fill of stripes, drawn stripe by stripe: a repeated tile would show its seams. */
function hatch(page: Page, shape: Element, filled: SvgStyle): void {
  const { doc, acrossPx } = page;
  const tile = named(page, filled.fill, "pattern");
  const stepPx = numberIn(tile, "width");
  const count = Math.ceil(acrossPx / stepPx);
  doc.save();
  outline(doc, shape);
  doc.clip(ruleOf(filled));
  transform(doc, tile.getAttribute("patternTransform"));
  for (const stripe of stripesOf(tile)) {
    for (let index = -count; index <= count; index++) layStripe(page, stripe, index * stepPx);
    const opacity = filled.opacity * filled.fillOpacity * stripe.opacity;
    if (stripe.kind === "band") doc.fillColor(stripe.colour, opacity).fill();
    else doc.lineWidth(stripe.widthPx).strokeColor(stripe.colour, opacity).stroke();
  }
  doc.restore();
}

function layStripe({ doc, acrossPx }: Page, { kind, x, widthPx }: Stripe, shiftPx: number): void {
  if (kind === "line") doc.moveTo(x + shiftPx, -acrossPx).lineTo(x + shiftPx, acrossPx);
  else doc.rect(x + shiftPx, -acrossPx, widthPx, 2 * acrossPx);
}
