/** The chart beside an ident must show every station that may be meant, or it tells which one sounds. */

import { expect, it } from "vitest";
import { figureSvg, THEMES } from "../../src/draw/index.ts";
import { makeProblem } from "../../src/practice/index.ts";
import { PRACTICE_ISLES } from "../practice-world.ts";

it("shows every station of the choice, whichever is tuned", () => {
  let shown = 0;
  for (let seed = 0; seed < 30; seed += 1) {
    const made = makeProblem(PRACTICE_ISLES, "ident-match", "choose", seed);
    if (made.kind === "none") throw new Error(made.says);
    const { situation, case: drawn } = made.problem;
    if (drawn.views.length === 0) continue;
    shown += 1;
    const svg = figureSvg({
      situation,
      reasons: [],
      views: drawn.views,
      widthPx: 1000,
      heightPx: 600,
      theme: THEMES.light,
      transparent: false,
      idPrefix: "ident",
    });
    for (const ident of drawn.words ?? []) expect(svg).toMatch(new RegExp(`>${ident}<`));
  }
  expect(shown).toBeGreaterThan(10);
});
