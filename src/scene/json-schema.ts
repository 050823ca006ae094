/**
 * The published JSON Schemas of our files, made from the shapes that read them. They tell an editor which keys there are
 * and what each may hold; what only makes sense together (an ident that exists, a channel that is paired) is the
 * reader's to check. For tools and tests: a page that only reads files has no use for this module.
 */

import * as z from "zod/mini";
import { landFileShape } from "./land-shape.ts";
import { sceneFileShape } from "./scene-shape.ts";
import { noteOf } from "./shape.ts";
import { stationFileShape } from "./station-shape.ts";

export type JsonSchema = Readonly<Record<string, unknown>>;

export const sceneJsonSchema = (): JsonSchema => publishedSchema(sceneFileShape, "Needlework scene file");
export const stationsJsonSchema = (): JsonSchema =>
  publishedSchema(stationFileShape, "Needlework station file");
export const landJsonSchema = (): JsonSchema => publishedSchema(landFileShape, "Needlework land file");

/** A shape as a JSON Schema under this title. */
export function publishedSchema(shape: z.ZodMiniType, title: string): JsonSchema {
  const { $schema, ...schema } = z.toJSONSchema(shape, {
    io: "input",
    override: ({ zodSchema, jsonSchema }) => {
      // YAML takes the text `115.60` for a number and `TRUE` for a truth value.
      const others = noteOf(zodSchema)?.looksLike ?? [];
      if (others.length > 0 && jsonSchema.type === "string")
        Object.assign(jsonSchema, { type: ["string", ...others] });
    },
  });
  return { $schema, title, ...schema };
}
