/** `GET /api/scene`: the scene that the bench was started with, read from disk at each request. */

import type { FastifyInstance } from "fastify";
import { ERROR_SCHEMA, Refusal } from "./errors.ts";
import { type SceneSettings, sceneSource } from "./scene-source.ts";

const text = { type: "string" } as const;

/** An object of which every property is required and no other is let through. */
const record = <P extends Record<string, unknown>>(properties: P) => ({
  type: "object",
  required: Object.keys(properties),
  additionalProperties: false,
  properties,
});

const SCHEMA = {
  querystring: { type: "object", additionalProperties: false },
  response: {
    200: record({
      scene: record({ file: text, text }),
      files: { type: "array", items: record({ path: text, text }) },
    }),
    "4xx": ERROR_SCHEMA,
    "5xx": ERROR_SCHEMA,
  },
} as const;

/** Adds the route. `scene` null: the bench was started without one, and the route says so. */
export function addSceneRoute(app: FastifyInstance, scene: SceneSettings | null): void {
  app.get("/api/scene", { schema: SCHEMA }, async (_request, reply) => {
    if (scene === null) throw new Refusal("no-scene");
    reply.header("cache-control", "no-store");
    return sceneSource(scene);
  });
}
