import { describe, expect, it } from "vitest";
import type { Station } from "../src/radio/index.ts";
import { HJL, onRadial, situationOf, TXJ } from "./isles.ts";

const ESTIMATED: Station = { ...TXJ, declinationEstimated: true };
const cautionsOf = (station: Station) =>
  situationOf({ at: onRadial(TXJ, 246, 18), stations: [HJL, station], tune: TXJ.frequencyMhz }).cautions.join(
    " ",
  );

describe("the caution of an estimated declination", () => {
  it("stands for every station that gives a bearing", () => {
    for (const kind of ["VOR", "VOR-DME", "VORTAC"] as const)
      expect(cautionsOf({ ...ESTIMATED, kind })).toMatch(/TXJ: its declination is not in the source/);
    expect(cautionsOf(TXJ)).not.toMatch(/declination/);
  });

  it("does not stand for one that gives distance only: it has no radials", () => {
    for (const kind of ["DME", "TACAN"] as const)
      expect(cautionsOf({ ...ESTIMATED, kind })).not.toMatch(/declination|radials/);
  });
});
