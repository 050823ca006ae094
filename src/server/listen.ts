/** Opens the app on this machine only. */

import type { FastifyInstance } from "fastify";

const LOOPBACK = "127.0.0.1";
/** The port tried first, so that the address of the bench stays the same from day to day. */
const USUAL_PORT = 4173;

/** The chosen port cannot be had. The message is a sentence without a full stop. */
export class PortRefused extends Error {}

const REASONS: Readonly<Record<string, string>> = {
  EADDRINUSE: "is taken by another program",
  EACCES: "may not be opened with your rights",
};

/**
 * Listens on 127.0.0.1 and gives the address. Without a chosen port: the usual one, or any free one when that cannot be
 * had. Throws PortRefused when a chosen port is taken or not allowed.
 */
export async function listenOnLoopback(app: FastifyInstance, chosenPort: number | null): Promise<string> {
  try {
    return await app.listen({ host: LOOPBACK, port: chosenPort ?? USUAL_PORT });
  } catch (error) {
    const code = error instanceof Error && "code" in error ? String(error.code) : "";
    const reason = REASONS[code];
    if (reason === undefined) throw error;
    if (chosenPort !== null) throw new PortRefused(`port ${chosenPort} ${reason}`, { cause: error });
    return app.listen({ host: LOOPBACK, port: 0 });
  }
}
