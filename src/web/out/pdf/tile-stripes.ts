/** The tiles that our pictures fill areas with: upright stripes from edge to edge, which go on without end when the tile is repeated. */

import { FIRST_STYLE, numberIn, styleOf } from "./svg-style.ts";

export interface Stripe {
  /** A stroke along its middle, or a filled band from its left edge. */
  readonly kind: "line" | "band";
  readonly x: number;
  readonly widthPx: number;
  readonly colour: string;
  readonly opacity: number;
}

/** The stripes of a `<pattern>`, in the order they are painted. Throws RangeError on anything else in it. */
export function stripesOf(tile: Element): readonly Stripe[] {
  const inherited = styleOf(tile, FIRST_STYLE);
  const height = numberIn(tile, "height");
  return [...tile.children].map((child) => {
    const style = styleOf(child, inherited);
    const [, x = "", end = ""] = /^M(\S+) 0V(\S+)$/.exec(child.getAttribute("d") ?? "") ?? [];
    if (child.tagName === "path" && Number(end) === height)
      return {
        kind: "line",
        x: Number(x),
        widthPx: style.strokeWidth,
        colour: style.stroke,
        opacity: style.opacity * style.strokeOpacity,
      };
    if (child.tagName === "rect" && numberIn(child, "y") === 0 && numberIn(child, "height") === height)
      return {
        kind: "band",
        x: numberIn(child, "x"),
        widthPx: numberIn(child, "width"),
        colour: style.fill,
        opacity: style.opacity * style.fillOpacity,
      };
    throw new RangeError(
      `a page shows no tile but upright stripes, and ${tile.id} has another <${child.tagName}>`,
    );
  });
}
