/** Opens the app on this machine only. */

import type { FastifyInstance } from "fastify";

const LOOPBACK = "127.0.0.1";
/** The port tried first, so that the address of the bench stays the same from day to day. */
export const USUAL_PORT = 4173;

/** The chosen port is in use. */
export class PortTaken extends Error {
  readonly port: number;
  constructor(port: number) {
    super(`port ${port} is taken by another program`);
    this.port = port;
  }
}

/**
 * Listens on 127.0.0.1 and gives the address. Without a chosen port: the usual one, or any free one when that is taken.
 * Throws PortTaken when the chosen port is in use.
 */
export async function listenOnLoopback(app: FastifyInstance, chosenPort: number | null): Promise<string> {
  try {
    return await app.listen({ host: LOOPBACK, port: chosenPort ?? USUAL_PORT });
  } catch (error) {
    if (!isTaken(error)) throw error;
    if (chosenPort !== null) throw new PortTaken(chosenPort);
    return app.listen({ host: LOOPBACK, port: 0 });
  }
}

const isTaken = (error: unknown): boolean =>
  error instanceof Error && "code" in error && error.code === "EADDRINUSE";
