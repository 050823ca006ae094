/** An answer in words a learner reads: figures with their names, places from their station, an order as its things. */

import { inverse, threeDigits } from "../../earth/index.ts";
import { type Answer, answerText, type Problem } from "../../practice/index.ts";

/** One line, or for an order the things in it, one line each. */
export function answerLines(problem: Problem, answer: Answer): readonly string[] {
  if (answer.kind === "order") {
    const { items = [] } = problem.case;
    return answer.items.map((letter) => items.find((item) => item.letter === letter)?.text ?? letter);
  }
  return [answerWords(problem, answer)];
}

export function answerWords(problem: Problem, answer: Answer): string {
  switch (answer.kind) {
    case "row":
      return (problem.case.figures ?? [])
        .map(({ name, label, unit }) => {
          const value = answer.figures[name] ?? Number.NaN;
          const written = name.endsWith("Deg") ? threeDigits(value) : `${Math.round(value)} ${unit}`;
          return `${label.toLowerCase()} ${written}`.trim();
        })
        .join(", ");
    case "place":
      return placeWords(problem, answer) ?? answerText(answer);
    case "order":
      return answerLines(problem, answer).join("; ");
    default:
      return answerText(answer);
  }
}

/** "SRX 213/17": radial and distance from the first receiver's station; null where there is none to count from. */
function placeWords(
  { situation }: Problem,
  { position }: Extract<Answer, { readonly kind: "place" }>,
): string | null {
  const station = situation.receivers[0]?.station;
  if (station == null) return null;
  const line = inverse(station.position, position);
  if (line.kind !== "line") return null;
  const radialDeg = line.azimuth - station.declinationDeg;
  return `${station.ident} ${threeDigits(radialDeg)}/${Math.round(line.distanceNm)}`;
}
