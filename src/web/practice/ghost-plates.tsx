/** The world as it is and as a wrong answer has it, side by side in one frame. */

import type { JSX } from "preact";
import { useMemo, useRef } from "preact/hooks";
import { Chart, type ChartView, fitView, Panel, ReceiverFace, type Theme } from "../../draw/index.ts";
import { inverse } from "../../earth/index.ts";
import { DEGREES_PER_DOT, DOTS_EACH_SIDE, type ReceiverReading } from "../../panel/index.ts";
import { answerText, type Ghost, type Problem } from "../../practice/index.ts";
import type { Scene, Situation } from "../../scene/index.ts";
import { useElementSize } from "../frame/element-size.ts";

export interface GhostPlatesProps {
  /** Resolves scenes on the stations the problem was set on. */
  readonly resolve: (scene: Scene) => Situation;
  readonly problem: Problem;
  readonly ghost: Ghost;
  readonly theme: Theme;
}

const FACE_PX = 148;

/** Two plates, each as large as it is given room. */
export function GhostPlates({ resolve, problem, ghost, theme }: GhostPlatesProps): JSX.Element {
  const so = useMemo(() => asItIs(resolve, problem), [problem]);
  const had = useMemo(() => asAnswered(resolve({ ...ghost.scene, covers: [] }), ghost), [ghost]);
  const panels = ghost.panel !== null || isAnotherPanel(so, had);
  return (
    <div class="practice-plates">
      <Plate title="What is so" situation={so} other={had} panels={panels} theme={theme} idPrefix="so" />
      <Plate
        title="As your answer has it"
        says={ghost.says}
        situation={had}
        other={so}
        panels={panels}
        theme={theme}
        idPrefix="ghost"
      />
    </div>
  );
}

/** The truth by the same road as the answer: where a question looks ahead, it too is flown on. */
function asItIs(resolve: GhostPlatesProps["resolve"], { case: { scene, ghost }, truth }: Problem): Situation {
  const own = ghost(truth);
  const situation = resolve({ ...(own?.scene ?? scene), covers: [] });
  const [reading] = situation.receivers;
  // The middle of "part left" stands in for the needle only where the scene itself shows another one.
  const shows =
    truth.kind === "panel" && reading !== undefined && panelOfReading(reading) === answerText(truth);
  return own === null || shows ? situation : asAnswered(situation, own);
}

function panelOfReading({ flag, needleSide, fullScale }: ReceiverReading): string {
  const needle =
    needleSide === null || needleSide === "centre"
      ? "centred"
      : (`${fullScale ? "full" : "part"} ${needleSide}` as const);
  return answerText({ kind: "panel", flag, needle });
}

/** Whether the two differ in what a receiver is set to, and not in where the aircraft is. */
const isAnotherPanel = (so: Situation, had: Situation): boolean =>
  JSON.stringify(so.scene.receivers) !== JSON.stringify(had.scene.receivers);

/** The first receiver shows what the answer says it would, where the answer is a panel. */
function asAnswered(situation: Situation, { panel }: Ghost): Situation {
  const [reading, ...others] = situation.receivers;
  if (panel === null || reading === undefined) return situation;
  const { flag, needleDeg } = panel;
  const dots = Math.min(DOTS_EACH_SIDE, Math.abs(needleDeg) / DEGREES_PER_DOT);
  return {
    ...situation,
    receivers: [
      {
        ...reading,
        flag,
        deviationDeg: needleDeg,
        needleDots: dots,
        needleSide: needleDeg === 0 ? "centre" : needleDeg < 0 ? "left" : "right",
        fullScale: dots >= DOTS_EACH_SIDE,
      },
      ...others,
    ],
  };
}

interface PlateProps {
  readonly title: string;
  readonly says?: string;
  readonly situation: Situation;
  /** Framed together with this one. */
  readonly other: Situation;
  readonly panels: boolean;
  readonly theme: Theme;
  readonly idPrefix: string;
}

function Plate({ title, says, situation, other, panels, theme, idPrefix }: PlateProps): JSX.Element {
  const holder = useRef<HTMLDivElement>(null);
  const size = useElementSize(holder);
  const view = useMemo(
    () => (size === null ? null : frameOfBoth(situation, other, size.widthPx, size.heightPx)),
    [situation, other, size],
  );
  const [reading] = situation.receivers;
  const drawn = { situation, theme, idPrefix: `plate-${idPrefix}` };
  return (
    <figure class="sheet practice-plate" data-plate={idPrefix}>
      <figcaption>
        <strong>{title}</strong> {says}
      </figcaption>
      <div class="practice-plate-paper" ref={holder}>
        {view === null || size === null ? null : panels ? (
          <Panel {...drawn} {...size} />
        ) : (
          <Chart {...drawn} {...size} view={view} />
        )}
      </div>
      {panels || reading === undefined ? null : (
        <div class="practice-plate-face">
          <p class="caption">{idPrefix === "so" ? "the panel shows" : "there it would show"}</p>
          <ReceiverFace
            reading={reading}
            sizePx={FACE_PX}
            theme={theme}
            idPrefix={`plate-${idPrefix}-face`}
          />
        </div>
      )}
    </figure>
  );
}

/** One view for both, so that what moved is seen to have moved. */
function frameOfBoth(one: Situation, other: Situation, widthPx: number, heightPx: number): ChartView {
  const views = [one, other].map((situation) => fitView(situation, widthPx, heightPx));
  const [first, second] = views;
  if (first === undefined || second === undefined) throw new Error("two views were framed");
  const apart = inverse(first.centre, second.centre);
  const apartNm = apart.kind === "line" ? apart.distanceNm : 0;
  const wider = first.widthNm >= second.widthNm ? first : second;
  return { centre: midway(first, second), widthNm: wider.widthNm + apartNm };
}

const midway = ({ centre: a }: ChartView, { centre: b }: ChartView): ChartView["centre"] => ({
  latDeg: (a.latDeg + b.latDeg) / 2,
  lonDeg: a.lonDeg + (((b.lonDeg - a.lonDeg + 540) % 360) - 180) / 2,
});
