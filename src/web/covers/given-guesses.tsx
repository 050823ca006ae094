/** What has been guessed so far, while the cover still lies. */

import type { JSX } from "preact";
import type { Given, Question } from "./asking.ts";
import { answerWords } from "./compare-guess.ts";

export interface GivenGuessesProps {
  readonly question: Question;
  readonly covers: readonly string[];
}

export function GivenGuesses({ question, covers }: GivenGuessesProps): JSX.Element | null {
  const { given } = question;
  if (given.length === 0) return null;
  return (
    <ol class="given">
      {given.map((each, index) => (
        <li key={`${index} ${each.answer.kind}`}>
          <span class="caption">{given.length > 1 ? `guess ${index + 1}` : "your guess"}</span>{" "}
          <span class="given-words">{words(each, covers)}</span>
        </li>
      ))}
    </ol>
  );
}

/** A place stays a mark on the chart: its radial, said here, would be read off and not found. */
function words({ answer, situation }: Given, covers: readonly string[]): string {
  if (answer.kind === "place" && !covers.includes("chart")) return "marked on the chart";
  return answerWords({ ...situation, scene: { ...situation.scene, covers } }, answer);
}
