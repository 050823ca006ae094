/** What a person types into a dial: the number, or one sentence that says what would be right. */

/** A direction in three digits; "0" and "000" mean 360. */
export function readDirection(what: string, text: string): number | string {
  const deg = /^\d{1,3}$/.test(text) ? Number(text) : Number.NaN;
  if (deg >= 0 && deg <= 360) return deg;
  return `${text === "" ? "nothing" : `“${text}”`} is not a ${what}: three digits, 001 to 360`;
}

/** Three digits are a whole direction. */
export const wholeDirection = (text: string): boolean => /^\d{3}$/.test(text);

/** An altitude in feet, with or without a comma, in the range given. */
export function readAltitude(text: string, lowestFt: number, highestFt: number): number | string {
  const plain = text.replace(/[\s,]/g, "").replace(/ft$/i, "");
  const feet = /^\d{1,5}$/.test(plain) ? Number(plain) : Number.NaN;
  if (feet >= lowestFt && feet <= highestFt) return feet;
  return `${text === "" ? "nothing" : `“${text}”`} is not an altitude here: ${lowestFt} to ${inThousands(highestFt)} ft`;
}

/** A number in its limits, with a point or a comma; `right` says what would be. */
export function readWithin(
  text: string,
  { min, max, right }: { readonly min: number; readonly max: number; readonly right: string },
): number | string {
  const plain = text.replace(/\s/g, "").replace(",", ".");
  const value = /^(\d+(\.\d*)?|\.\d+)$/.test(plain) ? Number(plain) : Number.NaN;
  if (value >= min && value <= max) return value;
  return `${text === "" ? "nothing" : `“${text}”`} will not do: ${right}`;
}

/** Whole feet with a comma before the hundreds: 3,500. */
export const inThousands = (feet: number): string =>
  String(Math.round(feet)).replace(/\B(?=(\d{3})+$)/g, ",");
