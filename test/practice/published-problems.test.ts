/**
 * Published check values put to the reference functions that problems are worked by; each row names its own source.
 *
 * Without a form, and so not here: a check's age (receiver-checks t018 to t020), and speeds and leg times of a hold.
 */

import { describe, expect, it } from "vitest";
import {
  direct,
  fuelUsed,
  inverse,
  legDistanceNm,
  magneticDeg,
  reciprocal,
  stationDeg,
  trueDeg,
  turnBetween,
  wrap180,
  wrap360,
} from "../../src/earth/index.ts";
import { DEGREES_PER_DOT } from "../../src/panel/index.ts";
import { arcLeadNm } from "../../src/practice/dme-arc.ts";
import { panelShown } from "../../src/practice/functions.ts";
import {
  type Hold,
  holdingEntry,
  outboundCorrectionDeg,
  teardropHeading,
} from "../../src/practice/holding.ts";
import { type CheckPlace, type Clearance, TRUTH } from "../../src/practice/index.ts";
import { isServiceClass, serviceRadiusNm } from "../../src/radio/index.ts";
import {
  checkRows,
  numberIn as num,
  type PublishedRow,
  type RowValues,
  textIn as text,
} from "../published/published-rows.ts";
import cdiRows from "../published/rows/cdi.json" with { type: "json" };
import arcRows from "../published/rows/dme-arc.json" with { type: "json" };
import holdRows from "../published/rows/holding.json" with { type: "json" };
import interceptRows from "../published/rows/intercept-track.json" with { type: "json" };
import checkRowsOf from "../published/rows/receiver-checks.json" with { type: "json" };
import volumeRows from "../published/rows/service-volumes.json" with { type: "json" };
import timeRows from "../published/rows/time-distance.json" with { type: "json" };
import { factsOn } from "./published-facts.ts";

const PLACES: Readonly<Record<string, CheckPlace>> = {
  vot: "test signal",
  "surface-checkpoint": "ground",
  "airborne-checkpoint": "airborne",
  "airway-point": "airborne",
  "dual-vor": "two receivers",
};

function receiverCheck({ what, inputs }: PublishedRow): RowValues {
  switch (what) {
    case "Does the check pass": {
      const place = PLACES[text(inputs, "method")];
      if (place === undefined) throw new Error(`no place of check for ${inputs.method}`);
      return { pass: Math.abs(num(inputs, "error_deg")) <= TRUTH.checkLimitDeg(place) };
    }
    case "VOT: needle centred at this OBS": {
      const flag = text(inputs, "flag") === "TO" ? "TO" : "FROM";
      const errorDeg = wrap180(num(inputs, "obs_centred_deg") - TRUTH.testSignalCourse(flag));
      return { error_deg: errorDeg, pass: Math.abs(errorDeg) <= TRUTH.checkLimitDeg("test signal") };
    }
    case "VOT on a radio magnetic indicator":
      return { rmi_deg: TRUTH.rmiHead(factsOn(360, { courseDeg: num(inputs, "obs_deg") })) };
    default:
      throw new Error(`no check is written for "${what}"`);
  }
}

checkRows({
  name: "receiver checks as problems",
  rows: checkRowsOf,
  knownRows: 20,
  ours: receiverCheck,
  notChecked: {
    "receiver-checks-t018": "no form asks how old a check is",
    "receiver-checks-t019": "no form asks how old a check is",
    "receiver-checks-t020": "no form asks how old a check is",
  },
});

const offTheWing = (minutes: number, bearingChangeDeg: number): number =>
  TRUTH.minutesOut({ minutes, bearingChangeDeg, relativeBearingDeg: 90 });

/** How far abeam a station lies when its bearing changes by so much along a track square to the first bearing: found on the earth itself. */
function abeamNm(flownNm: number, changeDeg: number): number {
  const station = { latDeg: 0, lonDeg: 0 };
  let near = 0.1;
  let far = 200;
  for (let halving = 0; halving < 60; halving += 1) {
    const tried = (near + far) / 2;
    const start = direct(station, trueDeg(180), tried);
    const seen = inverse(direct(start, trueDeg(90), flownNm), station);
    const changed = seen.kind === "line" ? Math.abs(turnBetween(trueDeg(360), seen.azimuth)) : 180;
    if (changed > changeDeg) near = tried;
    else far = tried;
  }
  return near;
}

