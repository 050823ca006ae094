/**
 * Latitude and longitude as people write them. Read: decimal degrees (`-10.5, 2.06`), degrees, degrees and minutes, or
 * degrees, minutes and seconds with their letters before or after (`10°18.8′S 002°03.7′E`, `S10 18.8 E2 3.7`,
 * `10-18-48S 002-03-42E`), and the packed forms of a flight plan, `46N078W` and `4620N07805W` (ICAO Doc 4444, item 15),
 * or of an AIP, `462030N0780512W`. Written: degrees and decimal minutes, as on a chart.
 */

import { type LatLon, latLon, refuseBadPlace } from "./position.ts";

export type CoordinatesRead =
  | { readonly ok: true; readonly position: LatLon }
  /** `reason` is one sentence without a full stop; `part` is the piece of the text that it is about. */
  | { readonly ok: false; readonly reason: string; readonly part: string };

const EXAMPLES = "write it like 10°18.8′S 002°03.7′E or -10.313, 2.062";
/** The longest honest spelling is under 50 characters. */
const LONGEST = 80;

/** The position a text names, or one sentence why it names none. Longitude in [-180, 180); never throws. */
export function readLatLon(text: string): CoordinatesRead {
  if (text.length > LONGEST) {
    const part = `${text.slice(0, 24)}…`;
    return no(part, `a position of ${text.length} characters is too long; ${EXAMPLES}`);
  }
  const plain = plainMarks(text);
  if (plain === "") return no(text, `the position is empty; ${EXAMPLES}`);
  if (/[A-Z]/.test(plain.replace(/[NSEW]/g, "")))
    return no(text, `"${cited(text)}" is not a position; ${EXAMPLES}`);
  const letters = plain.match(/[NSEW]/g) ?? [];
  if (letters.length === 0) return readDecimals(text, plain);
  const named = letters.join("");
  if (/^[NS]{2}$/.test(named)) return no(text, `"${text.trim()}" names two latitudes and no longitude`);
  if (/^[EW]{2}$/.test(named)) return no(text, `"${text.trim()}" names two longitudes and no latitude`);
  if (!/^([NS][EW]|[EW][NS])$/.test(named))
    return no(text, `"${text.trim()}" needs one letter N or S and one letter E or W; ${EXAMPLES}`);
  return readLettered(text, plain);
}

/** `10°18.8′S 002°03.7′E`: minutes to so many decimals (0 to 6, one when not given; a tenth is 0.1 NM). Throws RangeError on a bad position. */
export function latLonText({ latDeg, lonDeg }: LatLon, minuteDecimals = 1): string {
  refuseBadPlace(latDeg, lonDeg);
  const lat = minutesText(latDeg, 2, minuteDecimals);
  const lon = minutesText(lonDeg, 3, minuteDecimals);
  return `${lat.text}${lat.below ? "S" : "N"} ${lon.text}${lon.below ? "W" : "E"}`;
}

function minutesText(deg: number, degreeDigits: number, minuteDecimals: number) {
  // Rounded as a whole number of the smallest unit first, so that 59.96 minutes carry into the degree.
  const unitsPerMinute = 10 ** minuteDecimals;
  const units = Math.round(Math.abs(deg) * 60 * unitsPerMinute);
  const degrees = Math.floor(units / (60 * unitsPerMinute));
  const minutes = ((units - degrees * 60 * unitsPerMinute) / unitsPerMinute).toFixed(minuteDecimals);
  const minuteWidth = minuteDecimals === 0 ? 2 : minuteDecimals + 3;
  return {
    text: `${String(degrees).padStart(degreeDigits, "0")}°${minutes.padStart(minuteWidth, "0")}′`,
    below: deg < 0 && units > 0,
  };
}

