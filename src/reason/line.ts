/** What line the selected course names, on which side of the station, and how far off it the aircraft is. */

import { reciprocal, type StationDeg, turnBetween } from "../earth/index.ts";
import {
  DEGREES_PER_DOT,
  type Flag,
  FULL_SCALE_DEG,
  type NeedleSide,
  offCourseNm,
  offCourseOneInSixtyNm,
  type ReceiverReading,
} from "../panel/index.ts";
import { ledAstray, type TruePlace } from "./astray.ts";
import type { Rule, Step } from "./step.ts";
import { apart, course3, degrees, dotsText, miles, wholeDegrees } from "./words.ts";

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
  const place = ledAstray(reading);
  if (place !== null && place.flag !== flag) return wrongFlag(reading, radial, place);
  const where = place?.radial ?? radial;
  const apartDeg = Math.abs(turnBetween(where, settings.course));
  const compare = compareRadial(where, settings.course);
  const numbers = { radialDeg: where, courseDeg: settings.course, apartDeg };
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
        sentence: `${compare}${apartDeg < LIES_ALONG_DEG ? "" : ", less than 90°"}: you are on the FROM side, where flying the course would take you away from the station.`,
        parts: ["flag", "from-side"],
      };
  }
};

/** Nearer than this a radial and a course are one, degrees. */
const LIES_ALONG_DEG = 0.05;

function compareRadial(where: StationDeg, course: StationDeg): string {
  const apartDeg = Math.abs(turnBetween(where, course));
  return apartDeg < LIES_ALONG_DEG
    ? `Radial ${course3(where)} lies along course ${course3(course)} itself`
    : `Radial ${course3(where)} lies ${wholeDegrees(apartDeg)} from course ${course3(course)}`;
}

const FLAG_SHOWS: Readonly<Record<Flag, string>> = {
  TO: "so the flag says TO",
  FROM: "so the flag says FROM",
  OFF: "so the flag is blank",
};
const PLACE_IS: Readonly<Record<Flag, string>> = {
  TO: "on the TO side",
  FROM: "on the FROM side",
  OFF: "abeam the station, where it should be blank",
};

/** Near abeam a misled receiver may show the flag of the other side. */
function wrongFlag({ settings, flag }: ReceiverReading, radial: StationDeg, place: TruePlace): Step {
  const [real, read] = apart(place.radial, radial);
  const apartDeg = Math.abs(turnBetween(place.radial, settings.course));
  const readApartDeg = Math.abs(turnBetween(radial, settings.course));
  return {
    rule: "to-from",
    title: flag === "OFF" ? "Blank, and wrong" : `${flag}, and wrong`,
    sentence: `The receiver's radial ${read} lies ${degrees(readApartDeg)} from course ${course3(settings.course)}, ${FLAG_SHOWS[flag]}; yours, ${real}, lies ${degrees(apartDeg)} from it, and you are ${PLACE_IS[place.flag]}.`,
    numbers: { radialDeg: place.radial, courseDeg: settings.course, apartDeg, readApartDeg },
    source: HANDBOOK_FLAG,
    parts: ["flag", "needle", "abeam"],
  };
}

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
  const place = ledAstray(reading);
  // Centred, and the line no farther off than the needle is wide, is true enough.
  if (place !== null && !(needleSide === "centre" && place.needleSide === "centre")) {
    const shown = fullScale
      ? `is at its ${needleSide} stop`
      : `stands ${wholeDegrees(deviationDeg)} ${needleSide}, at 2° a dot`;
    return {
      ...base,
      title: needleTitle(needleSide, needleDots, fullScale),
      numbers: { ...base.numbers, trueDeviationDeg: place.deviationDeg },
      sentence:
        needleSide === "centre"
          ? `The needle is centred, but it is ${degrees(place.astrayDeg)} astray: ${whereFrom(place, course)}.`
          : `The needle ${shown}, but it is ${degrees(place.astrayDeg)} astray: ${whereFrom(place, course)}.`,
      parts: ["needle", "course", "offset"],
    };
  }
  if (needleSide === "centre")
    return {
      ...base,
      title: needleTitle(needleSide, needleDots, fullScale),
      sentence: `The needle is centred: you are on the line of course ${course}.`,
      parts: ["needle", "course"],
    };
  const size = wholeDegrees(deviationDeg);
  const where = `facing ${course}, the line is on your ${needleSide}`;
  if (fullScale)
    return {
      ...base,
      title: needleTitle(needleSide, needleDots, fullScale),
      sentence: `You are ${size} from the line, and ${FULL_SCALE_DEG}° already drives the needle to its stop: ${where}, and the needle cannot say how far.`,
      parts: ["needle", "course", "offset"],
    };
  return {
    ...base,
    title: needleTitle(needleSide, needleDots, fullScale),
    sentence: `You are ${size} from the line at 2° a dot: ${where}.`,
    parts: ["needle", "course", "offset"],
  };
};

/** Where the line lies from the place as it is. */
const whereFrom = ({ needleSide, deviationDeg }: TruePlace, course: string): string =>
  needleSide === "centre"
    ? `you are on the line of course ${course}`
    : `you are ${degrees(deviationDeg)} from the line, and facing ${course} it is on your ${needleSide}`;

export const distance: Rule = ({ reading }) => {
  const { geometry, needleSide, settings, station } = reading;
  if (geometry === null || reading.deviationDeg === null || settings.face === "rmi") return null;
  if (station === null || station.kind === "VOT") return null;
  const place = ledAstray(reading);
  const { deviationDeg, fullScale } = place ?? { ...reading, deviationDeg: reading.deviationDeg };
  const onLine = (place?.needleSide ?? needleSide) === "centre";
  if (fullScale || (onLine && (needleSide === "centre" || reading.fullScale))) return null;
  const { distanceNm } = geometry;
  const shownNm = offCourseOneInSixtyNm(distanceNm, reading.deviationDeg);
  const offNm = offCourseNm(distanceNm, deviationDeg);
  const byRuleNm = offCourseOneInSixtyNm(distanceNm, deviationDeg);
  const base = {
    rule: "distance",
    numbers: { offCourseNm: offNm, offCourseOneInSixtyNm: byRuleNm, distanceNm },
    source: "one-in-sixty rule: general navigation texts",
    parts: ["offset", "dme"],
  } as const;
  const sum = "A degree is a mile at 60, so";
  const at = miles(distanceNm);
  if (onLine)
    return {
      ...base,
      title: "Not off the line",
      sentence: `${sum} ${degrees(reading.deviationDeg)} at ${at} would be about ${miles(shownNm)} off the line, were the needle right: you are on it.`,
    };
  // Said by the rule a pilot works in the air, so that the sum comes out; exact, the sine adds a twentieth.
  return {
    ...base,
    title: `${miles(byRuleNm)} off`,
    sentence: `${sum} ${place === null ? "" : "your "}${degrees(deviationDeg)} at ${at} ${place === null ? "is" : "are"} about ${miles(byRuleNm)} off the line${place === null ? "" : butNeedle(reading, miles(shownNm))}.`,
  };
};

/** What a pilot who trusts a misled needle would make of it. */
const butNeedle = ({ needleSide, fullScale }: ReceiverReading, shown: string): string =>
  fullScale
    ? ", though the needle is at its stop"
    : needleSide === "centre"
      ? ", though the needle says you are on it"
      : `, though by the needle it would be ${shown} to the ${needleSide}`;

const needleTitle = (side: NeedleSide, dots: number, fullScale: boolean): string =>
  side === "centre" ? "Centred" : fullScale ? `Full scale ${side}` : `${capital(dotsText(dots))} ${side}`;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
