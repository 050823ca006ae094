/**
 * What keeps the bench to its own page on this machine: requests by another host name are refused, so that a foreign
 * page cannot reach the server through a name that it points at 127.0.0.1; and the page may load nothing from elsewhere.
 */

import type { FastifyInstance } from "fastify";
import { Refusal } from "./errors.ts";

const OWN_NAMES = new Set(["127.0.0.1", "localhost", "[::1]"]);

const CONTENT_SECURITY_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "media-src 'self' blob:",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join("; ");

const HEADERS = {
  "content-security-policy": CONTENT_SECURITY_POLICY,
  "x-content-type-options": "nosniff",
  "referrer-policy": "no-referrer",
  "cross-origin-opener-policy": "same-origin",
  "cross-origin-resource-policy": "same-origin",
} as const;

/** Adds the host check and the headers to every answer of the app. */
export function guard(app: FastifyInstance): void {
  app.addHook("onRequest", async (request, reply) => {
    reply.headers(HEADERS);
    if (!isOwnHost(request.headers.host)) throw new Refusal("bad-host");
  });
}

/** Whether a Host header names this machine; the port may be any, since the name alone tells a foreign page. */
export function isOwnHost(host: string | undefined): boolean {
  return host !== undefined && OWN_NAMES.has(host.toLowerCase().replace(/:\d+$/, ""));
}