function timeCheck({ what, inputs }: PublishedRow): RowValues {
  const has = (key: string): boolean => inputs[key] !== undefined;
  const minutes = has("elapsed_min") ? num(inputs, "elapsed_min") : num(inputs, "elapsed_s") / 60;
  const turnedDeg = has("bearing_change_deg")
    ? num(inputs, "bearing_change_deg")
    : Math.abs(num(inputs, "second_radial_deg") - num(inputs, "first_radial_deg"));
  const timeMin = offTheWing(minutes, turnedDeg);
  if (what === "Rule of sixty against the exact no-wind triangle") {
    const groundspeedKt = num(inputs, "tas_kt");
    const exactNm = abeamNm(legDistanceNm({ groundspeedKt, timeMin: minutes }), turnedDeg);
    return {
      time_rule_min: timeMin,
      distance_rule_nm: legDistanceNm({ groundspeedKt, timeMin }),
      time_exact_min: (60 * exactNm) / groundspeedKt,
      distance_exact_nm: exactNm,
    };
  }
  return {
    time_min: timeMin,
    ...(has("tas_kt")
      ? { distance_nm: legDistanceNm({ groundspeedKt: num(inputs, "tas_kt"), timeMin }) }
      : {}),
    ...(has("fuel_gal_per_h")
      ? { fuel_gal: fuelUsed({ fuelPerHour: num(inputs, "fuel_gal_per_h"), timeMin }) }
      : {}),
    ...(has("heading_deg")
      ? {
          heading_is_abeam:
            Math.abs(
              wrap180(TRUTH.bearingTo(factsOn(num(inputs, "first_radial_deg"))) - num(inputs, "heading_deg")),
            ) === 90,
        }
      : {}),
  };
}

const BOW_DOUBLING = "doubling the angle off the nose has no form of its own";

checkRows({
  name: "time and distance as problems",
  rows: timeRows,
  knownRows: 12,
  ours: timeCheck,
  notChecked: {
    "time-distance-t011": BOW_DOUBLING,
    "time-distance-t013": BOW_DOUBLING,
    "time-distance-t014": BOW_DOUBLING,
  },
});

it("minutes by the change of bearing agree with the doubled angle off the nose within a problem's tenth", () => {
  for (const offNoseDeg of [10, 15, 20, 30]) {
    const given = { minutes: 8, bearingChangeDeg: offNoseDeg, relativeBearingDeg: offNoseDeg };
    expect(Math.abs(TRUTH.minutesOut(given) - 8)).toBeLessThan(0.8);
  }
});

/** The angle that the row's own rule takes: twice the difference, 20 to 90; the outbound example takes the difference itself. */
const cutOf = (offDeg: number): number => Math.min(90, Math.max(20, 2 * offDeg));