/** One spelling for each mark: ° ' " and an ASCII minus, capitals, single spaces. */
const plainMarks = (text: string): string =>
  text
    .replace(/[′’‘ʹ´`]/g, "'")
    .replace(/[″”“]|''/g, '"')
    .replace(/[º˚]/g, "°")
    .replace(/[−–]/g, "-")
    .toUpperCase()
    .replace(/\s+/g, " ")
    .trim();

function readDecimals(text: string, plain: string): CoordinatesRead {
  const parts = /^([+-]?\d+(?:\.\d+)?) ?°?(?: ?[,;] ?| )([+-]?\d+(?:\.\d+)?) ?°?$/.exec(plain);
  if (!parts) return no(text, `"${cited(text)}" is not a position; ${EXAMPLES}`);
  const [, lat = "", lon = ""] = parts;
  return inRange({ value: Number(lat), text: lat }, { value: Number(lon), text: lon });
}

function readLettered(text: string, plain: string): CoordinatesRead {
  const halves =
    /^(?<a>[NSEW])(?<first>[^NSEW]+?)(?: ?[,;])? ?(?<b>[NSEW])(?<second>[^NSEW]+)$/.exec(plain) ??
    /^(?<first>[^NSEW]+)(?<a>[NSEW])(?: ?[,;])? ?(?<second>[^NSEW]+)(?<b>[NSEW])$/.exec(plain);
  if (!halves?.groups)
    return no(
      text,
      `"${text.trim()}" must have its letters both before or both after the numbers; ${EXAMPLES}`,
    );
  const { a = "", b = "", first = "", second = "" } = halves.groups;
  const one = readAngle(first.trim(), a);
  if (!one.ok) return one;
  const two = readAngle(second.trim(), b);
  if (!two.ok) return two;
  return /[NS]/.test(a) ? inRange(one, two) : inRange(two, one);
}

type Angle = { readonly ok: true; readonly value: number; readonly text: string };

const NUMBER = String.raw`(\d+(?:\.\d+)?)`;
const AFTER_DEGREES = " ?(?:°|[ :-]) ?";
const AFTER_MINUTES = " ?(?:'|[ :-]) ?";
const SPELLINGS = [
  new RegExp(`^${NUMBER} ?°?$`),
  new RegExp(`^${NUMBER}${AFTER_DEGREES}${NUMBER} ?'?$`),
  new RegExp(`^${NUMBER}${AFTER_DEGREES}${NUMBER}${AFTER_MINUTES}${NUMBER} ?"?$`),
];
/** Degrees, minutes and seconds run together: two digits of degrees in a latitude, three in a longitude. */
const PACKED_LATITUDE = /^(\d{2})(\d{2})(\d{2})?(\.\d+)?$/;
const PACKED_LONGITUDE = /^(\d{3})(\d{2})(\d{2})?(\.\d+)?$/;

function readAngle(body: string, letter: string): Angle | Extract<CoordinatesRead, { ok: false }> {
  const text = `${body}${letter}`;
  if (/^[+-]/.test(body)) return no(text, `"${text}" has both a sign and a letter; keep one of them`);
  const packed = (/[NS]/.test(letter) ? PACKED_LATITUDE : PACKED_LONGITUDE).exec(body);
  const pieces = packed
    ? unpacked(packed)
    : SPELLINGS.map((form) => form.exec(body))
        .find(Boolean)
        ?.slice(1);
  if (!pieces) return no(text, `"${text}" is not degrees, minutes and seconds; ${EXAMPLES}`);
  if (pieces.slice(0, -1).some((piece) => piece.includes(".")))
    return no(text, `"${text}" has a fraction before its last number; only the last may have one`);
  const [degrees = 0, minutes = 0, seconds = 0] = pieces.map(Number);
  if (minutes >= 60) return no(text, `minutes ${pieces[1]} in "${text}" must be below 60`);
  if (seconds >= 60) return no(text, `seconds ${pieces[2]} in "${text}" must be below 60`);
  const value = degrees + minutes / 60 + seconds / 3600;
  return { ok: true, value: /[SW]/.test(letter) ? -value : value, text };
}

function unpacked([, degrees = "", minutes = "", seconds = "", fraction = ""]: readonly string[]): string[] {
  const pieces = seconds === "" ? [degrees, minutes] : [degrees, minutes, seconds];
  return [...pieces.slice(0, -1), `${pieces.at(-1)}${fraction}`];
}

function inRange(lat: Omit<Angle, "ok">, lon: Omit<Angle, "ok">): CoordinatesRead {
  if (Math.abs(lat.value) > 90) return no(lat.text, `latitude ${lat.text} lies outside 90 S to 90 N`);
  if (Math.abs(lon.value) > 180) return no(lon.text, `longitude ${lon.text} lies outside 180 W to 180 E`);
  return { ok: true, position: latLon(lat.value, lon.value) };
}

const no = (part: string, reason: string) => ({ ok: false as const, reason, part });

/** What was written, fit to stand in a sentence: control characters would break its line. */
const cited = (text: string): string => text.replace(/\p{C}/gu, " ").trim();
