/**
 * The building parts of the files' shapes, in Zod: what a value may be, and beside it what a person is told is right.
 * The same shapes make the published JSON Schemas.
 */

import * as z from "zod/mini";

export interface LeafNote {
  /** Text is taken as written, so that the ident `NO` or `1E5` stays itself. */
  readonly kind: "text" | "number";
  /** The second half of a fault's sentence: what would be right. */
  readonly right: string;
  readonly choices?: readonly string[];
  /** Nothing written means empty text. */
  readonly blank?: boolean;
  /** What else YAML may take such a text for; the JSON Schema allows it, the reader takes what was written. */
  readonly looksLike?: readonly ("number" | "boolean")[];
}

export interface RecordShape {
  readonly keys: Readonly<Record<string, z.ZodMiniType>>;
  /** Other names people give to a key, lower case, each with the key that is meant. */
  readonly meant?: Readonly<Record<string, string>>;
  /** Keys that belong to another part of the file, and where. */
  readonly elsewhere?: Readonly<Record<string, string>>;
}

const notes = z.registry<LeafNote, z.core.$ZodType>();

/** The note of a value's shape, optional or not. */
export function noteOf(shape: z.core.$ZodType | undefined): LeafNote | undefined {
  if (!shape) return undefined;
  return notes.get(shape) ?? (shape instanceof z.ZodMiniOptional ? noteOf(inner(shape)) : undefined);
}

export const isOptional = (shape: z.ZodMiniType): boolean => shape instanceof z.ZodMiniOptional;

const inner = (shape: z.ZodMiniOptional): z.core.$ZodType => shape._zod.def.innerType;

/** What the JSON Schema tells about a value: description and examples; `id` gives it a definition of its own. */
interface Told {
  readonly id?: string;
  readonly description: string;
  readonly examples?: unknown[];
}

/** Gives a list, map or either-or its note, so that its absence can be explained. */
export function noted<T extends z.ZodMiniType>(shape: T, right: string, told: Told): T {
  notes.add(shape, { kind: "text", right });
  z.globalRegistry.add(shape, { ...told });
  return shape;
}

/** A number from `min` to `max`, both allowed. */
export function numberLeaf({
  min,
  max,
  whole = false,
  right,
  ...told
}: { min: number; max: number; whole?: boolean; right: string } & Told): z.ZodMiniNumber<number> {
  const leaf = (whole ? z.int() : z.number()).check(z.minimum(min), z.maximum(max));
  notes.add(leaf, { kind: "number", right });
  z.globalRegistry.add(leaf, { ...told });
  return leaf;
}

/** Text of at most `max` characters that fits the pattern, taken as written. */
export function textLeaf({
  max,
  pattern,
  blank = false,
  looksLike = [],
  right,
  ...told
}: Pick<LeafNote, "blank" | "looksLike"> & {
  max: number;
  pattern?: RegExp;
  right: string;
} & Told): z.ZodMiniString<string> {
  const leaf = pattern
    ? z.string().check(z.maxLength(max), z.regex(pattern))
    : z.string().check(z.maxLength(max));
  notes.add(leaf, { kind: "text", right, blank, looksLike });
  z.globalRegistry.add(leaf, { ...told });
  return leaf;
}

/** One of a few words. */
export function choiceLeaf<const T extends readonly string[]>(
  choices: T,
  { right, ...told }: { right: string } & Told,
) {
  const leaf = z.enum(choices);
  notes.add(leaf, { kind: "text", right, choices });
  z.globalRegistry.add(leaf, { ...told });
  return leaf;
}
