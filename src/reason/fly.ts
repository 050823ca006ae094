/** What to do to fly the line, argued from where the aircraft is, with what a misled needle would have the pilot do beside it. */

import {
  headingForCourse,
  type MagneticDeg,
  magneticFromTrue,
  reciprocal,
  type StationDeg,
  trueFromStation,
  turnBetween,
  turned,
} from "../earth/index.ts";
import { CENTRED_WITHIN_DEG, type Deviation } from "../panel/index.ts";
import { ledAstray, type TruePlace } from "./astray.ts";
import type { Argument, Rule, Step } from "./step.ts";
import { apart, course3, degrees } from "./words.ts";

export const ORIENTATION = "FAA Instrument Flying Handbook, FAA-H-8083-15B, ch. 9, orientation and tracking";
/** The usual cut; wider when farther off, so that the line is met before the station. */
const USUAL_CUT_DEG = 30;
/** Off by less than this the bracket's first correction is enough (IFH ch. 9: 20 degrees). */
const BRACKET_WITHIN_DEG = 5;
const BRACKET_CUT_DEG = 20;
/** A cut of 90 degrees is the quickest way to the line; more would lead back. */
const WIDEST_CUT_DEG = 90;
const CORRECTION_WORTH_SAYING_DEG = 0.5;
/** Headings nearer than this are one heading to a pilot. */
const SAME_WITHIN_DEG = 3;

export const fly: Rule = (argument) => {
  const { reading } = argument;
  const { station, settings, flag } = reading;
  if (station === null || station.kind === "VOT" || reading.radial === null) return null;
  // Nothing to fly: parked, or on a station that is not to be used.
  if (argument.situation.scene.aircraft.tasKt === 0 || reading.ident.kind !== "ident") return null;
  if (settings.face === "rmi") return homePointer(argument);
  if (flag === "OFF")
    return {
      rule: "fly",
      title: "To fly it",
      sentence: "Hold your heading until the flag settles, then ask the needle again.",
      numbers: {},
      source: "common practice",
      parts: ["heading", "flag"],
    };
  const place = ledAstray(reading);
  return place === null ? toTheLine(argument, reading) : fromTruePlace(argument, place);
};

const toTheLine = (argument: Argument, place: Deviation, until?: string): Step =>
  place.needleSide === "centre" ? track(argument) : intercept(argument, place, until);

/** What a misled pilot should fly, what he would fly by a needle that is all he sees, and how he finds out. */
function fromTruePlace(argument: Argument, place: TruePlace): Step {
  const { reading } = argument;
  const step = place.flag === "OFF" ? pastAbeam(argument) : toTheLine(argument, place, "you are on it");
  const wanted = headingToTheLine(argument, place);
  const byNeedle = headingToTheLine(argument, reading);
  if (byNeedle === null) return step;
  const alike =
    wanted !== null && place.flag !== "OFF" && Math.abs(turnBetween(wanted, byNeedle)) < SAME_WITHIN_DEG;
  if (alike && Math.abs(place.astrayDeg) < CENTRED_WITHIN_DEG) return step;
  return {
    ...step,
    sentence: `${step.sentence.slice(0, -1)}; ${
      alike
        ? `by the needle alone you would do the same, but check it`
        : `by the needle alone you would ${uncapital(turnTo(reading.heading, byNeedle))}, so before you follow it check it`
    } against ${checkOf(argument, place)}.`,
    numbers: { ...step.numbers, headingByNeedleDeg: byNeedle },
    source: `${step.source}; checking a doubtful needle: common practice`,
  };
}

/** Another receiver shows a receiver's own error, and hears the same bent signal. */
const checkOf = ({ reading }: Argument, place: TruePlace): string => {
  const ownDeg = Math.abs(reading.settings.bearingErrorDeg);
  return ownDeg > Math.abs(place.astrayDeg) / 2
    ? "a second receiver or a place you know"
    : "another station or a place you know";
};

const pastAbeam = ({ reading }: Argument): Step => ({
  rule: "fly",
  title: "To fly it",
  sentence: "You are abeam the station, whatever the flag says: hold your heading until you are past it.",
  numbers: { headingDeg: reading.heading },
  source: "common practice",
  parts: ["heading", "flag"],
});

/** The heading by compass that goes to this line, or holds it; null where the wind is too strong. */
function headingToTheLine(argument: Argument, place: Deviation): MagneticDeg | null {
  if (place.needleSide !== "centre") return cutTo(argument, place).heading;
  return holdingHeading(argument, argument.reading.settings.course)?.heading ?? null;
}

/** "Turn right to 264"; "Hold 246" where it is flown already. */
function turnTo(from: MagneticDeg, heading: MagneticDeg): string {
  const turnDeg = turnBetween(from, heading);
  return Math.abs(turnDeg) < SAME_WITHIN_DEG
    ? `Hold ${course3(heading)}`
    : `Turn ${turnDeg > 0 ? "right" : "left"} to ${course3(heading)}`;
}

const uncapital = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

interface Cut {
  readonly cutDeg: number;
  readonly side: 1 | -1;
  readonly heading: MagneticDeg;
}

