/** `POST /api/paper`: the sheet or the key of a problem set, typeset as a PDF. The set comes as its link, so that nothing is kept here. */

import type { FastifyInstance } from "fastify";
import { ERROR_SCHEMA, Refusal } from "./errors.ts";

export interface PaperWanted {
  /** `p1.…` */
  readonly link: string;
  readonly what: "sheet" | "key";
  readonly paper: "a4" | "letter";
}

/** The PDF, or one sentence on what is wrong with the link. */
export type PaperSource = (wanted: PaperWanted) => Promise<Uint8Array | string>;

const SCHEMA = {
  body: {
    type: "object",
    required: ["link", "what", "paper"],
    additionalProperties: false,
    properties: {
      link: { type: "string" },
      what: { enum: ["sheet", "key"] },
      paper: { enum: ["a4", "letter"] },
    },
  },
  response: { "4xx": ERROR_SCHEMA, "5xx": ERROR_SCHEMA },
} as const;

/** Adds the route. */
export function addPaperRoute(app: FastifyInstance, paperOf: PaperSource): void {
  app.post<{ Body: PaperWanted }>("/api/paper", { schema: SCHEMA }, async ({ body }, reply) => {
    const made = await paperOf(body);
    if (typeof made === "string") throw new Refusal("set-unreadable", made);
    return reply.header("cache-control", "no-store").type("application/pdf").send(Buffer.from(made));
  });
}
