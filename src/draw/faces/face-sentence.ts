/**
 * A face in words, for a screen reader and for the text of a picture: "NAV1, 113.90, ident HJL heard. Course 256. FROM. Needle 2 dots
 * left, 4 degrees. DME 24.0." What is covered is said to be covered, and nothing more.
 */

import { threeDigits, turned } from "../../earth/index.ts";
import { DEGREES_PER_DOT, type IdentHeard, type ReceiverReading } from "../../panel/index.ts";
import { type CoverablePart, coveredParts, receiverCovered } from "./covers.ts";

/**
 * "2 dots left", "2½ dots right", "centred", "full left", or "parked": what stands under a face. A parked needle stands in the middle, and
 * only the flag tells it from a centred one: with the flag covered neither may the words. `covers` are the scene's.
 */
export function needleWords(reading: ReceiverReading, covers: readonly string[] = []): string {
  const { deviationDeg, needleSide, fullScale } = reading;
  if (deviationDeg === null || needleSide === null)
    return coveredParts(reading.settings.name, covers).has("flag") ? "centred" : "parked";
  if (needleSide === "centre") return "centred";
  if (fullScale) return `full ${needleSide}`;
  const wholeDeg = wholeDegrees(deviationDeg);
  const dots = Math.floor(wholeDeg / DEGREES_PER_DOT);
  const half = wholeDeg % DEGREES_PER_DOT === 1 ? "½" : "";
  const count = dots === 0 ? "½ dot" : `${dots}${half} ${dots === 1 && half === "" ? "dot" : "dots"}`;
  return `${count} ${needleSide}`;
}

/** As fine as the eye reads, which is half a dot; a needle off the middle is at least that much off it. */
const wholeDegrees = (deviationDeg: number): number => Math.max(1, Math.round(Math.abs(deviationDeg)));

/** The needle in a sentence without signs that a screen reader might skip. */
function needleSentence(reading: ReceiverReading, covered: ReadonlySet<CoverablePart>): string {
  const { deviationDeg, needleSide, fullScale } = reading;
  if (deviationDeg === null || needleSide === null)
    return covered.has("flag") ? "Needle centred." : "Needle parked, no signal.";
  if (needleSide === "centre") return "Needle centred.";
  if (fullScale) return `Needle full ${needleSide}, 10 degrees or more.`;
  const wholeDeg = wholeDegrees(deviationDeg);
  const dots = wholeDeg / DEGREES_PER_DOT;
  const dotWord = dots === 1 ? "dot" : "dots";
  return `Needle ${dots} ${dotWord} ${needleSide}, ${wholeDeg} ${wholeDeg === 1 ? "degree" : "degrees"}.`;
}

/** "ident HJL heard", "T-E-S-T heard", "no ident heard", ... */
export function identWords(ident: IdentHeard): string {
  switch (ident.kind) {
    case "ident":
      return `ident ${ident.text} heard`;
    case "test":
      return "T-E-S-T heard";
    case "test-signal":
      return "test signal heard";
    case "none":
      return "no ident heard";
    case "dme-only":
      return `DME ident ${ident.text} alone heard`;
    case "mixed":
      return `two idents heard, ${ident.texts[0]} and ${ident.texts[1]}`;
  }
}

/** What is heard, its letters left to be read from the code. */
const identUnread = (ident: IdentHeard): string =>
  ident.kind === "none" ? "no ident heard" : "a code is heard";

/** The sentence of one receiver's face. `covers` are the scene's. */
export function faceSentence(reading: ReceiverReading, covers: readonly string[] = []): string {
  const { name, face, frequencyMhz, course } = reading.settings;
  if (receiverCovered(name, covers)) return `${name}, covered.`;
  const covered = coveredParts(name, covers);
  const unless = (part: CoverablePart, what: string, sentence: string): string =>
    covered.has(part) ? `${what} covered.` : sentence;
  const tuned = covered.has("frequency") ? "frequency covered" : frequencyMhz.toFixed(2);
  // The letters would tell what is tuned.
  const ident = covered.has("frequency") ? identUnread(reading.ident) : identWords(reading.ident);
  const heard = covered.has("ident") ? "ident covered" : ident;
  const sentences = [`${name}, ${tuned}, ${heard}.`];
  if (face !== "cdi")
    sentences.push(unless("heading", "Heading", `Heading ${threeDigits(reading.heading)}.`));
  if (face === "rmi") sentences.push(pointerSentence(reading, covered));
  else
    sentences.push(
      unless("course", "Course", `Course ${threeDigits(course)}.`),
      unless("flag", "Flag", `${reading.flag}.`),
      unless("needle", "Needle", needleSentence(reading, covered)),
    );
  sentences.push(
    unless("dme", "DME", reading.dme === null ? "No DME." : `DME ${reading.dme.distanceNm.toFixed(1)}.`),
  );
  return sentences.join(" ");
}

/** Read on the card, as a pilot does: heading and the angle from the nose. Without a card the angle from the nose is left. */
function pointerSentence(reading: ReceiverReading, covered: ReadonlySet<CoverablePart>): string {
  if (covered.has("needle")) return "Pointer covered.";
  const relative = reading.rmiPointerRelativeDeg;
  if (relative === null) return "OFF. No pointer, no signal.";
  if (covered.has("heading")) return `Pointer head ${threeDigits(relative)} degrees right of the nose.`;
  const head = turned(reading.heading, relative);
  return `Pointer head ${threeDigits(head)}, tail ${threeDigits(turned(head, 180))}.`;
}
