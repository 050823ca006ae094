/**
 * Values as our files write them: directions in three digits, positions in degrees and minutes. What is written reads back to
 * within half of the last place: directions 0.05 degree, positions 0.0005 minute (1 m), speeds 0.05 kt, heights 0.05 ft.
 */

import { stringify } from "yaml";
import { type LatLon, latLonText, threeDigits, type Wind, wrap360 } from "../earth/index.ts";

/** `070`, `360` for north; with a tenth where it is not whole, `070.5`. Any finite number of degrees. */
export function directionText(deg: number): string {
  const tenths = Math.round(wrap360(deg) * 10) % 3600;
  if (tenths % 10 === 0) return threeDigits(tenths / 10);
  return (tenths / 10).toFixed(1).padStart(5, "0");
}

/** A plain number with at most so many decimals, never in powers of ten, never minus zero. */
export const numberText = (value: number, decimals: number): string =>
  String(Number(value.toFixed(decimals)) + 0);

/** `10°18.8′S 002°03.7′E`, with two or three decimals of a minute where one does not say it all. */
export function positionText(position: LatLon): string {
  const exact = latLonText(position, 3);
  const shorter = [1, 2].map((decimals) => latLonText(position, decimals));
  return shorter.find((text) => withThreeDecimals(text) === exact) ?? exact;
}

const withThreeDecimals = (text: string): string =>
  text.replace(/\.\d+/g, (fraction) => fraction.padEnd(4, "0"));

/** `140/18`; `calm` when the speed rounds to nothing. */
export const windText = ({ from, speedKt }: Wind): string =>
  numberText(speedKt, 1) === "0" ? "calm" : `${directionText(from)}/${numberText(speedKt, 1)}`;

/** `10W`, `7.63E`, `0`. Degrees east positive in. */
export function declinationText(declinationDeg: number): string {
  const degrees = numberText(Math.abs(declinationDeg), 4);
  return degrees === "0" ? "0" : `${degrees}${declinationDeg < 0 ? "W" : "E"}`;
}

/** One line of YAML for a text: plain where it reads back as itself, else in quotes. */
export const quotedIfNeeded = (text: string): string =>
  stringify(text, { lineWidth: 0, blockQuote: false }).replace(/\n$/, "");

/** Texts to this many characters stand on the line of their key. */
const LONGEST_LINE = 90;

/**
 * A text of any length as the value of a key at the left edge: on the key's line, or a folded block under it, whose last
 * line end is left to the caller.
 */
export function textValue(text: string): string {
  if (text.length <= LONGEST_LINE && !text.includes("\n")) return quotedIfNeeded(text);
  const pair = stringify({ key: text }, { lineWidth: 100, defaultStringType: "BLOCK_FOLDED" });
  const value = pair.slice("key: ".length).replace(/\n$/, "");
  // A block whose own last line end counts would take up blank lines that follow it in the file.
  return /^[>|]\d?-/.test(value) ? value : quotedIfNeeded(text);
}

/** A key and a text of any length, every line ended. */
export const textPair = (key: string, text: string): string => `${key}: ${textValue(text)}\n`;
