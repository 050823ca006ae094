/** Does the heading agree with the course, and what to do to fly it. */

import {
  headingForCourse,
  type MagneticDeg,
  magneticFromTrue,
  reciprocal,
  type StationDeg,
  trueFromStation,
  turnBetween,
  turned,
  wrap180,
} from "../earth/index.ts";
import type { Argument, Rule, Step } from "./step.ts";
import { course3, degrees, wholeDegrees } from "./words.ts";

const ORIENTATION = "FAA Instrument Flying Handbook, FAA-H-8083-15B, ch. 9, orientation and tracking";
/** The usual cut; wider when farther off, so that the line is met before the station. */
const USUAL_CUT_DEG = 30;
/** Off by less than this the bracket's first correction is enough (IFH ch. 9: 20 degrees). */
const BRACKET_WITHIN_DEG = 5;
const BRACKET_CUT_DEG = 20;
/** A cut of 90 degrees is the quickest way to the line; more would lead back. */
const WIDEST_CUT_DEG = 90;
const CORRECTION_WORTH_SAYING_DEG = 0.5;

export const headingAgrees: Rule = ({ reading }) => {
  const { flag, settings, heading, reversed, station, needleSide } = reading;
  if (flag === "OFF" || station === null || station.kind === "VOT" || settings.face === "rmi") return null;
  // A card that turns with the heading cannot be read backwards: an HSI needs this step only when the pointer is set tail first.
  const apartDeg = Math.abs(wrap180(heading - settings.course));
  const numbers = { headingDeg: heading, courseDeg: settings.course, apartDeg };
  const parts = ["heading", "course", "needle"] as const;
  const title = `Heading ${course3(heading)}`;
  const compare = `Heading ${course3(heading)} lies ${wholeDegrees(apartDeg)} from course ${course3(settings.course)}`;
  if (!reversed) {
    if (needleSide === "centre") return null;
    return {
      rule: "heading-agrees",
      title,
      sentence: `${compare}, less than 90°: course and nose agree, so the line is on the needle's side.`,
      numbers,
      source: ORIENTATION,
      parts,
    };
  }
  if (settings.face === "hsi")
    return {
      rule: "heading-agrees",
      title: `${title}: pointer tail first`,
      sentence: `${compare}: the whole card turns with the nose, so the bar still lies where the line is; you are flying the line the other way.`,
      numbers,
      source: "common practice",
      parts,
    };
  return {
    rule: "heading-agrees",
    title: `${title}: needle reversed`,
    sentence: `${compare}, more than 90°: the needle is backwards for the way you point; turn to ${course3(settings.course)}, or select ${course3(reciprocal(settings.course))} to fly this way.`,
    numbers,
    source: "FAA Instrument Flying Handbook, FAA-H-8083-15B, ch. 9, reverse sensing",
    parts,
  };
};

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
  return reading.needleSide === "centre" ? track(argument) : intercept(argument);
};

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
function intercept(argument: Argument): Step {
  const { reading } = argument;
  const { settings, deviationDeg, flag } = reading;
  const offDeg = Math.abs(deviationDeg ?? 0);
  const side = (deviationDeg ?? 0) > 0 ? 1 : -1;
  const cutDeg = cutFor(offDeg, flag === "TO");
  const wanted = turned(settings.course, side * cutDeg);
  const heading = byCompass(argument, wanted);
  const turnDeg = turnBetween(reading.heading, heading);
  const turn =
    Math.abs(turnDeg) < 3
      ? `Hold ${course3(heading)}`
      : `Turn ${turnDeg > 0 ? "right" : "left"} to ${course3(heading)}`;
  const held = holdingHeading(argument, settings.course);
  const then = held === null ? "" : `, then ${course3(held.heading)} to hold it`;
  return {
    rule: "fly",
    title: "To fly it",
    sentence: `${turn}, a ${cutDeg}° cut to the ${side > 0 ? "right" : "left"} of course ${course3(settings.course)}, until the needle ${reading.fullScale ? "comes alive and centres" : "centres"}${then}.`,
    numbers: { cutDeg, interceptHeadingDeg: heading, ...(held === null ? {} : { headingDeg: held.heading }) },
    source: ORIENTATION,
    parts: ["heading", "course", "needle"],
  };
}

/** RMI: the head of the pointer says the way to the station, whatever the selector. */
function homePointer(argument: Argument): Step | null {
  const { reading } = argument;
  if (reading.bearingTo === null || reading.station === null) return null;
  const held = holdingHeading(argument, reading.bearingTo);
  if (held === null) return null;
  return {
    rule: "fly",
    title: "To go there",
    sentence: `The pointer's head says ${course3(reading.bearingTo)} to ${reading.station.ident}: turn to ${course3(held.heading)}, the wind allowed for, and keep the head on ${course3(reading.bearingTo)}.`,
    numbers: { bearingToDeg: reading.bearingTo, headingDeg: held.heading },
    source: ORIENTATION,
    parts: ["heading", "needle", "wind"],
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
