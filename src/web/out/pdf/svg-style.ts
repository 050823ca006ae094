/**
 * How an element of one of our pictures is painted: its own presentation attributes over those it inherits (SVG 1.1, section 6.4 and
 * the property index). An attribute that the PDF would not honour is an error, so that no picture silently differs from its page.
 */

export interface SvgStyle {
  /** A colour, `none`, or `url(#id)` of a hatch. */
  readonly fill: string;
  /** Of the element and all it stands in: a group's is given to each of its parts, so that they shine through one another. */
  readonly opacity: number;
  readonly fillOpacity: number;
  readonly evenOdd: boolean;
  /** A colour or `none`. */
  readonly stroke: string;
  readonly strokeOpacity: number;
  readonly strokeWidth: number;
  readonly lineCap: LineEnd;
  readonly lineJoin: LineCorner;
  /** Lengths of dashes and gaps in turn; empty for a solid line. */
  readonly dashes: readonly number[];
  /** The first family of the list. */
  readonly fontFamily: string;
  readonly fontSizePx: number;
  readonly bold: boolean;
  readonly anchor: "start" | "middle" | "end";
  readonly letterSpacingPx: number;
  /** Whether the outline lies under the fill, as a halo. */
  readonly strokeFirst: boolean;
}

const LINE_ENDS = ["butt", "round", "square"] as const;
type LineEnd = (typeof LINE_ENDS)[number];
const LINE_CORNERS = ["miter", "round", "bevel"] as const;
type LineCorner = (typeof LINE_CORNERS)[number];
const ANCHORS = ["start", "middle", "end"] as const;

export const FIRST_STYLE: SvgStyle = {
  fill: "#000000",
  opacity: 1,
  fillOpacity: 1,
  evenOdd: false,
  stroke: "none",
  strokeOpacity: 1,
  strokeWidth: 1,
  lineCap: "butt",
  lineJoin: "miter",
  dashes: [],
  fontFamily: "B612",
  fontSizePx: 16,
  bold: false,
  anchor: "start",
  letterSpacingPx: 0,
  strokeFirst: false,
};

const number = (text: string): number => {
  const value = Number(text.replace(/px$/, ""));
  if (text.trim() === "" || !Number.isFinite(value))
    throw new RangeError(`"${text}" is no number of a picture`);
  return value;
};

/** All the numbers of a list. */
export const numbers = (text: string): number[] =>
  text
    .split(/[\s,]+/)
    .filter(Boolean)
    .map(number);

const word = <W extends string>(text: string, words: readonly W[]): W => {
  const found = words.find((known) => known === text);
  if (found === undefined) throw new RangeError(`"${text}" is none of ${words.join(", ")}`);
  return found;
};

type Change = (text: string, inherited: SvgStyle) => Partial<SvgStyle>;

const CHANGES: Readonly<Record<string, Change>> = {
  fill: (fill) => ({ fill }),
  opacity: (text, inherited) => ({ opacity: inherited.opacity * number(text) }),
  "fill-opacity": (text) => ({ fillOpacity: number(text) }),
  "fill-rule": (text) => ({ evenOdd: word(text, ["nonzero", "evenodd"]) === "evenodd" }),
  stroke: (stroke) => ({ stroke }),
  "stroke-opacity": (text) => ({ strokeOpacity: number(text) }),
  "stroke-width": (text) => ({ strokeWidth: number(text) }),
  "stroke-linecap": (text) => ({ lineCap: word(text, LINE_ENDS) }),
  "stroke-linejoin": (text) => ({ lineJoin: word(text, LINE_CORNERS) }),
  "stroke-dasharray": (text) => ({ dashes: text === "none" ? [] : numbers(text) }),
  "font-family": (text) => ({ fontFamily: (text.split(",")[0] ?? "").trim().replace(/^['"]|['"]$/g, "") }),
  "font-size": (text) => ({ fontSizePx: number(text) }),
  "font-weight": (text) => ({ bold: word(text, ["400", "700"]) === "700" }),
  "text-anchor": (text) => ({ anchor: word(text, ANCHORS) }),
  "letter-spacing": (text) => ({ letterSpacingPx: number(text) }),
  "paint-order": (text) => ({ strokeFirst: word(text, ["normal", "stroke"]) === "stroke" }),
};

/** Where things are, read by whoever draws the element; what an image is; and what has no look. */
const READ_ELSEWHERE =
  /^(x|y|x1|y1|x2|y2|cx|cy|r|rx|ry|dx|d|points|width|height|viewBox|transform|clip-path|id|class|role|xmlns|href|preserveAspectRatio|patternUnits|patternTransform|data-.*|aria-.*)$/;

/** The element's style under its parent's. Throws RangeError on an attribute or a value that a page would not show. */
export function styleOf(element: Element, inherited: SvgStyle): SvgStyle {
  let style = inherited;
  for (const { name, value } of element.attributes) {
    const change = Object.hasOwn(CHANGES, name) ? CHANGES[name] : undefined;
    if (change !== undefined) style = { ...style, ...change(value, inherited) };
    else if (!READ_ELSEWHERE.test(name))
      throw new RangeError(`a page has no counterpart of ${name}="${value}" on <${element.tagName}>`);
  }
  return style;
}

/** A number that stands in an attribute; `otherwise` where it does not. */
export function numberIn(element: Element, name: string, otherwise = 0): number {
  const text = element.getAttribute(name);
  return text === null ? otherwise : number(text);
}