function interceptCheck({ what, inputs }: PublishedRow): RowValues {
  switch (what) {
    case "Intercept heading by the double-angle rule":
    case "Outbound intercept, tail of the needle": {
      const present = num(inputs, "present_radial_deg");
      const desired = num(inputs, "desired_radial_deg");
      const offDeg = Math.abs(wrap180(present - desired));
      const clearance: Clearance = {
        way: text(inputs, "direction") === "inbound" ? "inbound" : "outbound",
        radial: stationDeg(desired),
        cutDeg: what.startsWith("Outbound") ? offDeg : cutOf(offDeg),
      };
      const facts = factsOn(present);
      const heading = TRUTH.cutHeading(clearance, facts);
      const selected = TRUTH.selector(clearance, facts);
      return {
        heading_deg: heading,
        obs_deg: selected,
        intercept_angle_deg: Math.abs(wrap180(heading - selected)),
      };
    }
    case "Intercept an inbound bearing with ADF": {
      const bearing = num(inputs, "desired_bearing_deg");
      const relativeDeg = num(inputs, "relative_bearing_deg");
      // Flown parallel to the wanted bearing first: the pointer then tells the bearing to the station.
      const present = wrap360(bearing + relativeDeg + 180);
      const clearance: Clearance = {
        way: "inbound",
        radial: reciprocal(stationDeg(bearing)),
        cutDeg: cutOf(relativeDeg),
      };
      const heading = TRUTH.cutHeading(clearance, factsOn(present));
      return { heading_deg: heading, intercept_angle_deg: Math.abs(wrap180(heading - bearing)) };
    }
    case "Wind correction by trial, inbound on 350": {
      const course = num(inputs, "course_deg");
      const clearance: Clearance = {
        way: "inbound",
        radial: reciprocal(stationDeg(course)),
        cutDeg: num(inputs, "first_correction_deg"),
      };
      // The needle has moved right: two degrees to the left of the line.
      return { heading_deg: TRUTH.cutHeading(clearance, factsOn(wrap360(course + 180 + 2))) };
    }
    case "Wind correction by trial, second step": {
      const course = num(inputs, "course_deg");
      const cut = wrap180(num(inputs, "previous_heading_deg") - course);
      const heading = TRUTH.nextCut(
        { side: cut > 0 ? 1 : -1, deg: Math.abs(cut) },
        factsOn(wrap360(course + 180), { courseDeg: course }),
      );
      return { heading_deg: heading, correction_deg: Math.abs(wrap180(heading - course)) };
    }
    default:
      throw new Error(`no check is written for "${what}"`);
  }
}

checkRows({ name: "intercepts as problems", rows: interceptRows, knownRows: 8, ours: interceptCheck });

describe("published values: reach as a problem", () => {
  it.each(volumeRows.map((row) => [`${row.id} (${row.source})`, row] as const))("%s", (_, row) => {
    const { class: serviceClass, altitude_ath_ft: heightFt } = row.inputs;
    if (!isServiceClass(serviceClass)) throw new Error(`${serviceClass} is no class`);
    const classRadiusNm = serviceRadiusNm(serviceClass, heightFt);
    const hears = (distanceNm: number): boolean =>
      TRUTH.hears({ distanceNm, classRadiusNm, lineOfSightNm: 500, terrainClear: true });
    const radiusNm = row.expect.radius_nm;
    if (radiusNm === null) expect(hears(1)).toBe(false);
    else {
      expect(hears(radiusNm)).toBe(true);
      expect(hears(radiusNm + 0.1)).toBe(false);
    }
  });
});

describe("published values: the panel as a problem", () => {
  const rows = cdiRows as readonly PublishedRow[];
  const titled = (what: string) =>
    rows.filter((row) => row.what === what).map((row) => [`${row.id} (${row.source})`, row] as const);

  it.each(titled("What the indicator shows"))("%s", (_, { inputs, expect: said }) => {
    const shown = panelShown(
      factsOn(num(inputs, "radial_deg"), {
        courseDeg: num(inputs, "obs_deg"),
        headingDeg: inputs.heading_deg === undefined ? 360 : num(inputs, "heading_deg"),
      }),
    );
    expect(shown.flag).toBe(said.flag);
    const side = Math.abs(shown.needleDeg) < 1e-9 ? "centre" : shown.needleDeg > 0 ? "right" : "left";
    expect(side).toBe(said.needle);
    expect(Math.abs(shown.needleDeg) >= 10 - 1e-9).toBe(said.full_scale);
    if (said.dots_five_dot_face !== undefined)
      expect(Math.abs(shown.needleDeg) / DEGREES_PER_DOT).toBeCloseTo(num(said, "dots_five_dot_face"), 9);
    // And the learner's way back: from the panel to the radial, where the needle is not full.
    if (shown.flag !== "OFF" && said.full_scale === false)
      expect(
        Math.abs(
          wrap180(TRUTH.readRadial(shown, factsOn(num(inputs, "radial_deg"))) - num(inputs, "radial_deg")),
        ),
      ).toBeLessThan(1e-9);
  });

  it.each(titled("Course to select so that the needle is corrected toward"))(
    "%s",
    (_, { inputs, expect: said }) => {
      const radial = stationDeg(num(inputs, "radial_deg"));
      const way = text(inputs, "direction") === "inbound" ? "inbound" : "outbound";
      const selected = TRUTH.selector({ way, radial, cutDeg: 30 }, factsOn(radial));
      expect(Math.abs(wrap180(selected - num(said, "obs_deg")))).toBe(0);
    },
  );

  it.each(titled("Distance off course, exact and by the two rules of thumb"))(
    "%s",
    (_, { inputs, expect: said, tolerance }) => {
      const off = TRUTH.offNm(num(inputs, "distance_nm"), num(inputs, "dots") * DEGREES_PER_DOT);
      expect(Math.abs(off - num(said, "offset_one_in_sixty_nm"))).toBeLessThanOrEqual(
        num(tolerance, "offset_one_in_sixty_nm"),
      );
    },
  );

  it.each(titled("Radial before and after the station"))("%s", (_, { inputs, expect: said }) => {
    // Straight through: the course that led in leads out, on the radial of its own number.
    const course = TRUTH.courseAfter(stationDeg(num(inputs, "heading_deg")));
    expect(course).toBe(num(said, "radial_after_passage_deg"));
  });
});

