/**
 * A code on paper opens the same problem for ever within a version of the generator. When a row here fails, either the change must not alter
 * problems, or `GENERATOR_VERSION` must rise and the rows be written anew: PIN_PROBLEMS=1 npx vitest run test/practice/pinned-problems.test.ts
 */

import { writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { latLonText } from "../../src/earth/index.ts";
import { answerText, FORMS, GENERATOR_VERSION, makeProblem, optionsOf } from "../../src/practice/index.ts";
import { PRACTICE_ISLES } from "../practice-world.ts";
import pinned from "./pinned-problems.json" with { type: "json" };

const SEEDS = [1, 20_261, 4_194_303];

const rows = FORMS.flatMap(({ id, modes }) =>
  modes.flatMap((mode) =>
    SEEDS.map((seed) => {
      const made = makeProblem(PRACTICE_ISLES, id, mode, seed);
      if (made.kind === "none") throw new Error(made.says);
      const { problem } = made;
      const { scene } = problem.case;
      return {
        code: `${problem.code}`,
        form: `${id}, ${mode}`,
        asks: scene.ask,
        at: latLonText(scene.aircraft.position),
        truth: answerText(problem.truth),
        wrong: optionsOf(problem)
          .options.slice(1)
          .map(({ answer }) => answerText(answer)),
      };
    }),
  ),
);

if (process.env.PIN_PROBLEMS)
  writeFileSync(
    new URL("./pinned-problems.json", import.meta.url),
    `${JSON.stringify({ version: GENERATOR_VERSION, rows }, null, 2)}\n`,
  );

describe.skipIf(process.env.PIN_PROBLEMS)("problems once handed out", () => {
  it("were pinned with this version of the generator", () => {
    expect(pinned.version).toBe(GENERATOR_VERSION);
    expect(pinned.rows.map(({ code }) => code)).toEqual(rows.map(({ code }) => code));
  });

  it.each(rows.map((row, at) => [`${row.form}, ${row.code}`, row, pinned.rows[at]] as const))(
    "%s",
    (_, row, before) => {
      expect(row).toEqual(before);
    },
  );
});
