/** `GET /api/scene`: the scene that the bench was started with, read from disk at each request. */

import type { FastifyInstance } from "fastify";
import { ERROR_SCHEMA } from "./errors.ts";
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
    204: { type: "null" },
    "4xx": ERROR_SCHEMA,
    "5xx": ERROR_SCHEMA,
  },
} as const;

/** Adds the route. `scene` null: the bench was started without one, and the answer has no content. */
export function addSceneRoute(app: FastifyInstance, scene: SceneSettings | null): void {
  app.get("/api/scene", { schema: SCHEMA }, async (_request, reply) => {
    reply.header("cache-control", "no-store");
    return scene === null ? reply.code(204).send() : sceneSource(scene);
  });
}
