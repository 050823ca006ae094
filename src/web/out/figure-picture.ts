/** The bench's figure as SVG, by the very component of the command line's `figure`. Loaded when a picture is asked for. */

import { chartField, figureSvg, type Theme } from "../../draw/index.ts";
import { reasonsFor } from "../../reason/index.ts";
import { worldLandIn } from "../catalogue/world-outlines.ts";
import { embeddedFontCss } from "./figure-fonts.ts";
import type { PictureSize } from "./picture-size.ts";
import type { Shown } from "./shown.ts";

export interface FigureLook extends Pick<PictureSize, "widthPx" | "heightPx"> {
  /** Leaves the ground around the sheets empty. */
  readonly transparent: boolean;
}

const ID_PREFIX = "figure";

/** The SVG file's text. With its fonts it stands alone; without them it is for a program that brings its own. */
export async function figureOf(
  shown: Shown,
  look: FigureLook,
  { fonts }: { readonly fonts: boolean },
): Promise<string> {
  return figureText(shown, look, ID_PREFIX, fonts ? await embeddedFontCss() : undefined);
}

/** The same at once, in the page's own fonts. `idPrefix` keeps its ids apart from the page's. */
export function figureText(shown: Shown, look: FigureLook, idPrefix: string, fontCss?: string): string {
  const { situation, views, theme, receiver, chartView, trail, field } = shown;
  return figureSvg({
    situation,
    reasons: reasonsFor(situation),
    views,
    widthPx: look.widthPx,
    heightPx: look.heightPx,
    theme,
    transparent: look.transparent,
    idPrefix,
    fontCss,
    receiver,
    chartView: chartView ?? undefined,
    trail,
    field: field === null ? null : chartField(situation.scene, field),
    world: worldLandIn(situation.scene, chartView),
  });
}

/** The figure for the page's own parser, whose rules against styles inside a text it would break; `data-blend` still says it. */
export const withoutBlendStyle = (svg: string): string => svg.replace(/ style="mix-blend-mode:\w+"/, "");

/** For ink on white paper: light, with nothing printed where there is nothing. */
export const onPaper = (light: Theme): Theme => ({ ...light, desk: null, paper: "#ffffff" });
