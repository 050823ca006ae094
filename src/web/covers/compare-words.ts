/** A guess in a person's own words beside the truth: a distance, a frequency and an ident can be told right from wrong, a view cannot. */

import type { ReceiverReading } from "../../panel/index.ts";
import { frequencyText } from "../../radio/index.ts";
import { miles } from "../../reason/index.ts";
import type { CoverTarget, Situation } from "../../scene/index.ts";

/** The DME shows tenths: a guess this near reads the same to a person, NM. Our judgement. */
const SAME_DISTANCE_WITHIN_NM = 0.5;
/** Half of the narrowest channel spacing, 50 kHz (ICAO Annex 10 Vol V, ch. 4), MHz. */
const SAME_CHANNEL_WITHIN_MHZ = 0.025;

const LOOK = "Look what has come to light, and read the reasons.";

export function compareWords(situation: Situation, target: CoverTarget, text: string): string {
  if (target.kind !== "receiver" || target.part === null) return LOOK;
  const reading = situation.receivers.find(({ settings }) => settings.name === target.receiver);
  if (reading === undefined) return LOOK;
  switch (target.part) {
    case "dme":
      return compareDistance(reading, numberIn(text));
    case "frequency":
      return compareFrequency(reading, numberIn(text));
    case "ident":
      return compareIdent(reading, text);
    default:
      return LOOK;
  }
}

/** The first number in a text; null without one. */
function numberIn(text: string): number | null {
  const found = /\d+(?:[.,]\d+)?/.exec(text)?.[0];
  return found === undefined ? null : Number(found.replace(",", "."));
}

function compareDistance({ dme }: ReceiverReading, guessNm: number | null): string {
  if (dme === null) return "It shows no distance.";
  if (guessNm === null) return `It shows ${miles(dme.distanceNm)}.`;
  const overNm = guessNm - dme.distanceNm;
  if (Math.abs(overNm) <= SAME_DISTANCE_WITHIN_NM) return `Right: ${miles(dme.distanceNm)}.`;
  return `${miles(Math.abs(overNm))} too ${overNm > 0 ? "far" : "near"}: it shows ${miles(dme.distanceNm)}.`;
}

function compareFrequency({ settings }: ReceiverReading, guessMhz: number | null): string {
  const truth = frequencyText(settings.frequencyMhz);
  if (guessMhz === null) return `It is ${truth}.`;
  const same = Math.abs(guessMhz - settings.frequencyMhz) < SAME_CHANNEL_WITHIN_MHZ;
  return same ? `Right: ${truth}.` : `It is ${truth}; you said ${guessMhz.toFixed(2)}.`;
}

function compareIdent({ ident }: ReceiverReading, text: string): string {
  const said = text.toUpperCase().split(/[^A-Z0-9]+/);
  const heard = ident.kind === "mixed" ? ident.texts : "text" in ident ? [ident.text] : [];
  const letters = heard.join(" and ");
  if (heard.length === 0)
    return ident.kind === "test" ? "What is heard is T-E-S-T: it is on test." : "No ident is heard.";
  if (heard.every((each) => said.includes(each))) return `Right: ${letters}.`;
  if (heard.some((each) => said.includes(each))) return `Half of it: ${letters} are heard together.`;
  return `It is ${letters}.`;
}
