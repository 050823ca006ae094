/** What a learner wrote, as an answer to one problem: "246", "FROM part left", "TXJ 246/18", "140/18", or in choose mode an option's letter. */

import { readLatLon, trueDeg } from "../earth/index.ts";
import type { Flag } from "../panel/index.ts";
import { readAircraftPlace } from "../scene/index.ts";
import { type Answer, NEEDLES, type Needle } from "./answer.ts";
import { type Options, shownOrder } from "./options.ts";
import type { Problem } from "./problem.ts";

export type TypedAnswer =
  | { readonly kind: "answer"; readonly answer: Answer }
  | { readonly kind: "dont-know" }
  /** Nothing that could be marked yet: one sentence with the remedy. */
  | { readonly kind: "unready"; readonly says: string };

const DONT_KNOW = /^(\?|-|i\s+)?(do\s*n.?t|do not)\s+know(\s+yet)?\.?$|^\?$|^dk$/i;

/** The letters of options, as shown: A the first. */
export const OPTION_LETTERS = "ABCDEFGH";

/**
 * Reads a typed answer. `options`: those the learner was shown, whose letters count as answers; null in tell mode. Never throws.
 */
export function readTypedAnswer(problem: Problem, options: Options | null, typed: string): TypedAnswer {
  const text = typed.trim();
  if (text === "") return unready(`Nothing is written; ${howToWrite(problem)}.`);
  if (DONT_KNOW.test(text)) return { kind: "dont-know" };
  if (options !== null) {
    const chosen = optionByLetter(problem, options, text);
    if (chosen !== null) return { kind: "answer", answer: chosen };
  }
  const answer = readAs(problem, text);
  if (answer !== null) return { kind: "answer", answer };
  return unready(`“${text}” cannot be read; ${howToWrite(problem)}.`);
}

const unready = (says: string): TypedAnswer => ({ kind: "unready", says });

function optionByLetter(problem: Problem, options: Options, text: string): Answer | null {
  const match = /^\(?([A-H])[).]?$/i.exec(text);
  if (match?.[1] === undefined) return null;
  const place = shownOrder(problem, options)[OPTION_LETTERS.indexOf(match[1].toUpperCase())];
  return place === undefined ? null : (options.options[place]?.answer ?? null);
}

/** What is to be written, in the middle of a sentence: "write a direction in three digits, such as 090". Never the answer. */
export function howToWrite({ truth, case: { words, items, figures } }: Problem): string {
  switch (truth.kind) {
    case "direction":
      return "write a direction in three digits, 001 to 360, such as 090";
    case "quantity":
      return `write a number of ${UNIT_NAMES[truth.unit]}`;
    case "word":
      return words === undefined ? "write one of the answers offered" : `write ${orList(words)}`;
    case "panel":
      return "write the flag and the needle, such as TO part left";
    case "place":
      return "write ident radial/NM, or latitude and longitude";
    case "wind":
      return "write where the wind is from and its speed in knots, such as 090/10";
    case "row":
      return `write ${figures?.length ?? Object.keys(truth.figures).length} figures in their order, with commas between`;
    case "order":
      return `write the letters ${(items ?? []).map(({ letter }) => letter).join("")} in your order`;
  }
}

const UNIT_NAMES = {
  NM: "nautical miles",
  kt: "knots",
  min: "minutes",
  ft: "feet",
  degrees: "degrees",
} as const;

