/**
 * The VHF navigation band: 108.00 to 117.95 MHz on 50 kHz steps. Below 112 MHz the even tenths (and even tenth plus
 * 0.05) are VOR, the odd tenths (and odd tenth plus 0.05) localizers of the instrument landing system; from 112.00
 * up every channel is VOR: 160 VOR channels and 40 localizer channels.
 * Source: ICAO Annex 10 Vol V, 4.2; FAA AIM 1-1-3. Counting is in whole kilohertz, so that 109.3 is exactly 109300.
 */

const LOWEST_KHZ = 108_000;
const HIGHEST_KHZ = 117_950;
const STEP_KHZ = 50;
/** From here up every channel is VOR. */
const SHARED_BELOW_KHZ = 112_000;
/** A number this near to a whole kilohertz is meant to be it; the rest is binary rounding. */
const ROUNDING_KHZ = 0.001;

export type FrequencyService = "vor" | "localizer" | "not-a-channel" | "outside";

export interface ChannelVerdict {
  readonly service: FrequencyService;
  readonly frequencyMhz: number;
  /** One sentence for a person: what the frequency is, and what would be right. No full stop. */
  readonly explanation: string;
  /** The nearest VOR channels, lower first, MHz; the channel itself when it is one. */
  readonly nearestVorMhz: readonly number[];
}

/** Whole kilohertz, or null where the number lies between them. */
function wholeKhz(frequencyMhz: number): number | null {
  const khz = Math.round(frequencyMhz * 1000);
  return Math.abs(frequencyMhz * 1000 - khz) <= ROUNDING_KHZ ? khz : null;
}

const isVorKhz = (khz: number): boolean =>
  khz >= LOWEST_KHZ &&
  khz <= HIGHEST_KHZ &&
  khz % STEP_KHZ === 0 &&
  (khz >= SHARED_BELOW_KHZ || Math.floor(khz / 100) % 2 === 0);

/** The frequency on its 50 kHz step as the nearest number of MHz, so that channels compare with `===`. */
const mhzFromKhz = (khz: number): number => khz / 1000;

/**
 * What a VHF frequency (MHz) is used for: "vor", "localizer", "not-a-channel" (inside the band, off the 50 kHz steps)
 * or "outside" (not in 108.00..117.95). Throws RangeError on a number that is not finite.
 */
export function serviceOf(frequencyMhz: number): FrequencyService {
  if (!Number.isFinite(frequencyMhz))
    throw new RangeError(`a frequency must be a finite number of MHz, got ${frequencyMhz}`);
  const khz = wholeKhz(frequencyMhz);
  const nearest = frequencyMhz * 1000;
  if (nearest < LOWEST_KHZ - ROUNDING_KHZ || nearest > HIGHEST_KHZ + ROUNDING_KHZ) return "outside";
  if (khz === null || khz % STEP_KHZ !== 0) return "not-a-channel";
  return isVorKhz(khz) ? "vor" : "localizer";
}

/** Whether two frequencies (MHz) are the same channel, binary rounding aside. */
export const sameChannel = (oneMhz: number, otherMhz: number): boolean =>
  Math.abs(oneMhz - otherMhz) * 1000 <= ROUNDING_KHZ;

/** The nearest VOR channels at or below and at or above (MHz): one when the frequency is one or lies off the band. */
export function nearestVorChannels(frequencyMhz: number): number[] {
  if (!Number.isFinite(frequencyMhz))
    throw new RangeError(`a frequency must be a finite number of MHz, got ${frequencyMhz}`);
  const khz = frequencyMhz * 1000;
  if (khz <= LOWEST_KHZ) return [mhzFromKhz(LOWEST_KHZ)];
  if (khz >= HIGHEST_KHZ) return [mhzFromKhz(HIGHEST_KHZ)];
  let below = Math.floor((khz + ROUNDING_KHZ) / STEP_KHZ) * STEP_KHZ;
  let above = Math.ceil((khz - ROUNDING_KHZ) / STEP_KHZ) * STEP_KHZ;
  while (!isVorKhz(below)) below -= STEP_KHZ;
  while (!isVorKhz(above)) above += STEP_KHZ;
  return below === above ? [mhzFromKhz(below)] : [mhzFromKhz(below), mhzFromKhz(above)];
}

/** `serviceOf` with the sentence that says why, and the nearest VOR channels. */
export function explainFrequency(frequencyMhz: number): ChannelVerdict {
  const service = serviceOf(frequencyMhz);
  const nearestVorMhz = nearestVorChannels(frequencyMhz);
  const text = frequencyText(frequencyMhz);
  const nearest = nearestVorMhz.map(frequencyText).join(" and ");
  const near = nearestVorMhz.length === 1 ? `the nearest is ${nearest}` : `the nearest are ${nearest}`;
  const explanation = {
    vor: `${text} is a VOR channel`,
    localizer: `${text} is a localizer channel; VOR channels below 112 MHz have an even tenth, ${near}`,
    "not-a-channel": `${text} is not on the 50 kHz steps of the navigation band; of the VOR channels ${near}`,
    outside: `${text} is outside the navigation band, 108.00 to 117.95 MHz`,
  }[service];
  return { service, frequencyMhz, explanation, nearestVorMhz };
}

/** A frequency as the trade writes it: two decimals, `115.60`; more only where the number needs them. */
export function frequencyText(frequencyMhz: number): string {
  const twoDecimals = frequencyMhz.toFixed(2);
  return sameChannel(Number(twoDecimals), frequencyMhz)
    ? twoDecimals
    : String(Number(frequencyMhz.toFixed(6)));
}

export type FrequencyRead =
  | { readonly kind: "read"; readonly frequencyMhz: number }
  | { readonly kind: "unreadable"; readonly reason: string };

/**
 * A frequency in MHz out of what a person wrote: 115.6, "115.6", "115.60", "115.60 MHz". It need not be a channel
 * (see `explainFrequency`); it is unreadable only where it is no number of MHz at all.
 */
export function readFrequency(written: string | number): FrequencyRead {
  const text = String(written)
    .trim()
    .replace(/\s*mhz$/i, "");
  if (!/^\d{1,4}(\.\d{1,6})?$/.test(text))
    return {
      kind: "unreadable",
      reason: `"${written}" is not a frequency in MHz; write it with a point and two decimals, such as 115.60`,
    };
  const khz = wholeKhz(Number(text));
  return { kind: "read", frequencyMhz: khz === null ? Number(text) : mhzFromKhz(khz) };
}

/** Every VOR channel, lowest first, MHz. */
export const VOR_CHANNELS_MHZ: readonly number[] = channels().filter((mhz) => serviceOf(mhz) === "vor");
/** Every localizer channel, lowest first, MHz. */
export const LOCALIZER_CHANNELS_MHZ: readonly number[] = channels().filter(
  (mhz) => serviceOf(mhz) === "localizer",
);

function channels(): number[] {
  const count = (HIGHEST_KHZ - LOWEST_KHZ) / STEP_KHZ + 1;
  return Array.from({ length: count }, (_, index) => mhzFromKhz(LOWEST_KHZ + index * STEP_KHZ));
}
