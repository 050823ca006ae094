/** Published values of service volumes, line of sight and propagation; each row names its source (rows/*.json). */

import { describe, expect, test } from "vitest";
import { ftFromM, kmFromNm, nmFromKm } from "../../src/earth/index.ts";
import {
  EFFECTIVE_EARTH_RADIUS_NM,
  fieldMicrovoltPerM,
  freeSpaceLossDb,
  isServiceClass,
  leastHeightByRuleFt,
  lineOfSightByRuleNm,
  lineOfSightNm,
  MINIMUM_FIELD_MICROVOLT_PER_M,
  powerFluxDbwPerM2,
  radioHorizonNm,
  serviceRadiusNm,
} from "../../src/radio/index.ts";
import { checkRows, numberIn, type PublishedRow, type RowValues, textIn } from "./published-rows.ts";
import lineOfSight from "./rows/line-of-sight.json" with { type: "json" };
import propagation from "./rows/propagation.json" with { type: "json" };
import serviceVolumes from "./rows/service-volumes.json" with { type: "json" };

checkRows({ name: "service-volumes", rows: serviceVolumes, knownRows: 24, ours: volume });
checkRows({ name: "line-of-sight", rows: lineOfSight, knownRows: 14, ours: sight });
checkRows({ name: "propagation", rows: propagation, knownRows: 13, ours: propagated });

function volume({ inputs }: PublishedRow): RowValues {
  const serviceClass = textIn(inputs, "class");
  if (!isServiceClass(serviceClass)) throw new Error(`no class ${serviceClass}`);
  const radiusNm = serviceRadiusNm(serviceClass, numberIn(inputs, "altitude_ath_ft"));
  // The rows write null where the height lies in no band of the class; we say a radius of 0.
  return { radius_nm: radiusNm === 0 ? null : radiusNm };
}

function sight({ what, inputs }: PublishedRow): RowValues {
  if (what.startsWith("Least height"))
    return { receiver_height_ft: leastHeightByRuleFt(numberIn(inputs, "distance_nm"), 0) };
  // The published worked values and the rows named after it use the 1.23 rule.
  return {
    distance_nm: lineOfSightByRuleNm(
      numberIn(inputs, "receiver_height_ft"),
      numberIn(inputs, "station_height_ft"),
    ),
  };
}

function propagated({ what, inputs }: PublishedRow): RowValues {
  switch (what) {
    case "Field strength to power flux density":
      return { power_flux_dbw_per_m2: powerFluxDbwPerM2(numberIn(inputs, "field_uv_per_m")) };
    case "Free-space loss":
      return {
        loss_db: freeSpaceLossDb(numberIn(inputs, "mhz"), nmFromKm(numberIn(inputs, "distance_km"))),
      };
    case "Free-space field strength": {
      const field = fieldMicrovoltPerM(numberIn(inputs, "eirp_w"), numberIn(inputs, "distance_nm"));
      return { field_uv_per_m: field, power_flux_dbw_per_m2: powerFluxDbwPerM2(field) };
    }
    case "Radio horizon, 4/3 earth":
      return { distance_km: kmFromNm(radioHorizonNm(ftFromM(numberIn(inputs, "height_m")))) };
    case "Radio line of sight, 4/3 earth, both ends":
      return {
        distance_nm: lineOfSightNm(
          numberIn(inputs, "receiver_height_ft"),
          numberIn(inputs, "station_height_ft"),
        ),
      };
    default:
      throw new Error(`no check is written for "${what}"`);
  }
}

describe("published constants of propagation", () => {
  test("the free-space constant is 32.4478 dB for 1 MHz and 1 km (propagation-c001, ITU-R P.525)", () => {
    expect(Math.abs(freeSpaceLossDb(1, nmFromKm(1)) - 32.4478)).toBeLessThanOrEqual(0.0001);
  });

  test("the effective earth's radius is 8495 km (propagation-c004, US Federal Standard 1037C)", () => {
    expect(Math.abs(kmFromNm(EFFECTIVE_EARTH_RADIUS_NM) - 8495)).toBeLessThanOrEqual(1);
  });

  test("the horizon of one foot is 1.2287 NM away (propagation-c005, from the 4/3 earth)", () => {
    expect(Math.abs(radioHorizonNm(1) - 1.2287)).toBeLessThanOrEqual(0.001);
  });

  test("the least field in the coverage is 90 uV/m, -107 dB(W/m2) (vor-signal-c013, from memory)", () => {
    expect(MINIMUM_FIELD_MICROVOLT_PER_M).toBe(90);
    expect(Math.abs(powerFluxDbwPerM2(MINIMUM_FIELD_MICROVOLT_PER_M) + 107)).toBeLessThanOrEqual(0.5);
  });

  test("400 uV/m is -93.72 dB(W/m2), whatever Annex 10 prints for the glide path (propagation-c006)", () => {
    expect(Math.abs(powerFluxDbwPerM2(400) + 93.72)).toBeLessThanOrEqual(0.005);
  });
});
