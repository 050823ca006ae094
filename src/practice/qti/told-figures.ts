/** The figures that an answer is told in, one text entry each. */

import type { Answer, Tolerance } from "../answer.ts";
import type { Problem } from "../problem.ts";

/** One figure to be told. */
export interface Field {
  readonly identifier: string;
  readonly label: string;
  readonly unit: string;
  /** Of a direction, which goes round at 360. */
  readonly isDirection: boolean;
  /** The figure of an answer of this form. */
  of(answer: Answer): number | null;
  readonly tolerance: number;
}

/** Of a problem that is told in figures; none of one that is not. */
export function fieldsOf({ truth, case: { tolerance, figures = [] } }: Problem): readonly Field[] {
  switch (truth.kind) {
    case "direction":
      return [
        direction("RESPONSE", "Answer, three digits", tolerance.deg ?? 0, (answer) =>
          answer.kind === "direction" ? answer.deg : null,
        ),
      ];
    case "quantity":
      return [
        {
          identifier: "RESPONSE",
          label: "Answer",
          unit: truth.unit,
          isDirection: false,
          of: (answer) => (answer.kind === "quantity" ? answer.value : null),
          tolerance: Math.max(tolerance.value ?? 0, (tolerance.share ?? 0) * Math.abs(truth.value)),
        },
      ];
    case "wind":
      return [
        direction("FROM", "From, degrees true", tolerance.deg ?? 0, (answer) =>
          answer.kind === "wind" ? answer.fromDeg : null,
        ),
        {
          identifier: "SPEED",
          label: "Speed",
          unit: "kt",
          isDirection: false,
          of: (answer) => (answer.kind === "wind" ? answer.speedKt : null),
          tolerance: tolerance.kt ?? 0,
        },
      ];
    case "row":
      return figures.map((figure) => rowField(figure, tolerance));
    default:
      return [];
  }
}

const direction = (identifier: string, label: string, tolerance: number, of: Field["of"]): Field => ({
  identifier,
  label,
  unit: "",
  isDirection: true,
  of,
  tolerance,
});

const rowField = (
  { name, label, unit }: { readonly name: string; readonly label: string; readonly unit: string },
  { figures }: Tolerance,
): Field => ({
  identifier: name,
  label,
  unit,
  isDirection: name.endsWith("Deg"),
  of: (answer) => (answer.kind === "row" ? (answer.figures[name] ?? null) : null),
  tolerance: figures?.[name] ?? 0,
});
