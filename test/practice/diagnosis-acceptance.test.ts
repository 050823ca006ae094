/** The diagnosis on made-up learners with problems of the generator: a smaller run of what `npm run simulate` does. */

import { describe, expect, it } from "vitest";
import {
  ACCEPTANCE_CASES,
  type AcceptanceCase,
  candidateOf,
  chance,
  composedOption,
  FORMS,
  GAIN_BY_CHOOSING,
  generatedSource,
  makeProblem,
  missedDemands,
  type ProblemSource,
  runCase,
  type SimulationOutcome,
  SLIPS,
  type SlipId,
  slipOf,
} from "../../src/practice/index.ts";
import { PRACTICE_ISLES } from "../practice-world.ts";

const SEED = 7;
const READING = SLIPS.slice(0, 12);

/** Made once for a scope and a mode. */
const sources = new Map<string, ProblemSource<SlipId>>();

function run(one: AcceptanceCase) {
  const scope = (one.scope === "lesson" ? READING : SLIPS).map(({ id, base }) => ({ id, base }));
  const ids = scope.map(({ id }) => id);
  const name = `${one.scope} ${one.mode}`;
  const source =
    sources.get(name) ?? generatedSource(PRACTICE_ISLES, ids, { mode: one.mode, perForm: 50, seed: SEED });
  sources.set(name, source);
  return runCase(one, { scope, source, learners: one.scope === "lesson" ? 100 : 50, seed: SEED });
}
/** Each case is run once, when it is first asked for. */
const outcomes = new Map<string, SimulationOutcome>();
function outcomeOf(name: string): SimulationOutcome {
  const one = ACCEPTANCE_CASES.find((known) => known.name === name);
  if (one === undefined) throw new Error(`no case is called ${name}`);
  const outcome = outcomes.get(name) ?? run(one);
  outcomes.set(name, outcome);
  return outcome;
}
const CHOSEN = "lesson, 20 items chosen";

describe("the diagnosis in the demo isles", () => {
  const demanding = ACCEPTANCE_CASES.filter(({ demands }) => demands.length > 0);
  it.each(demanding.map(({ name, demands }) => [name, demands] as const))(
    "meets the demands: %s",
    (name, demands) => expect(missedDemands(outcomeOf(name), demands)).toEqual([]),
  );

  it("finds more slips by items chosen than by items at random", () => {
    const chosen = outcomeOf(CHOSEN).heldInTopThree ?? 0;
    const random = outcomeOf("lesson, 20 items at random").heldInTopThree ?? 1;
    expect(chosen - random).toBeGreaterThanOrEqual(GAIN_BY_CHOOSING);
  });

  it("ends early for many learners when it may, and loses little by it", () => {
    const done = outcomeOf("lesson, until the diagnosis is done");
    expect(done.meanItems).toBeLessThan(19);
    expect(done.topHeld).toBeGreaterThanOrEqual(0.95);
  });

  it("foretells answers it has not seen better than difficulty does", () => {
    const { heldOut } = outcomeOf(CHOSEN);
    expect(heldOut?.answers).toBe(500);
    expect(heldOut?.mayNameSlips).toBe(true);
  });

  it("has for every slip of the table a problem that tells it apart", () => {
    const luck = chance(1);
    const source = generatedSource(
      PRACTICE_ISLES,
      SLIPS.map(({ id }) => id),
      { mode: "choose", perForm: 20, seed: SEED },
    );
    const told = new Set(
      source
        .candidates(1500, luck, (slip) => slipOf(slip).base)
        .flatMap(({ item }) => Object.keys(item.slipOptions)),
    );
    expect(SLIPS.map(({ id }) => id).filter((id) => !told.has(id))).toEqual([]);
  });
});

describe("a generated candidate", () => {
  const made = FORMS.flatMap((form) =>
    form.modes.flatMap((mode) =>
      [1, 2, 3].flatMap((seed) => {
        const one = makeProblem(PRACTICE_ISLES, form.id, mode, seed);
        return one.kind === "problem" ? [candidateOf(one.problem, (slip) => slipOf(slip).base)] : [];
      }),
    ),
  );

  it("answers under one slip as that slip's option, and under none with the truth", () => {
    expect(made.length).toBeGreaterThan(50);
    for (const candidate of made) {
      expect(composedOption(candidate, [])).toBe(0);
      for (const { id } of SLIPS) {
        const option = candidate.item.slipOptions[id];
        // A slip may lead to no answer at all; the table then leaves it out.
        if (option !== undefined) expect(composedOption(candidate, [id])).toBe(option);
      }
    }
  });

  it("says where it plays by station and octant", () => {
    const octants = made.flatMap(({ place }) => /^[A-Z]{3} (\d+)$/.exec(place)?.[1] ?? []);
    expect([...new Set(octants)].sort()).toEqual(["0", "1", "2", "3", "4", "5", "6", "7"]);
  });
});
