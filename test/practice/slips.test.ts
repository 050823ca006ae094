/** The mistaken ideas: each replaces only what it names, each shows in some form, and any two can be told apart. */

import { describe, expect, it } from "vitest";
import { slipTables } from "../../bench/slip-tables.ts";
import { type Functions, functionsWith, SLIPS, TRUTH } from "../../src/practice/index.ts";
import { PRACTICE_ISLES } from "../practice-world.ts";

/** What each idea may replace, by the names of the reference functions. */
const REPLACES: Readonly<Record<string, readonly (keyof Functions)[]>> = {
  "radial-reads-inbound": ["radial", "readRadial", "lineOfPosition", "taskCourse"],
  "radial-is-heading": ["radial", "readRadial", "bearingTo"],
  "selector-is-radial": ["readRadial", "lineOfPosition"],
  "needle-points-at-station": ["needleDeg"],
  "flag-follows-nose": ["flag"],
  "needle-is-aircraft": ["side", "readRadial", "lineHand", "cutSide"],
  "page-left-right": ["side"],
  "needle-rules-always": ["lineHand"],
  "from-means-reversed": ["lineHand"],
  "degree-is-a-mile": ["offNm"],
  "dot-is-a-degree": ["readNeedleDeg"],
  "true-is-magnetic": ["radial", "plotTrue", "planHeading"],
  "variation-backwards": ["radial", "plotTrue", "planHeading"],
  "todays-variation-on-radial": ["radial"],
  "declination-on-compass": ["planHeading"],
  "receivers-crossed": ["boxes"],
  "slant-is-ground": ["groundNm", "slantNm"],
  "height-subtracted": ["groundNm", "slantNm"],
  "dme-rate-always": ["dmeSpeedIsGroundspeed"],
  "inbound-sets-radial": ["taskCourse"],
  "twists-cut-heading": ["selector"],
  "number-is-heading": ["cutHeading", "trackHeading", "nextCut"],
  "cut-mirrored": ["cutHeading"],
  "nose-on-station": ["cutHeading", "trackHeading"],
  "crab-downwind": ["trackHeading"],
  "wind-blows-toward": ["windFrom"],
  "keeps-whole-cut": ["nextCut"],
  "abeam-is-overhead": ["isOverhead"],
  "chases-in-cone": ["nearTurnDeg"],
  "twists-at-passage": ["courseAfter"],
  "clock-off-the-wing": ["minutesOut"],
  "reach-by-class": ["hears"],
  "dead-needle-trusted": ["onCourse"],
  "alive-means-right": ["usable"],
  "limits-crossed": ["checkLimitDeg"],
  "vot-reciprocal": ["testSignalCourse"],
  "late-changeover": ["handOverNm"],
  "hsi-reverses": ["hsiHand"],
  "head-is-radial": ["rmiRadial"],
  "selector-drives-rmi": ["rmiHead"],
};

describe("a slip", () => {
  it.each(SLIPS.map(({ id }) => id))("%s replaces the functions it names and no others", (id) => {
    const slip = SLIPS.find((one) => one.id === id);
    const patch = slip?.patch(TRUTH, () => TRUTH) ?? {};
    expect(Object.keys(patch).sort()).toEqual([...(REPLACES[id] ?? [])].sort());
  });

  it("is one of forty, and all of them are listed here", () => {
    expect(SLIPS).toHaveLength(40);
    expect(SLIPS.map(({ id }) => id).sort()).toEqual(Object.keys(REPLACES).sort());
  });

  it("replaces nothing in anybody else's functions", () => {
    const before = { ...TRUTH };
    for (const { patch } of SLIPS) functionsWith([patch]);
    expect(TRUTH).toEqual(before);
  });
});

describe("over the demo isles", () => {
  const { fires, parts } = slipTables(PRACTICE_ISLES, 200);

  it.each(fires)("$slip shows in four tenths of some form's problems", ({ share }) => {
    expect(share).toBeGreaterThanOrEqual(0.4);
  });

  it("tells every two of them apart in three tenths of some form's problems", () => {
    expect(parts).toHaveLength(780);
    expect(parts.filter(({ share }) => share < 0.3).map(({ slips }) => slips.join(" / "))).toEqual([]);
  });
});
