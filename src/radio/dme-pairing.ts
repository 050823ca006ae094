/**
 * DME channels 1X to 126Y: their ultra-high interrogation and reply frequencies, pulse spacings, and the VHF
 * frequency each is paired with, so that the pilot tunes one number and gets both parts of a station.
 * Source: ICAO Annex 10 Vol I, chapter 3, Table A; 14 CFR 171.311 Table 1b.
 */

import { type FrequencyService, serviceOf } from "./channel-plan.ts";

export type DmeMode = "X" | "Y";

export interface DmeChannel {
  /** 1 to 126. */
  readonly number: number;
  readonly mode: DmeMode;
  /** As the trade writes it: `86X`, no leading zero. */
  readonly text: string;
  /** The aircraft asks on this frequency. */
  readonly interrogationMhz: number;
  /** The ground answers on this one, 63 MHz away. */
  readonly replyMhz: number;
  readonly interrogationSpacingUs: number;
  readonly replySpacingUs: number;
  /** The VOR or localizer frequency it belongs to, MHz; null for channels 1 to 16 and 60 to 69. */
  readonly vhfMhz: number | null;
  readonly service: Extract<FrequencyService, "vor" | "localizer"> | null;
}

export type DmeChannelRead =
  | { readonly kind: "read"; readonly channel: DmeChannel }
  | { readonly kind: "unreadable"; readonly reason: string };

/** Interrogation and reply lie this far apart on every channel. */
const SPLIT_MHZ = 63;

/** The VHF partner in kHz; null where the table has none. */
function vhfKhz(number: number, mode: DmeMode): number | null {
  const yOffset = mode === "Y" ? 50 : 0;
  if (number >= 17 && number <= 59) return 108_000 + 100 * (number - 17) + yOffset;
  if (number >= 70) return 112_300 + 100 * (number - 70) + yOffset;
  return null;
}

/** The channel of that number and mode. Throws RangeError for a number that is not a whole one of 1..126. */
export function dmeChannel(number: number, mode: DmeMode): DmeChannel {
  if (!Number.isInteger(number) || number < 1 || number > 126)
    throw new RangeError(`a DME channel number is a whole number from 1 to 126, got ${number}`);
  const interrogationMhz = 1024 + number;
  const repliesBelow = number <= 63 === (mode === "X");
  const khz = vhfKhz(number, mode);
  const service = khz === null ? null : serviceOf(khz / 1000);
  return {
    number,
    mode,
    text: `${number}${mode}`,
    interrogationMhz,
    replyMhz: interrogationMhz + (repliesBelow ? -SPLIT_MHZ : SPLIT_MHZ),
    interrogationSpacingUs: mode === "X" ? 12 : 36,
    replySpacingUs: mode === "X" ? 12 : 30,
    vhfMhz: khz === null ? null : khz / 1000,
    service: service === "vor" || service === "localizer" ? service : null,
  };
}

/** A channel out of what a person or a table wrote: `86X`, `086X`, `86 x`. */
export function readDmeChannel(text: string): DmeChannelRead {
  const found = /^\s*(\d{1,3})\s*([XYxy])\s*$/.exec(text);
  const number = Number(found?.[1]);
  if (!found || number < 1 || number > 126)
    return {
      kind: "unreadable",
      reason: `"${text}" is not a DME channel; it is a number from 1 to 126 with X or Y, such as 86X`,
    };
  return { kind: "read", channel: dmeChannel(number, found[2]?.toUpperCase() === "Y" ? "Y" : "X") };
}

/** The channel paired with a VOR or localizer frequency (MHz); null where the frequency is no channel of the band. */
export function pairedDmeChannel(vhfMhz: number): DmeChannel | null {
  const service = serviceOf(vhfMhz);
  if (service !== "vor" && service !== "localizer") return null;
  const khz = Math.round(vhfMhz * 1000);
  const mode: DmeMode = khz % 100 === 50 ? "Y" : "X";
  const tenths = Math.floor(khz / 100);
  // Ten channel numbers, 60 to 69, are left out between 112.25 and 112.30.
  return dmeChannel(tenths <= 1122 ? tenths - 1080 + 17 : tenths - 1123 + 70, mode);
}
