/**
 * `read` on every demo scene gives the answers worked by hand in demo-answers.ts; and those answers are themselves checked
 * by the second route of demo-by-hand.ts. The engine never supplies an expected value.
 *
 * Tolerances. Answers are written to a hundredth, so half of one, 0.005, is theirs; 0.001 more is left for the last figure.
 * The sphere differs from WGS 84 by up to 0.2 degree of azimuth and 0.6 % of distance at these latitudes: north-south
 * a minute of latitude is 1,843 m here and 1,852 m on the sphere.
 */

import { readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { ANSWER_ROWS, type Answer, aircraftIn, OFF_BY_SIGNAL, PEAKS, station } from "./demo-answers.ts";
import {
  apartDeg,
  clearanceFt,
  elevationDeg,
  horizonNm,
  needle,
  onEllipsoid,
  onSphere,
  publishedRadiusNm,
  radialOf,
  slantNm,
} from "./demo-by-hand.ts";
import { read } from "./demo-read.ts";

const HUNDREDTH = 0.006;
const SPHERE_DEG = 0.2;
const SPHERE_SHARE = 0.006;
const SCENES = "demo/scenes";
const NO_BEARING = ["overhead", "terrain", "below-horizon", "silent", "distance-only"];

const files = readdirSync(SCENES).sort();
const aircraft = (scene: string) => {
  const found = aircraftIn.get(scene);
  if (!found) throw new Error(`no aircraft in scene ${scene}`);
  return found;
};
const named = ANSWER_ROWS.map((row) => ({ ...row, of: `${row.scene} ${row.receiver}` }));

describe("the answers worked by hand", () => {
  it.each(named)("$of: radial, distance and DME by geographiclib and the sphere", (row) => {
    const from = station(row.station);
    const here = aircraft(row.scene);
    const exact = onEllipsoid(from.at, here.at);
    const sphere = onSphere(from.at, here.at);
    expect(Math.abs(exact.distanceNm - row.distanceNm)).toBeLessThan(HUNDREDTH);
    expect(Math.abs(sphere.distanceNm / exact.distanceNm - 1)).toBeLessThan(SPHERE_SHARE);
    if (row.dmeNm !== null) expect(Math.abs(slantNm(from, here) - row.dmeNm)).toBeLessThan(HUNDREDTH);
    // A test signal has no radials: see the answers.
    if (row.radialDeg === null || row.station === "PJT") return;
    expect(apartDeg(radialOf(from, here.at), row.radialDeg)).toBeLessThan(HUNDREDTH);
    expect(apartDeg(radialOf(from, here.at, onSphere), row.radialDeg)).toBeLessThan(SPHERE_DEG);
  });

  it.each(named.filter((row) => row.radialDeg !== null))("$of: needle and flag by sine and cosine", (row) => {
    const shown = needle(row.radialDeg ?? 0, row.courseDeg);
    expect(Math.abs(shown.deviationDeg - (row.deviationDeg ?? 99))).toBeLessThan(HUNDREDTH);
    expect(Math.abs(shown.dots - (row.dots ?? 99))).toBeLessThan(HUNDREDTH);
    expect(shown.flag).toBe(row.flag);
    const side = Math.abs(shown.deviationDeg) < 0.5 ? "centre" : shown.deviationDeg > 0 ? "right" : "left";
    expect(side).toBe(row.side);
    const against = apartDeg(aircraft(row.scene).headingDeg, row.courseDeg) > 90;
    expect(against && row.flag !== "OFF").toBe(row.reversed);
  });

  it.each(named)("$of: horizon, ground, cone and published volume", (row) => {
    const from = station(row.station);
    const here = aircraft(row.scene);
    const clear = clearanceFt(from, here, PEAKS);
    expect(row.distanceNm > horizonNm(from, here)).toBe(row.signal === "below-horizon");
    expect(clear < 0).toBe(row.signal === "terrain");
    expect(elevationDeg(from, here) > 40).toBe(row.signal === "overhead");
    const radiusNm = publishedRadiusNm(from, here);
    if (row.volume === "unknown") return;
    expect(row.volume).toBe(row.distanceNm <= (radiusNm ?? 0) ? "inside" : "outside");
  });

  it("cover every scene and every receiver in it", async () => {
    const readings = await read(files.map((name) => `${SCENES}/${name}`));
    const inFiles = readings.flatMap(({ receivers }, i) =>
      receivers.map(({ name }) => `${files[i]?.slice(0, 2)} ${name}`),
    );
    expect(named.map((row) => row.of)).toEqual(inFiles);
  });
});

describe("read on the demo scenes", () => {
  it.each(files)("%s", async (file) => {
    const scene = file.slice(0, 2);
    const [reading] = await read([`${SCENES}/${file}`]);
    const rows = ANSWER_ROWS.filter((row) => row.scene === scene);
    expect(reading?.receivers.length).toBe(rows.length);
    for (const [i, row] of rows.entries()) {
      const shown = reading?.receivers[i];
      if (!shown) throw new Error(`${file} has no ${row.receiver}`);
      const signal = OFF_BY_SIGNAL.get(scene);
      expect(shown.measured === null).toBe(signal === undefined);
      const rowShown = signal === undefined ? row : offBy(row, shown.radialDeg, signal);
      expect(shown).toMatchObject({
        name: row.receiver,
        station: rowShown.station,
        courseDeg: rowShown.courseDeg % 360,
        flag: rowShown.flag,
        needleSide: rowShown.side,
        fullScale: rowShown.dots === 5,
        reversed: rowShown.reversed,
        signal: rowShown.signal,
        reception: rowShown.signal === "good" || rowShown.signal === "overhead" ? "good" : "none",
        serviceVolume: rowShown.volume,
        ident: rowShown.ident,
      });
      near(shown.radialDeg, rowShown.radialDeg, "radial");
      near(shown.distanceNm, rowShown.distanceNm, "distance");
      near(shown.dmeNm, rowShown.dmeNm, "DME");
      near(shown.deviationDeg, rowShown.deviationDeg, "deviation");
      near(shown.needleDots, rowShown.dots, "dots");
      if (NO_BEARING.includes(rowShown.signal)) expect(shown.bearingToDeg).toBeNull();
      else near(shown.bearingToDeg, ((rowShown.radialDeg ?? 0) + 180) % 360, "bearing");
    }
  });

  /** The row with what must be shown for the radial that the signal gives, once that radial is where the hand has it. */
  function offBy(
    row: Answer,
    shownDeg: number | null,
    { offDeg, withinDeg }: { readonly offDeg: () => number; readonly withinDeg: number },
  ): Answer {
    if (row.radialDeg === null || shownDeg === null) throw new Error("no radial to be off from");
    expect(apartDeg(shownDeg, row.radialDeg + offDeg())).toBeLessThan(withinDeg);
    const { deviationDeg, dots, flag } = needle(shownDeg, row.courseDeg);
    const side = Math.abs(deviationDeg) < 0.5 ? "centre" : deviationDeg > 0 ? "right" : "left";
    return { ...row, radialDeg: shownDeg, deviationDeg, dots, flag, side };
  }

  function near(shown: number | null, expected: number | null, what: string): void {
    if (expected === null || shown === null) expect(shown, what).toBe(expected);
    else {
      const off =
        what === "radial" || what === "bearing" ? apartDeg(shown, expected) : Math.abs(shown - expected);
      expect(off, `${what} ${shown}, by hand ${expected}`).toBeLessThan(HUNDREDTH);
    }
  }
});