function cutTo(argument: Argument, { deviationDeg, flag }: Deviation): Cut {
  const side = (deviationDeg ?? 0) > 0 ? 1 : -1;
  const cutDeg = cutFor(Math.abs(deviationDeg ?? 0), flag === "TO");
  const heading = byCompass(argument, turned(argument.reading.settings.course, side * cutDeg));
  return { cutDeg, side, heading };
}

/** On the line: the heading that holds it in this wind. */
function track({ situation, reading }: Argument): Step {
  const held = holdingHeading({ situation, reading }, reading.settings.course);
  const base = { rule: "fly", title: "To fly it", source: ORIENTATION } as const;
  if (held === null)
    return {
      ...base,
      sentence: "The wind is too strong to hold this course at this airspeed.",
      numbers: {},
      parts: ["wind", "heading"],
    };
  const { heading, correctionDeg } = held;
  const lean =
    Math.abs(correctionDeg) < CORRECTION_WORTH_SAYING_DEG
      ? "the wind asks for no correction"
      : `${degrees(correctionDeg)} ${correctionDeg > 0 ? "right" : "left"}, into the wind`;
  return {
    ...base,
    sentence: `Fly heading ${course3(heading)} to hold the line: ${lean}.`,
    numbers: { headingDeg: heading, windCorrectionDeg: correctionDeg },
    parts: ["heading", "wind", "course"],
  };
}

/** Off the line: a cut toward it, wider than the degrees off when inbound, so that the line is met before the station. */
function intercept(
  argument: Argument,
  place: Deviation,
  until = `the needle ${place.fullScale ? "comes alive and centres" : "centres"}`,
): Step {
  const { reading } = argument;
  const { settings } = reading;
  const { cutDeg, side, heading } = cutTo(argument, place);
  const turn = turnTo(reading.heading, heading);
  const held = holdingHeading(argument, settings.course);
  const then = held === null ? "" : `, then ${course3(held.heading)} to hold it`;
  return {
    rule: "fly",
    title: "To fly it",
    sentence: `${turn}, a ${cutDeg}° cut to the ${side > 0 ? "right" : "left"} of course ${course3(settings.course)}, until ${until}${then}.`,
    numbers: { cutDeg, interceptHeadingDeg: heading, ...(held === null ? {} : { headingDeg: held.heading }) },
    source: ORIENTATION,
    parts: ["heading", "course", "needle"],
  };
}

/** RMI: the head of the pointer says the way to the station, whatever the selector. */
function homePointer(argument: Argument): Step | null {
  const { reading } = argument;
  const { bearingTo, station } = reading;
  if (bearingTo === null || station === null) return null;
  const place = ledAstray(reading);
  const held = holdingHeading(argument, place === null ? bearingTo : reciprocal(place.radial));
  if (held === null) return null;
  const base = { rule: "fly", title: "To go there", parts: ["heading", "needle", "wind"] } as const;
  if (place === null)
    return {
      ...base,
      sentence: `The pointer's head says ${course3(bearingTo)} to ${station.ident}: turn to ${course3(held.heading)}, the wind allowed for, and keep the head on ${course3(bearingTo)}.`,
      numbers: { bearingToDeg: bearingTo, headingDeg: held.heading },
      source: ORIENTATION,
    };
  const [real, read] = apart(reciprocal(place.radial), bearingTo);
  return {
    ...base,
    sentence: `${station.ident} lies ${real} from you: turn to ${course3(held.heading)}, the wind allowed for; the pointer's head says ${read}, so before you follow it check it against ${checkOf(argument, place)}.`,
    numbers: { bearingToDeg: reciprocal(place.radial), bearingReadDeg: bearingTo, headingDeg: held.heading },
    source: `${ORIENTATION}; checking a doubtful needle: common practice`,
  };
}

/** Degrees of cut, a multiple of 5. Inbound it must exceed the degrees off; 90 at the most. */
export function cutFor(offDeg: number, inbound: boolean): number {
  if (offDeg <= BRACKET_WITHIN_DEG) return BRACKET_CUT_DEG;
  const least = inbound ? offDeg + 15 : USUAL_CUT_DEG;
  return Math.min(WIDEST_CUT_DEG, Math.max(USUAL_CUT_DEG, Math.ceil(least / 5) * 5));
}

/** A direction from the station's north as the compass at the aircraft shows it. */
function byCompass({ situation, reading }: Argument, direction: StationDeg): MagneticDeg {
  const declinationDeg = reading.station?.declinationDeg ?? situation.variationDeg;
  return magneticFromTrue(trueFromStation(direction, declinationDeg), situation.variationDeg);
}

function holdingHeading(
  argument: Argument,
  course: StationDeg,
): { heading: MagneticDeg; correctionDeg: number } | null {
  const { situation, reading } = argument;
  const declinationDeg = reading.station?.declinationDeg ?? situation.variationDeg;
  const held = headingForCourse({
    course: trueFromStation(course, declinationDeg),
    tasKt: situation.scene.aircraft.tasKt,
    wind: situation.scene.wind,
  });
  if (held.kind !== "held") return null;
  return {
    heading: magneticFromTrue(held.heading, situation.variationDeg),
    correctionDeg: held.correctionDeg,
  };
}
