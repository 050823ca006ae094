/** A guess at a needle beside where it stands: the side first, then the dots, to the nearest half as the eye reads them. */

import { coveredParts, needleWords } from "../../draw/index.ts";
import { DEGREES_PER_DOT, DOTS_EACH_SIDE, FULL_SCALE_DEG, type ReceiverReading } from "../../panel/index.ts";

/** Dots, right positive, as finely as the eye reads: half dots, and never centred unless it is; null without a signal. */
function shownDots({ deviationDeg, needleSide, fullScale }: ReceiverReading): number | null {
  if (deviationDeg === null || needleSide === null) return null;
  if (needleSide === "centre") return 0;
  const sign = needleSide === "left" ? -1 : 1;
  if (fullScale) return sign * DOTS_EACH_SIDE;
  // Whole degrees, as the words under a face count them.
  return (sign * Math.max(1, Math.round(Math.abs(deviationDeg)))) / DEGREES_PER_DOT;
}

/**
 * @param guessDots right positive, -5 to 5; null: no signal
 * @param covers the scene's: under a covered flag a parked needle passes for a centred one
 */
export function compareNeedle(
  reading: ReceiverReading,
  guessDots: number | null,
  covers: readonly string[],
): string {
  const truth = needleWords(reading, covers);
  const flagCovered = coveredParts(reading.settings.name, covers).has("flag");
  const dots = shownDots(reading) ?? (flagCovered ? 0 : null);
  if (dots === null)
    return guessDots === null
      ? "Right: there is no signal, and the needle rests in the middle."
      : "There is no signal: the needle rests in the middle and says nothing.";
  if (guessDots === null) return `There is a signal: the needle stands ${truth}.`;
  if (dots === guessDots) return `Right: ${truth}.`;
  if (dots === 0) return `It is centred; you were ${count(Math.abs(guessDots))} off.`;
  if (guessDots === 0) return `It is not centred: ${truth}.`;
  if (Math.sign(dots) !== Math.sign(guessDots))
    return dots === -guessDots
      ? `The right distance on the wrong side: ${truth}.`
      : `The wrong side: ${truth}.`;
  if (Math.abs(dots) >= DOTS_EACH_SIDE)
    return `The right side, but it stands at the stop: ${FULL_SCALE_DEG} degrees or more.`;
  const over = Math.abs(guessDots) - Math.abs(dots);
  if (Math.abs(guessDots) >= DOTS_EACH_SIDE) return `The right side, but not at the stop: ${truth}.`;
  return `The right side, ${count(Math.abs(over))} too ${over > 0 ? "many" : "few"}.`;
}

/** "1 dot", "half a dot", "2½ dots". */
function count(dots: number): string {
  if (dots === 0.5) return "half a dot";
  const whole = Math.floor(dots);
  return `${whole}${dots > whole ? "½" : ""} ${dots === 1 ? "dot" : "dots"}`;
}
