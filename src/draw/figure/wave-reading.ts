/** Whose waves the signal view shows, how far apart they are, and that in words. */

import { reciprocal, threeDigits } from "../../earth/index.ts";
import type { ReceiverReading } from "../../panel/index.ts";
import { isCovered, isReceiverCovered, type Situation } from "../../scene/index.ts";
import { markedCourse } from "./course-marks.tsx";

/** One turn of the pattern, milliseconds: 30 a second. */
export const TURN_MS = 1000 / 30;

/** How much later the variable wave comes, milliseconds in [0, 33.3), for a radial in degrees. */
export const lagMs = (radialDeg: number): number => (radialDeg / 360) * TURN_MS;

/** The receiver asked for, else the first that measures a bearing and is not covered; null when there is none. */
export function waveReading(situation: Situation, receiver?: string): ReceiverReading | null {
  const { covers } = situation.scene;
  const hears = situation.receivers.filter(
    ({ radial, settings }) => radial !== null && !isReceiverCovered(covers, settings.name),
  );
  return hears.find(({ settings }) => settings.name === receiver) ?? hears[0] ?? null;
}

/** The ident of the station whose waves these are; null when there is none, or it is covered. */
export function waveIdent(reading: ReceiverReading, covers: readonly string[]): string | null {
  const { name } = reading.settings;
  // The frequency names the station as the ident does.
  const hidden = isCovered(covers, name, "ident") || isCovered(covers, name, "frequency");
  return reading.station === null || hidden ? null : reading.station.ident;
}

/** The two waves in a sentence. `covers` are the scene's. */
export function wavesSentence(reading: ReceiverReading | null, covers: readonly string[] = []): string {
  if (reading === null || reading.radial === null)
    return "No receiver measures a bearing: there are no two waves to compare.";
  const ident = waveIdent(reading, covers);
  const from = ident === null ? "" : ` hears ${ident}`;
  const lag = `${Math.round(reading.radial)} degrees, ${lagMs(reading.radial).toFixed(1)} of ${TURN_MS.toFixed(1)} milliseconds`;
  return `${reading.settings.name}${from}: the variable wave comes ${lag}, after the reference. That is the radial.${courseSentence(reading, covers)}`;
}

function courseSentence(reading: ReceiverReading, covers: readonly string[]): string {
  const course = markedCourse(reading, covers);
  if (course === null) return "";
  const [from, to] = [threeDigits(course), threeDigits(reciprocal(course))];
  return ` On course ${from} the needle is centred where that is ${from}, FROM, or ${to}, TO.`;
}
