/** What a person types for a receiver's own error: signed degrees, or one sentence that says what would be right. */

/** "+3", "−6", "0", "2.5"; with or without the degree sign. Tenths at most. */
export function readError(text: string, largestDeg: number): number | string {
  const plain = text.replace(/[−–]/g, "-").replace(/[\s°]/g, "").replace(",", ".");
  const deg = /^[+-]?\d{1,2}(\.\d)?$/.test(plain) ? Number(plain) : Number.NaN;
  if (Math.abs(deg) <= largestDeg) return deg + 0;
  return `${text === "" ? "nothing" : `“${text}”`} is not an error here: −${largestDeg} to +${largestDeg} degrees`;
}

/** With a true minus, and a plus before what adds. */
export function signedDegrees(deg: number): string {
  const size = String(Math.abs(deg));
  return deg < 0 ? `−${size}` : deg > 0 ? `+${size}` : size;
}