const orList = (words: readonly string[]): string =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} or ${words.at(-1)}`;

function readAs(problem: Problem, text: string): Answer | null {
  const { truth } = problem;
  switch (truth.kind) {
    case "direction": {
      const deg = readThreeDigits(text);
      return deg === null ? null : { kind: "direction", deg };
    }
    case "quantity": {
      const value = readNumber(text);
      return value === null || value < 0 ? null : { kind: "quantity", value, unit: truth.unit };
    }
    case "word": {
      const word = wordMeant(problem.case.words ?? [], text);
      return word === null ? null : { kind: "word", word };
    }
    case "panel":
      return readPanel(text);
    case "place": {
      const { stations } = problem.case.scene;
      const read = readAircraftPlace(text, { own: stations, table: [] });
      if (read.ok) return { kind: "place", position: read.position, station: truth.station };
      const place = readLatLon(text);
      return place.ok ? { kind: "place", position: place.position, station: truth.station } : null;
    }
    case "wind": {
      const match = /^(\d{1,3})\s*°?\s*[/@]\s*(\d{1,3})\s*(?:kt|kn|knots)?$/i.exec(text);
      const fromDeg = match?.[1] === undefined ? null : readThreeDigits(match[1]);
      return fromDeg === null
        ? null
        : { kind: "wind", fromDeg: trueDeg(fromDeg), speedKt: Number(match?.[2]) };
    }
    case "row":
      return readRow(Object.keys(truth.figures), text);
    case "order": {
      const letters = text
        .toUpperCase()
        .replace(/[^A-Z]/g, "")
        .split("");
      const wanted = [...truth.items].sort().join("");
      return [...letters].sort().join("") === wanted ? { kind: "order", items: letters } : null;
    }
  }
}

function readThreeDigits(text: string): number | null {
  const match = /^R?\s*(\d{1,3})\s*(?:°|deg|degrees)?$/i.exec(text);
  const deg = match?.[1] === undefined ? Number.NaN : Number(match[1]);
  if (!(deg >= 0 && deg <= 360)) return null;
  return deg === 0 ? 360 : deg;
}

function readNumber(text: string): number | null {
  const match = /^(\d{1,6}(?:[.,]\d+)?)\s*(?:nm|kt|kn|knots?|min|minutes?|ft|feet|°|degrees?|miles?)?$/i.exec(
    text.replace(/(\d)[ ,](\d{3})(?!\d)/g, "$1$2"),
  );
  return match?.[1] === undefined ? null : Number(match[1].replace(",", "."));
}

/** The one word that this is, or begins: "l" means left where right is the other. */
function wordMeant(words: readonly string[], text: string): string | null {
  const plain = (word: string): string =>
    word
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, " ")
      .trim();
  const wanted = plain(text);
  const exact = words.find((word) => plain(word) === wanted);
  if (exact !== undefined) return exact;
  const begun = words.filter((word) => plain(word).startsWith(wanted));
  return wanted !== "" && begun.length === 1 ? (begun[0] ?? null) : null;
}

function readPanel(text: string): Answer | null {
  const plain = text
    .toLowerCase()
    .replace(/[^a-z]+/g, " ")
    .trim();
  const match = /^(to|from|off|no flag)\b\s*(?:needle\s*)?(.+)$/.exec(plain);
  if (match?.[1] === undefined || match[2] === undefined) return null;
  const flag: Flag = match[1] === "to" ? "TO" : match[1] === "from" ? "FROM" : "OFF";
  const needle = needleMeant(match[2]);
  return needle === null ? null : { kind: "panel", flag, needle };
}

function needleMeant(text: string): Needle | null {
  if (/^(centred|centered|centre|center|middle)$/.test(text)) return "centred";
  const hand = /\bleft\b/.test(text) ? "left" : /\bright\b/.test(text) ? "right" : null;
  if (hand === null) return null;
  return NEEDLES.find((needle) => needle === `${/\bfull\b/.test(text) ? "full" : "part"} ${hand}`) ?? null;
}

function readRow(names: readonly string[], text: string): Answer | null {
  const figures = text.split(/[;,\s]+/).filter((figure) => figure !== "");
  if (figures.length !== names.length) return null;
  const read: Record<string, number> = {};
  for (const [at, name] of names.entries()) {
    const figure = figures[at] ?? "";
    const value = name.endsWith("Deg") ? readThreeDigits(figure) : readNumber(figure);
    if (value === null) return null;
    read[name] = value;
  }
  return { kind: "row", figures: read };
}
