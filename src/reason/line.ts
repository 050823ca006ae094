/** What line the selected course names, on which side of the station, and how far off it the aircraft is. */

import { reciprocal, turnBetween } from "../earth/index.ts";
import { DEGREES_PER_DOT, FULL_SCALE_DEG, offCourseNm, offCourseOneInSixtyNm } from "../panel/index.ts";
import type { Rule } from "./step.ts";
import { course3, dotsText, miles, wholeDegrees } from "./words.ts";

const HANDBOOK_FLAG = "FAA Instrument Flying Handbook, FAA-H-8083-15B, ch. 9, TO/FROM indicator";

export const line: Rule = ({ reading }) => {
  const { radial, station, settings } = reading;
  if (radial === null || station === null || station.kind === "VOT" || settings.face === "rmi") return null;
  const course = settings.course;
  return {
    rule: "line",
    title: "The line",
    sentence: `Course ${course3(course)} names one line through ${station.ident}: in along radial ${course3(reciprocal(course))}, out along radial ${course3(course)}.`,
    numbers: { courseDeg: course, inboundRadialDeg: reciprocal(course) },
    source: "FAA Instrument Flying Handbook, FAA-H-8083-15B, ch. 9",
    parts: ["course", "course-card", "station"],
  };
};

export const toOrFrom: Rule = ({ reading }) => {
  const { radial, station, settings, flag } = reading;
  if (radial === null || station === null || station.kind === "VOT" || settings.face === "rmi") return null;
  const apartDeg = Math.abs(turnBetween(radial, settings.course));
  const compare = `Radial ${course3(radial)} lies ${wholeDegrees(apartDeg)} from course ${course3(settings.course)}`;
  const numbers = { radialDeg: radial, courseDeg: settings.course, apartDeg };
  const common = { rule: "to-from", numbers, source: HANDBOOK_FLAG } as const;
  switch (flag) {
    case "OFF":
      return {
        ...common,
        title: "Neither TO nor FROM",
        sentence: `${compare}: you are abeam the station, where the course leads neither to it nor from it and the flag goes blank.`,
        parts: ["flag", "abeam"],
      };
    case "TO":
      return {
        ...common,
        title: "TO",
        sentence: `${compare}, more than 90°: you are on the TO side, where flying the course would take you to the station.`,
        parts: ["flag", "to-side"],
      };
    case "FROM":
      return {
        ...common,
        title: "FROM",
        sentence: `${compare}, less than 90°: you are on the FROM side, where flying the course would take you away from the station.`,
        parts: ["flag", "from-side"],
      };
  }
};

export const deviation: Rule = ({ reading }) => {
  const { radial, station, settings, deviationDeg, needleDots, needleSide, fullScale } = reading;
  if (radial === null || station === null || station.kind === "VOT" || settings.face === "rmi") return null;
  if (deviationDeg === null || needleDots === null || needleSide === null) return null;
  const course = course3(settings.course);
  const base = {
    rule: "deviation",
    numbers: { deviationDeg, needleDots, degreesPerDot: DEGREES_PER_DOT, fullScaleDeg: FULL_SCALE_DEG },
    source: "FAA knowledge-test items: five dots of 2°, full scale 10°",
  } as const;
  if (needleSide === "centre")
    return {
      ...base,
      title: "Centred",
      sentence: `The needle is centred: you are on the line of course ${course}.`,
      parts: ["needle", "course"],
    };
  const size = wholeDegrees(deviationDeg);
  const where = `facing ${course}, the line is on your ${needleSide}`;
  if (fullScale)
    return {
      ...base,
      title: `Full scale ${needleSide}`,
      sentence: `You are ${size} from the line, and ${FULL_SCALE_DEG}° already drives the needle to its stop: ${where}, and the needle cannot say how far.`,
      parts: ["needle", "course", "offset"],
    };
  return {
    ...base,
    title: `${capital(dotsText(needleDots))} ${needleSide}`,
    sentence: `You are ${size} from the line at 2° a dot: ${where}.`,
    parts: ["needle", "course", "offset"],
  };
};

export const distance: Rule = ({ reading }) => {
  const { geometry, deviationDeg, needleSide, settings, station } = reading;
  if (geometry === null || deviationDeg === null || needleSide === "centre" || settings.face === "rmi")
    return null;
  if (station === null || station.kind === "VOT" || reading.fullScale) return null;
  const offNm = offCourseNm(geometry.distanceNm, deviationDeg);
  const byRuleNm = offCourseOneInSixtyNm(geometry.distanceNm, deviationDeg);
  // Said by the rule a pilot works in the air, so that the sum comes out; exact, the sine adds a twentieth.
  return {
    rule: "distance",
    title: `${miles(byRuleNm)} off`,
    sentence: `A degree is a mile at 60, so ${wholeDegrees(deviationDeg)} at ${miles(geometry.distanceNm)} is about ${miles(byRuleNm)} off the line.`,
    numbers: { offCourseNm: offNm, offCourseOneInSixtyNm: byRuleNm, distanceNm: geometry.distanceNm },
    source: "one-in-sixty rule: general navigation texts",
    parts: ["offset", "dme"],
  };
};

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
