/** Every refusal of the server: its code, status and sentence, in one place. The body is always `{code, message}`. */

import type { FastifyInstance } from "fastify";

const REFUSALS = {
  "bad-host": { status: 403, message: "this server answers only to its own address on this machine" },
  "bad-request": { status: 400, message: "the request does not have the form that this address takes" },
  "not-found": { status: 404, message: "there is nothing at this address" },
  "scene-unreadable": { status: 422, message: "the scene file cannot be read" },
  "set-unreadable": { status: 422, message: "the problem set cannot be read" },
  "server-fault": { status: 500, message: "the server failed; its terminal says why" },
} as const;

export type RefusalCode = keyof typeof REFUSALS;

/** Thrown by a route to refuse; the message replaces the code's own sentence when given. */
export class Refusal extends Error {
  readonly code: RefusalCode;
  constructor(code: RefusalCode, message: string = REFUSALS[code].message) {
    super(message);
    this.code = code;
  }
}

export const ERROR_SCHEMA = {
  type: "object",
  required: ["code", "message"],
  additionalProperties: false,
  properties: { code: { type: "string" }, message: { type: "string" } },
} as const;

/** Words every error of the app as `{code, message}`. A fault of the server itself is told on its terminal. */
export function answerErrors(app: FastifyInstance, tellFault: (error: unknown) => void): void {
  app.setNotFoundHandler(() => {
    throw new Refusal("not-found");
  });
  app.setErrorHandler((error, _request, reply) => {
    const refusal = error instanceof Refusal ? error : new Refusal(codeFor(error));
    if (refusal.code === "server-fault") tellFault(error);
    reply
      .code(REFUSALS[refusal.code].status)
      .header("cache-control", "no-store")
      .send({ code: refusal.code, message: refusal.message });
  });
}

function codeFor(error: unknown): RefusalCode {
  const status = error instanceof Error && "statusCode" in error ? Number(error.statusCode) : 500;
  if (status === 404 || status === 403) return "not-found";
  return status >= 400 && status < 500 ? "bad-request" : "server-fault";
}
