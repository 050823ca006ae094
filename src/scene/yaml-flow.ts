/** Plain data as one line of YAML: for texts that a program makes and our readers read. */

/** Deeper than this nothing is written: our files nest six deep, and the reader refuses what is missing. */
const DEEPEST = 12;

/** Fields that are undefined are left out. Any data gives YAML that can be parsed. */
export function flowText(value: unknown, depth = 0): string {
  if (typeof value === "string") return quoted(value);
  if (typeof value === "number") return plainNumber(value);
  if (typeof value !== "object" || value === null || depth > DEEPEST) return String(value === true);
  if (Array.isArray(value)) return `[${value.map((item) => flowText(item, depth + 1)).join(", ")}]`;
  const pairs = Object.entries(value).filter(([, item]) => item !== undefined);
  return `{${pairs.map(([key, item]) => `${quoted(key)}: ${flowText(item, depth + 1)}`).join(", ")}}`;
}

/** A text in double quotes. Brackets are escaped too, for the reader counts them before it parses; and so is what does not print. */
const quoted = (text: string): string =>
  JSON.stringify(text).replace(
    /[[\]{}\u007f-\u009f\u2028\u2029\ufeff\ufffe\uffff]/g,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );

/** A number as our files write numbers, without powers of ten; with so many characters at most, by giving up its last decimals. */
export function plainNumber(value: number, longest = Number.POSITIVE_INFINITY): string {
  const shortest = String(value);
  const whole = /e-/.test(shortest) ? value.toFixed(DECIMALS).replace(/\.?0+$/, "") : shortest;
  if (whole.length <= longest || !whole.includes(".")) return whole;
  return value.toFixed(Math.max(0, longest - whole.indexOf(".") - 1));
}

/** Enough for any number that is not nothing for our purposes. */
const DECIMALS = 30;
