/** A field's picture laid over the chart's ground: what prints nothing leaves the ground as it is. */

import type { VNode } from "preact";
import { px } from "../plain/px.ts";
import type { Theme } from "../theme.ts";
import type { ChartField } from "./chart-field.ts";
import type { PlatePaper } from "./plate.ts";

export interface FieldImageProps {
  readonly field: ChartField;
  readonly paper: PlatePaper;
  readonly theme: Theme;
}

export function FieldImage({ field, paper, theme }: FieldImageProps): VNode {
  const { href, widthPx, heightPx } = field.pictureOn(paper, theme);
  // A style and no attribute: SVG has none for it.
  const blend = theme.name === "light" ? "multiply" : "screen";
  return (
    <image
      data-part="field"
      href={href}
      width={px(widthPx)}
      height={px(heightPx)}
      preserveAspectRatio="none"
      data-blend={blend}
      style={`mix-blend-mode:${blend}`}
    />
  );
}
