/** The bench's server, built apart from listening, so that tests can put requests to it without a port. */

import Fastify, { type FastifyInstance } from "fastify";
import { answerErrors } from "./errors.ts";
import { guard } from "./guard.ts";
import { servePage } from "./page.ts";
import { addPaperRoute, type PaperSource } from "./paper-route.ts";
import { addSceneRoute } from "./scene-route.ts";
import type { SceneSettings } from "./scene-source.ts";

export interface ServerSettings {
  /** The built page. */
  readonly webFolder: string;
  /** The scene named when the bench was started; null for the demo, which the page holds itself. */
  readonly scene: SceneSettings | null;
  /** Typesets problem sets for the page. */
  readonly paper: PaperSource;
  /** Called with a fault of the server itself, to be told on its terminal. */
  readonly tellFault: (error: unknown) => void;
}

/** The app, ready to listen or to be asked. It answers only to this machine's own names. */
export async function buildServer(settings: ServerSettings): Promise<FastifyInstance> {
  // Closing does not wait for a browser that keeps its connection open.
  const app = Fastify({ ajv: { customOptions: { removeAdditional: false } }, forceCloseConnections: true });
  answerErrors(app, settings.tellFault);
  guard(app);
  addSceneRoute(app, settings.scene);
  addPaperRoute(app, settings.paper);
  await servePage(app, settings.webFolder);
  return app;
}
