/**
 * One slide: a title, the views asked for, the question when the scene asks one, and the caution. What the scene covers is not drawn
 * at all, nor said in the description.
 */

import type { Reason } from "../../reason/index.ts";
import type { Situation, View } from "../../scene/index.ts";
import { Chart, type ChartView, chartProjection, fitView, type WorldOutlines } from "../chart/index.ts";
import { Panel } from "../faces/index.ts";
import { type ChartField, FieldImage } from "../field/index.ts";
import { PaperStrip } from "../plain/paper-strip.tsx";
import { px } from "../plain/px.ts";
import { TextLine } from "../plain/text-line.tsx";
import { TitledPicture } from "../plain/titled-picture.tsx";
import { Trail, type TrailPoint } from "../plots/index.ts";
import { Reasons } from "../reasons/index.ts";
import type { Theme } from "../theme.ts";
import type { PlacedView } from "./arrange-views.ts";
import { figureSentence } from "./figure-sentence.ts";
import { type FigureLayout, layoutFigure } from "./layout-figure.ts";
import { SignalFigure } from "./signal-figure.tsx";
import { waveReading } from "./wave-reading.ts";

export interface FigureProps {
  readonly situation: Situation;
  readonly reasons: readonly Reason[];
  readonly views: readonly View[];
  readonly widthPx: number;
  readonly heightPx: number;
  readonly theme: Theme;
  /** Leaves the ground around the sheets empty. */
  readonly transparent?: boolean | undefined;
  /** Begins every id in the picture. */
  readonly idPrefix: string;
  /** `@font-face` rules to carry along, so that the picture stands alone. */
  readonly fontCss?: string | undefined;
  /** The scene's own when not given. */
  readonly covers?: readonly string[] | undefined;
  /** Whose argument, waves and lines come first; the first receiver's when not given. */
  readonly receiver?: string | undefined;
  /** The part of the world that the chart shows; when absent, a view that fits the scene. */
  readonly chartView?: ChartView | undefined;
  /** Where the aircraft has flown. */
  readonly trail?: readonly TrailPoint[] | undefined;
  /** The needle field that the chart wears. */
  readonly field?: ChartField | null | undefined;
  /** Outlines of the world's land, for a scene that has none of its own there. */
  readonly world?: WorldOutlines | null | undefined;
  /** 1 for 14 px text; chosen by the figure's size when not given. */
  readonly typeScale?: number | undefined;
}

export function Figure(props: FigureProps) {
  const { theme, idPrefix, widthPx, heightPx, transparent = false, fontCss } = props;
  const situation = withCovers(props.situation, props.covers);
  const layout = layoutFigure({ ...props, situation });
  const argument = props.reasons.filter((reason) => layout.argued.includes(reason.receiver));
  const [width, height] = [px(widthPx), px(heightPx)];
  return (
    <TitledPicture
      widthPx={widthPx}
      heightPx={heightPx}
      idPrefix={idPrefix}
      title={situation.scene.title}
      words={figureSentence(situation, argument, props)}
    >
      {fontCss !== undefined && <style>{checkedCss(fontCss)}</style>}
      {!transparent && theme.desk !== null && <rect width={width} height={height} fill={theme.desk} />}
      <Words layout={layout} theme={theme} />
      {layout.views.map((placed) => (
        <Sheet key={placed.view} placed={placed} theme={theme}>
          <OneView {...props} situation={situation} placed={placed} layout={layout} />
        </Sheet>
      ))}
    </TitledPicture>
  );
}

const withCovers = (situation: Situation, covers: readonly string[] | undefined): Situation =>
  covers === undefined ? situation : { ...situation, scene: { ...situation.scene, covers } };

/** The rules as they are; refuses what could end the element or would need escaping. */
function checkedCss(css: string): string {
  if (/[<&>"]/.test(css)) throw new RangeError(`font rules must hold none of < > & "`);
  return css;
}

/** Title, question and caution. */
function Words({ layout, theme }: { readonly layout: FigureLayout; readonly theme: Theme }) {
  return (
    <>
      {layout.words.map((line) => (
        <TextLine
          key={`${line.role}-${line.y}`}
          x={line.x}
          y={line.y}
          sizePx={line.sizePx}
          fill={line.role === "title" || line.role === "ask" ? theme.ink : theme.soft}
          typeface={line.role === "title" ? "words-bold" : "words"}
          anchor={line.anchor}
        >
          {line.text}
        </TextLine>
      ))}
    </>
  );
}

interface SheetProps {
  readonly placed: PlacedView;
  readonly theme: Theme;
  readonly children: preact.ComponentChildren;
}

/** A sheet of paper on the desk, with one soft shadow. */
function Sheet({ placed, theme, children }: SheetProps) {
  const { x, y, widthPx, heightPx } = placed.box;
  const [width, height] = [px(widthPx), px(heightPx)];
  return (
    <g data-view={placed.view} transform={`translate(${px(x)} ${px(y)})`}>
      <rect y="2" width={width} height={height} rx="2" fill={theme.ink} fill-opacity="0.1" />
      <rect width={width} height={height} rx="2" fill={theme.paper} />
      {children}
    </g>
  );
}

interface OneViewProps extends FigureProps {
  readonly placed: PlacedView;
  readonly layout: FigureLayout;
}

function OneView(props: OneViewProps) {
  const { situation, reasons, theme, idPrefix, placed, layout, receiver, chartView, world } = props;
  const { view, box } = placed;
  const { scale, argued } = layout;
  const { covers } = situation.scene;
  const size = { widthPx: box.widthPx, heightPx: box.heightPx };
  const common = { ...size, theme, idPrefix: `${idPrefix}-${view}`, typeScale: scale };
  if (covers.includes(view))
    return (
      <PaperStrip
        middleX={box.widthPx / 2}
        middleY={box.heightPx / 2}
        widthPx={Math.min(box.widthPx * 0.8, 460 * scale)}
        heightPx={Math.min(box.heightPx * 0.5, 90 * scale)}
        covered={view}
        theme={theme}
      />
    );
  switch (view) {
    case "chart": {
      const view = chartView ?? fitView(situation, box.widthPx, box.heightPx, scale);
      const { trail = [], field = null } = props;
      return (
        <Chart
          situation={situation}
          view={view}
          overGround={
            field === null ? null : <FieldImage field={field} paper={{ view, ...size }} theme={theme} />
          }
          underStations={
            trail.length < 2 ? null : (
              <Trail
                points={trail}
                projection={chartProjection(view, size.widthPx, size.heightPx)}
                theme={theme}
                covers={covers}
                typeScale={scale}
              />
            )
          }
          world={world ?? null}
          {...common}
          {...(receiver === undefined ? {} : { receiver })}
        />
      );
    }
    case "panel":
      return <Panel situation={situation} {...common} />;
    case "signal":
      return <SignalFigure reading={waveReading(situation, receiver)} covers={covers} {...common} />;
    case "reasons":
      return <Reasons reasons={reasons} receivers={argued} covers={covers} {...common} />;
  }
}
