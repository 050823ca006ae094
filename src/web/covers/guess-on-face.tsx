/**
 * A guess on the very face it was made about, in open outline: a paper needle on the dots, an open mark at a direction on the card. Nothing
 * is laid where its place would tell what is still covered.
 */

import type { JSX } from "preact";
import { coveredParts, dialGeometry, type Theme } from "../../draw/index.ts";
import { wrap180 } from "../../earth/index.ts";
import type { ReceiverReading } from "../../panel/index.ts";
import type { Bench } from "../state/bench.ts";
import { askingOf, type Question } from "./asking.ts";
import type { Answer } from "./guess.ts";

interface Outline {
  readonly sizePx: number;
  readonly theme: Theme;
}

export interface GuessOnFaceProps extends Outline {
  readonly bench: Bench;
  readonly reading: ReceiverReading;
}

export function GuessOnFace({ bench, reading, sizePx, theme }: GuessOnFaceProps): JSX.Element | null {
  const { name, face, course } = reading.settings;
  const questions = askingOf(bench).questions.value;
  const covered = coveredParts(name, bench.scene.value.covers);
  const needle = questions.find(({ cover }) => cover === `${name}.needle`);
  const selected = questions.find(({ cover }) => cover === `${name}.course`);
  const answer = needle === undefined ? null : newest(needle);
  // On a card that turns, a mark at a number shows the card's turn.
  if (face === "rmi")
    return answer?.kind === "direction" && !covered.has("heading") ? (
      <CardMark turnDeg={wrap180(answer.deg - reading.heading)} sizePx={sizePx} theme={theme} />
    ) : null;
  const courseAnswer = selected?.lifted === true ? newest(selected) : null;
  const cardDeg = face === "cdi" ? course : reading.heading;
  const seen = face === "cdi" || !(covered.has("heading") || covered.has("course"));
  return (
    <>
      {answer?.kind === "needle" && answer.dots !== null && seen ? (
        <PaperNeedle
          dots={answer.dots}
          turnDeg={face === "cdi" ? 0 : reading.courseRelativeDeg}
          sizePx={sizePx}
          theme={theme}
        />
      ) : null}
      {courseAnswer?.kind === "direction" && seen ? (
        <CardMark turnDeg={wrap180(courseAnswer.deg - cardDeg)} sizePx={sizePx} theme={theme} />
      ) : null}
    </>
  );
}

/** The same on the heading indicator, once its cover is off. */
export function GuessOnHeading({
  bench,
  sizePx,
  theme,
}: Outline & { readonly bench: Bench }): JSX.Element | null {
  const question = askingOf(bench).questions.value.find(({ cover }) => cover === "heading");
  const { covers, aircraft } = bench.scene.value;
  if (question?.lifted !== true || covers.includes("panel")) return null;
  const answer = newest(question);
  return answer?.kind === "direction" ? (
    <CardMark turnDeg={wrap180(answer.deg - aircraft.heading)} sizePx={sizePx} theme={theme} />
  ) : null;
}

/** What is being put together, else what was given last. */
const newest = ({ draft, given, guessing }: Question): Answer | null =>
  guessing && draft !== null ? draft : (given.at(-1)?.answer ?? null);

const Overlay = ({ sizePx, children }: { sizePx: number; children: JSX.Element }): JSX.Element => (
  <svg class="guess-on-face" viewBox={`${-sizePx / 2} ${-sizePx / 2} ${sizePx} ${sizePx}`} aria-hidden="true">
    {children}
  </svg>
);

function PaperNeedle({
  dots,
  turnDeg,
  sizePx,
  theme,
}: Outline & { dots: number; turnDeg: number }): JSX.Element {
  const { dotSpacingPx, needleHalfLengthPx } = dialGeometry(sizePx);
  return (
    <Overlay sizePx={sizePx}>
      <rect
        transform={`rotate(${turnDeg})`}
        x={dots * dotSpacingPx - 4}
        y={-needleHalfLengthPx}
        width={8}
        height={2 * needleHalfLengthPx}
        rx={2}
        fill="none"
        stroke={theme.ink}
        stroke-width={1.7}
      />
    </Overlay>
  );
}

/** An open triangle outside the ring. */
function CardMark({ turnDeg, sizePx, theme }: Outline & { turnDeg: number }): JSX.Element {
  const { ringRadiusPx } = dialGeometry(sizePx);
  const half = Math.max(5, sizePx * 0.032);
  const base = -ringRadiusPx - Math.max(5, sizePx * 0.04);
  return (
    <Overlay sizePx={sizePx}>
      <path
        transform={`rotate(${turnDeg})`}
        d={`M0 ${-ringRadiusPx + 3}L${half} ${base}H${-half}Z`}
        fill={theme.paper}
        stroke={theme.ink}
        stroke-width={1.7}
        stroke-linejoin="round"
      />
    </Overlay>
  );
}
