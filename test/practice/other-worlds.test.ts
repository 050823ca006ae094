/** Problems where there is no test signal, no high ground and another hemisphere: made all the same, with ghosts that resolve. */

import { describe, expect, it } from "vitest";
import { latLon } from "../../src/earth/index.ts";
import { FORMS, makeProblem, optionsOf, practiceWorld } from "../../src/practice/index.ts";
import { PRACTICE_ISLES } from "../practice-world.ts";

const { date, stations } = PRACTICE_ISLES;
const beacons = stations.filter(({ kind }) => kind !== "VOT");
const bare = practiceWorld({ name: "The isles, bare", date, stations: beacons, land: null });
const single = practiceWorld({
  name: "One VOR",
  date,
  stations: stations.filter(({ ident }) => ident === "OXK"),
  land: null,
});
// Far in the north-east, where the declinations have nothing to do with the compass.
const stale = practiceWorld({
  name: "The isles, elsewhere",
  date,
  stations: beacons.map((station) => ({
    ...station,
    position: latLon(station.position.latDeg + 60, station.position.lonDeg + 100),
  })),
  land: null,
});

describe("problems elsewhere", () => {
  it.each(FORMS.map((form) => form.id))("%s is set on bare isles, and its ghosts resolve", (id) => {
    const mode = FORMS.find((form) => form.id === id)?.modes[0] ?? "tell";
    for (let seed = 0; seed < 20; seed += 1) {
      const made = makeProblem(bare, id, mode, seed);
      if (made.kind === "none") throw new Error(made.says);
      for (const { answer } of optionsOf(made.problem).options) {
        const ghost = made.problem.case.ghost(answer);
        if (ghost === null) continue;
        expect(ghost.says).toMatch(/\.$/);
        expect(Number.isFinite(bare.resolve(ghost.scene).groundspeedKt)).toBe(true);
      }
    }
  });

  it("says so where a form needs DME or a second station and there is none", () => {
    for (const id of ["ground-range", "dme-speed-trust", "hand-over-point", "leg-log"] as const)
      expect(makeProblem(single, id, "tell", 1)).toMatchObject({ kind: "none" });
    expect(makeProblem(single, "can-use", "tell", 1).kind).toBe("problem");
  });

  it("sets no heading that is told from a course where the two norths are far apart", () => {
    for (const id of ["cut-heading", "next-cut"] as const)
      expect(makeProblem(stale, id, "tell", 1)).toMatchObject({ kind: "none" });
    // With both norths named it still can be asked.
    expect(makeProblem(stale, "track-heading", "tell", 1).kind).toBe("problem");
  });
});
