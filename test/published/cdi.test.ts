/** Published check values of the deviation indicator, row by row; each row names its own source (test/published/rows/cdi.json). */

import { expect } from "vitest";
import { FT_PER_NM, reciprocal, stationDeg } from "../../src/earth/index.ts";
import {
  courseForRadial,
  DEGREES_PER_DOT,
  FULL_SCALE_DEG,
  indicate,
  offCourseByDotsFt,
  offCourseNm,
  offCourseOneInSixtyNm,
} from "../../src/panel/index.ts";
import { checkRows, numberIn as num, type PublishedRow, type RowValues } from "./published-rows.ts";
import rows from "./rows/cdi.json" with { type: "json" };

/** What we say for a row, under the keys the row expects. */
function ours(row: PublishedRow): RowValues {
  const { inputs } = row;
  switch (row.what) {
    case "Distance off course from deflection": {
      const deviation = num(inputs, "deflection_fraction_of_full_scale") * FULL_SCALE_DEG;
      expect(num(inputs, "full_scale_deg")).toBe(FULL_SCALE_DEG);
      return { offset_nm: offCourseNm(num(inputs, "distance_nm"), deviation) };
    }
    case "Spacing of adjacent radials":
      return { offset_ft: offCourseNm(num(inputs, "distance_nm"), num(inputs, "degrees")) * FT_PER_NM };
    case "Distance off course, exact and by the two rules of thumb": {
      const distanceNm = num(inputs, "distance_nm");
      const dots = num(inputs, "dots");
      return {
        offset_exact_nm: offCourseNm(distanceNm, dots * DEGREES_PER_DOT),
        offset_one_in_sixty_nm: offCourseOneInSixtyNm(distanceNm, dots * DEGREES_PER_DOT),
        offset_200ft_rule_ft: offCourseByDotsFt(distanceNm, dots),
      };
    }
    case "What the indicator shows": {
      const shown = indicate(stationDeg(num(inputs, "radial_deg")), stationDeg(num(inputs, "obs_deg")));
      return {
        flag: shown.flag,
        needle: shown.needleSide ?? "none",
        deviation_deg: Math.abs(shown.deviationDeg ?? Number.NaN),
        dots_five_dot_face: shown.needleDots ?? Number.NaN,
        full_scale: shown.fullScale,
      };
    }
    case "Course to select so that the needle is corrected toward": {
      const radial = stationDeg(num(inputs, "radial_deg"));
      const course = courseForRadial(radial, inputs.direction === "inbound" ? "inbound" : "outbound");
      // Flown on that course the flag agrees: TO inbound, FROM outbound; so the needle is not reversed.
      const flag = indicate(radial, course).flag;
      return {
        obs_deg: course,
        correct_toward_needle: flag === (inputs.direction === "inbound" ? "TO" : "FROM"),
      };
    }
    case "Radial before and after the station": {
      // Straight over the station on one heading: the radial after is the reciprocal of the one before.
      return { radial_after_passage_deg: reciprocal(stationDeg(num(inputs, "radial_inbound_deg"))) };
    }
    default:
      throw new Error(`no check is written for "${row.what}"`);
  }
}

checkRows({ name: "cdi", rows, knownRows: 27, ours });
