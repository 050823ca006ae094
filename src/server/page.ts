/** The built page and its parts, from one folder and nothing beside it. */

import fastifyStatic from "@fastify/static";
import type { FastifyInstance } from "fastify";

/** Names of built parts carry their content's hash, so a kept copy is never wrong. */
const KEEP = "public, max-age=31536000, immutable";
/** Everything else is asked for anew each time, and answered by "not modified" when it is the same. */
const ASK = "no-cache";

/** Serves the folder at `/`, with `index.html` for the root. */
export async function servePage(app: FastifyInstance, webFolder: string): Promise<void> {
  await app.register(fastifyStatic, {
    root: webFolder,
    cacheControl: false,
    dotfiles: "ignore",
    setHeaders: (reply, path) => {
      const inAssets = /[\\/]assets[\\/]/.test(path.slice(webFolder.length));
      reply.setHeader("cache-control", inAssets ? KEEP : ASK);
    },
  });
}
