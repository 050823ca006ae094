import fc from "fast-check";
import geomagnetism from "geomagnetism";
import { afterEach, describe, expect, test, vi } from "vitest";
import { spread } from "../../test/spread.ts";
import { decimalYear, magneticModel, magneticModelAtYear, variation } from "./magnetism.ts";
import { latLon } from "./position.ts";
import { ftFromKm } from "./units.ts";

const haldrey = latLon(-10 - 20 / 60, 1 + 27 / 60);

/** WMM2020 test values: NOAA NCEI, WMM2020COF, README-WMM-COEFS.txt (read). Year, km, lat, lon, D, I, H. */
test.each([
  [2020.0, 66, 14, 143, 0.12, 13.08, 34916.9],
  [2020.0, 18, 0, 21, 1.05, -26.46, 29316.1],
  [2020.5, 6, -36, -137, 20.16, -52.21, 25511.4],
  [2020.5, 63, 26, 81, 0.43, 40.84, 34738.7],
])("WMM2020 at %d, %d km, %d, %d: variation %d, dip %d, %d nT", (year, km, lat, lon, decl, dip, h) => {
  const model = magneticModelAtYear(year);
  const field = model.field(latLon(lat, lon), ftFromKm(km));
  expect(model.name).toBe("WMM-2020");
  expect(Math.abs(field.variationDeg - decl)).toBeLessThanOrEqual(0.0051);
  expect(Math.abs(field.dipDeg - dip)).toBeLessThanOrEqual(0.0051);
  expect(Math.abs(field.horizontalNt - h)).toBeLessThanOrEqual(0.051);
});

describe("which model answers", () => {
  test.each([
    ["1959-05-01", "WMM-2015", false],
    ["2014-12-14", "WMM-2015", false],
    ["2014-12-15", "WMM-2015", true],
    ["2018-09-17", "WMM-2015", true],
    ["2018-09-18", "WMM-2015v2", true],
    ["2019-12-09", "WMM-2015v2", true],
    ["2019-12-10", "WMM-2020", true],
    ["2024-11-12", "WMM-2020", true],
    ["2024-11-13", "WMM-2025", true],
    ["2026-06-01", "WMM-2025", true],
    ["2029-12-31", "WMM-2025", true],
    ["2030-01-01", "WMM-2025", false],
    ["9999-12-31", "WMM-2025", false],
    ["0000-01-01", "WMM-2015", false],
  ])("%s: %s, inside its life %s", (date, name, dateInside) => {
    const answer = variation({ position: haldrey, altitudeFt: 1240, date });
    expect(answer.model).toMatchObject({ name, dateInside });
    expect(answer.model.validFrom <= date && date <= answer.model.validTo).toBe(dateInside);
    expect(Number.isFinite(answer.variationDeg)).toBe(true);
  });

  /** Uncertainty of variation, sqrt(0.26^2 + (5625 / H)^2) degrees: WMM2020 report, read in another program's notes. */
  test("the change of model moves variation by less than the models' own uncertainty", () => {
    for (const [before, after] of [
      ["2018-09-17", "2018-09-18"],
      ["2019-12-09", "2019-12-10"],
      ["2024-11-12", "2024-11-13"],
    ] as const) {
      const [a, b] = [before, after].map((date) => magneticModel(date).field(haldrey, 0));
      const uncertaintyDeg = Math.hypot(0.26, 5625 / a!.horizontalNt);
      expect(Math.abs(a!.variationDeg - b!.variationDeg)).toBeLessThan(uncertaintyDeg);
    }
  });

  test("outside every life the rate of the nearest model runs on", () => {
    const at = (date: string) => variation({ position: haldrey, altitudeFt: 0, date }).variationDeg;
    const yearly = at("2029-01-01") - at("2028-01-01");
    expect(at("2032-01-01") - at("2029-01-01")).toBeCloseTo(3 * yearly, 1);
  });
});

describe("the package behind it", () => {
  afterEach(() => vi.restoreAllMocks());

  test("gives the same on days inside the lives it counts", () => {
    for (const date of ["2015-03-01", "2018-11-05", "2021-07-01", "2026-07-01", "2029-11-01"]) {
      const { decl } = geomagnetism.model(new Date(`${date}T00:00:00Z`)).point([-10.5, 2, 1]);
      const ours = variation({ position: latLon(-10.5, 2), altitudeFt: ftFromKm(1), date });
      expect(ours.variationDeg).toBeCloseTo(decl, 6);
    }
  });

  test("says nothing on the console about dates outside", () => {
    const spies = (["log", "warn", "error"] as const).map((name) => vi.spyOn(console, name));
    variation({ position: haldrey, altitudeFt: 0, date: "2031-02-03" });
    variation({ position: haldrey, altitudeFt: 0, date: "1931-02-03" });
    for (const spy of spies) expect(spy).not.toHaveBeenCalled();
  });
});

describe("dates", () => {
  test.each([
    ["2026-01-01", 2026],
    ["2026-07-02", 2026 + 182 / 365],
    ["2024-07-01", 2024 + 182 / 366],
    ["2024-12-31", 2024 + 365 / 366],
    ["2100-12-31", 2100 + 364 / 365],
    ["2000-12-31", 2000 + 365 / 366],
  ])("%s is %d", (date, year) => {
    expect(decimalYear(date)).toBeCloseTo(year, 9);
  });

  test.each([
    "2026-02-30",
    "2026-13-01",
    "2026-00-10",
    "2025-02-29",
    "26-01-01",
    "2026-1-1",
    "",
    "today",
    "2026-01-01T10:00",
  ])('refuses "%s"', (date) => {
    expect(() => magneticModel(date)).toThrow(
      `a date must be a day of the calendar written YYYY-MM-DD, got "${date}"`,
    );
  });
});

describe("edges", () => {
  test("variation stays in (-180, 180] everywhere, poles included, and continuous across the antimeridian", () => {
    const model = magneticModel("2026-06-01");
    fc.assert(
      fc.property(spread(-90, 90), spread(-180, 180), (lat, lon) => {
        const { variationDeg, dipDeg } = model.field(latLon(lat, lon), 3000);
        expect(variationDeg > -180 && variationDeg <= 180 && Math.abs(dipDeg) <= 90).toBe(true);
        expect(Object.is(variationDeg, -0)).toBe(false);
      }),
    );
    for (const lat of [-90, 90])
      expect(Number.isFinite(model.field(latLon(lat, 0), 0).variationDeg)).toBe(true);
    const west = model.field(latLon(10, -180), 0).variationDeg;
    const east = model.field(latLon(10, 179.9999), 0).variationDeg;
    expect(Math.abs(west - east)).toBeLessThan(0.001);
  });

  test("the same question has the same answer whatever was asked between", () => {
    const ask = () => variation({ position: haldrey, altitudeFt: 500, date: "2026-06-01" });
    const first = ask();
    for (let day = 0; day < 200; day++) magneticModelAtYear(2020 + day / 365);
    expect(ask()).toEqual(first);
  });

  test.each([
    [{ latDeg: 91, lonDeg: 0 }, 0],
    [{ latDeg: Number.NaN, lonDeg: 0 }, 0],
    [{ latDeg: 0, lonDeg: 0 }, Number.NaN],
  ])("refuses %o at %d ft", (position, altitudeFt) => {
    expect(() => variation({ position, altitudeFt, date: "2026-06-01" })).toThrow(RangeError);
  });

  test("refuses no year", () => {
    expect(() => magneticModelAtYear(Number.NaN)).toThrow(/decimal year must be finite/);
  });
});
