/** Guess and truth together, once the cover is off: in words, and for a needle on its scale. */

import type { JSX } from "preact";
import type { Theme } from "../../draw/index.ts";
import { DEGREES_PER_DOT, DOTS_EACH_SIDE } from "../../panel/index.ts";
import { parseCover, type Situation } from "../../scene/index.ts";
import type { Given, Question } from "./asking.ts";
import { type Comparison, compareGuess } from "./compare-guess.ts";
import { NeedleScale } from "./needle-scale.tsx";

export interface OutcomeProps {
  readonly question: Question;
  /** What is still covered. */
  readonly covers: readonly string[];
  /** As it is now. */
  readonly situation: Situation;
  readonly theme: Theme;
}

/** What a guess came to, seen from where it was made, saying nothing of what is still covered. */
export const comparisonOf = (
  cover: string,
  { answer, situation }: Given,
  covers: readonly string[],
): Comparison => compareGuess({ ...situation, scene: { ...situation.scene, covers } }, { cover, answer });

export function Outcome({ question, covers, situation, theme }: OutcomeProps): JSX.Element {
  const { cover, given } = question;
  const many = given.length > 1;
  return (
    <>
      <Needles cover={cover} given={given} theme={theme} />
      <ol class="outcome">
        {given.map((each, index) => {
          const { guessed, truth, sentence } = comparisonOf(cover, each, covers);
          const then = each.situation.scene.aircraft !== situation.scene.aircraft;
          return (
            <li key={`${index} ${guessed}`}>
              <dl>
                <div class="guessed">
                  <dt>{many ? `guess ${index + 1}` : "your guess"}</dt>
                  <dd>{guessed}</dd>
                </div>
                {truth === "" ? null : (
                  <div class="truth">
                    <dt>{then ? "it was then" : "it is"}</dt>
                    <dd>{truth}</dd>
                  </div>
                )}
              </dl>
              <p class="verdict">{sentence}</p>
            </li>
          );
        })}
      </ol>
    </>
  );
}

interface NeedlesProps {
  readonly cover: string;
  readonly given: readonly Given[];
  readonly theme: Theme;
}

/** The paper needles and the true one on one scale, as it stood when the last was laid; nothing where no needle was guessed. */
function Needles({ cover, given, theme }: NeedlesProps): JSX.Element | null {
  const target = parseCover(cover);
  const laid = given.flatMap(({ answer }) =>
    answer.kind === "needle" && answer.dots !== null ? [answer.dots] : [],
  );
  const last = given.at(-1);
  if (target?.kind !== "receiver" || laid.length === 0 || last === undefined) return null;
  const reading = last.situation.receivers.find(({ settings }) => settings.name === target.receiver);
  const dots = reading?.deviationDeg == null ? null : reading.deviationDeg / DEGREES_PER_DOT;
  const truth = dots === null ? null : Math.max(-DOTS_EACH_SIDE, Math.min(DOTS_EACH_SIDE, dots));
  return <NeedleScale guesses={laid} truth={truth} theme={theme} />;
}