function arcCheck({ what, inputs }: PublishedRow): RowValues {
  if (what.startsWith("Roll-out heading")) {
    // Turning onto the arc from an inbound course: square to it, toward the hand of the turn.
    const facts = factsOn(num(inputs, "radial_deg"));
    const turnDeg = num(inputs, "turn_deg") * (text(inputs, "turn") === "left" ? -1 : 1);
    return { heading_deg: wrap360(TRUTH.bearingTo(facts) + turnDeg) };
  }
  const arcNm = num(inputs, "arc_nm");
  if (inputs.turn_radius_nm !== undefined)
    return { lead_radials_90_turn: num(inputs, "turn_radius_nm") / TRUTH.offNm(arcNm, 1) };
  const leadNm = arcLeadNm(num(inputs, "groundspeed_kt"));
  return {
    lead_nm: leadNm,
    radials_per_nm: 1 / TRUTH.offNm(arcNm, 1),
    lead_radials: leadNm / TRUTH.offNm(arcNm, 1),
  };
}

const TABLE_ANGLE =
  "the table gives other leads for turns of more and of less than 90 degrees and does not say of how many";

checkRows({
  name: "arcs as problems",
  rows: arcRows,
  knownRows: 10,
  ours: arcCheck,
  notChecked: { "dme-arc-t008": TABLE_ANGLE, "dme-arc-t009": TABLE_ANGLE },
});

it.each([
  [10, 15],
  [7, 21],
])(
  "the turn of 90 degrees off the %i NM arc at a radius of 2.5 NM takes %i radials (P-1204, p. 76)",
  (arcNm, radials) => {
    expect(Math.abs(2.5 / TRUTH.offNm(arcNm, 1) - radials)).toBeLessThanOrEqual(0.5);
  },
);

function holdCheck({ what, inputs }: PublishedRow): RowValues {
  if (what === "Outbound wind correction")
    return {
      outbound_correction_deg_right: outboundCorrectionDeg(num(inputs, "inbound_correction_deg_right")),
    };
  const hold: Hold = {
    inboundCourse: magneticDeg(num(inputs, "inbound_course_deg")),
    turns: text(inputs, "turns") === "left" ? "left" : "right",
  };
  return what === "Entry for a heading at the fix"
    ? { entry: holdingEntry(magneticDeg(num(inputs, "heading_deg")), hold) }
    : { heading_deg: teardropHeading(hold) };
}

const SPEEDS = "no form asks for the speeds and leg times of a hold";

checkRows({
  name: "holds as problems",
  rows: holdRows,
  knownRows: 20,
  ours: holdCheck,
  notChecked: {
    "holding-t019": SPEEDS,
    "holding-t021": SPEEDS,
    "holding-t022": SPEEDS,
    "holding-t024": SPEEDS,
  },
});
