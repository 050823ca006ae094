/**
 * The short code on a problem, such as 4K7-Q2M-9XD: it reopens the same problem wherever the same stations are at hand. Nine letters and
 * digits of Crockford's base 32 (no I, L, O or U): form, mode, version of the generator, stations, seed, and a check against miscopying.
 */

import type { Mode } from "./form.ts";
import { FORM_IDS, FORM_NUMBERS, type FormId } from "./forms/numbers.ts";

export type ProblemCode = string & { readonly problemCode: unique symbol };

/** Rises whenever a seed would no longer give the problem it gave. */
export const GENERATOR_VERSION = 0;
export const MOST_SEED = 2 ** 22 - 1;

export interface CodeParts {
  readonly form: FormId;
  readonly mode: Mode;
  /** 0 to 4,194,303. */
  readonly seed: number;
  /** Of the stations, 0 to 255. */
  readonly mark: number;
}

export type CodeRead =
  | ({ readonly kind: "code"; readonly code: ProblemCode } & CodeParts)
  | { readonly kind: "fault"; readonly says: string };

const LETTERS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
const LENGTH = 9;

/** Fields from the left with their widths in bits: 45 in all. */
const WIDTHS = { form: 6, mode: 1, version: 3, mark: 8, seed: 22, check: 5 } as const;
const CHECK_PRIME = 31;

/** The code of a problem. Throws RangeError on a seed or mark out of range. */
export function problemCode({ form, mode, seed, mark }: CodeParts): ProblemCode {
  if (!Number.isInteger(seed) || seed < 0 || seed > MOST_SEED)
    throw new RangeError(`a problem's seed is a whole number from 0 to ${MOST_SEED}, got ${seed}`);
  if (!Number.isInteger(mark) || mark < 0 || mark > 255)
    throw new RangeError(`a mark of stations is 0 to 255, got ${mark}`);
  let bits = BigInt(FORM_NUMBERS[form]);
  const add = (value: number, width: number): void => {
    bits = (bits << BigInt(width)) | BigInt(value);
  };
  add(mode === "tell" ? 1 : 0, WIDTHS.mode);
  add(GENERATOR_VERSION, WIDTHS.version);
  add(mark, WIDTHS.mark);
  add(scattered(seed), WIDTHS.seed);
  add(checkOf(bits), WIDTHS.check);
  let text = "";
  for (let at = 0; at < LENGTH; at += 1) {
    text = LETTERS.charAt(Number(bits & 31n)) + text;
    bits >>= 5n;
  }
  return `${text.slice(0, 3)}-${text.slice(3, 6)}-${text.slice(6)}` as ProblemCode;
}

/** Reads a code as people type it: small letters, missing or other dashes, O for 0, I and L for 1. */
export function readProblemCode(typed: string): CodeRead {
  const text = typed
    .toUpperCase()
    .replace(/[\s\-–—_.]/g, "")
    .replace(/O/g, "0")
    .replace(/[IL]/g, "1");
  const fault = (says: string): CodeRead => ({ kind: "fault", says });
  if (text.length !== LENGTH)
    return fault(
      `A problem's code has nine letters and digits, such as 4K7-Q2M-9XD; “${typed.trim()}” has ${text.length}.`,
    );
  let bits = 0n;
  for (const letter of text) {
    const value = LETTERS.indexOf(letter);
    if (value < 0) return fault(`A problem's code has no “${letter}”: look at “${typed.trim()}” again.`);
    bits = (bits << 5n) | BigInt(value);
  }
  const take = (width: number): number => {
    const value = Number(bits & ((1n << BigInt(width)) - 1n));
    bits >>= BigInt(width);
    return value;
  };
  const check = take(WIDTHS.check);
  if (check !== checkOf(bits))
    return fault(`“${typed.trim()}” is no problem's code: a letter or digit was miscopied.`);
  const seed = gathered(take(WIDTHS.seed));
  const mark = take(WIDTHS.mark);
  const version = take(WIDTHS.version);
  const mode = take(WIDTHS.mode) === 1 ? "tell" : "choose";
  const number = take(WIDTHS.form);
  const form = FORMS_BY_NUMBER.get(number);
  if (version !== GENERATOR_VERSION || form === undefined)
    return fault(`“${typed.trim()}” was made by another version of Needlework, which is needed to open it.`);
  return { kind: "code", code: problemCode({ form, mode, seed, mark }), form, mode, seed, mark };
}

const FORMS_BY_NUMBER: ReadonlyMap<number, FormId> = new Map(FORM_IDS.map((id) => [FORM_NUMBERS[id], id]));

const checkOf = (bits: bigint): number => Number(bits % BigInt(CHECK_PRIME));

/** Neighbouring seeds get codes that look apart: times an odd number, modulo 2^22, and back. */
const SEEDS = MOST_SEED + 1;
const FACTOR = 2_654_435n;
const INVERSE = inverseModulo(FACTOR, BigInt(SEEDS));
const scattered = (seed: number): number => Number((BigInt(seed) * FACTOR) % BigInt(SEEDS));
const gathered = (value: number): number => Number((BigInt(value) * INVERSE) % BigInt(SEEDS));

/** Of an odd number modulo a power of two, by Newton's doubling. */
function inverseModulo(odd: bigint, modulus: bigint): bigint {
  let inverse = 1n;
  for (let step = 0; step < 6; step += 1)
    inverse = (((inverse * (2n - odd * inverse)) % modulus) + modulus) % modulus;
  return inverse;
}
