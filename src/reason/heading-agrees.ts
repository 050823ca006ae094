/** Does the heading agree with the course, so that the needle points the way to turn? */

import { reciprocal, wrap180 } from "../earth/index.ts";
import { ledAstray } from "./astray.ts";
import { ORIENTATION } from "./fly.ts";
import type { Rule } from "./step.ts";
import { course3, wholeDegrees } from "./words.ts";

export const headingAgrees: Rule = ({ reading }) => {
  const { flag, settings, heading, reversed, station, needleSide } = reading;
  if (flag === "OFF" || station === null || station.kind === "VOT" || settings.face === "rmi") return null;
  // A card that turns with the heading cannot be read backwards: an HSI needs this step only when the pointer is set tail first.
  const apartDeg = Math.abs(wrap180(heading - settings.course));
  const numbers = { headingDeg: heading, courseDeg: settings.course, apartDeg };
  // Of a misled needle only that is said which its face does.
  const pointsRight = (ledAstray(reading)?.needleSide ?? needleSide) === needleSide;
  const parts = ["heading", "course", "needle"] as const;
  const title = `Heading ${course3(heading)}`;
  const compare = `Heading ${course3(heading)} lies ${wholeDegrees(apartDeg)} from course ${course3(settings.course)}`;
  if (!reversed) {
    if (needleSide === "centre") return null;
    return {
      rule: "heading-agrees",
      title,
      sentence: `${compare}, less than 90°: course and nose agree, so the ${pointsRight ? "line is on the needle's side" : "needle is not reversed"}.`,
      numbers,
      source: ORIENTATION,
      parts,
    };
  }
  if (settings.face === "hsi")
    return {
      rule: "heading-agrees",
      title: `${title}: pointer tail first`,
      sentence: `${compare}: the whole card turns with the nose, so the bar ${pointsRight ? "still lies where the line is" : "is not reversed"}; you are flying the line the other way.`,
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
