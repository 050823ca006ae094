import { expect, test } from "vitest";
import { ftFromKm, latLon, magneticModelAtYear } from "../../src/earth/index.ts";
import { checkRows, solvedBy } from "./published-rows.ts";
import wmm2025Rows from "./rows/wmm2025.json" with { type: "json" };

checkRows({
  name: "wmm2025",
  rows: wmm2025Rows,
  knownRows: 67,
  ours: solvedBy({
    Declination: (i) => {
      const model = magneticModelAtYear(i.decimal_year!);
      const field = model.field(latLon(i.lat_deg!, i.lon_deg!), ftFromKm(i.height_km!));
      return {
        declination_deg: field.variationDeg,
        inclination_deg: field.dipDeg,
        horizontal_nt: field.horizontalNt,
      };
    },
  }),
});

test("wmm2025-c001 the model lives from 2025.0 to 2030.0 | NOAA NCEI / BGS, WMM2025 release", () => {
  for (const year of [2025, 2027.5, 2029.999]) {
    const { name, dateInside } = magneticModelAtYear(year);
    expect({ name, dateInside }).toEqual({ name: "WMM-2025", dateInside: true });
  }
  expect(magneticModelAtYear(2030).dateInside).toBe(false);
});
