/**
 * The worker that makes plates, beside the page: first in cells of four pixels, to be there at once, then in full. It works in
 * short turns and looks between them whether another plate has been asked for, which puts the present one away.
 */

import {
  COARSE_FACTOR,
  columnsOf,
  makePlate,
  type Plate,
  type PlateFields,
  type PlateRequest,
  plateFields,
} from "../../draw/index.ts";
/** Asks for a plate. `order` counts up. */
export interface PlateOrder {
  readonly order: number;
  readonly request: PlateRequest;
}

/** A plate as it comes from the worker: the coarse one, then the full one. */
export interface PlateDelivery {
  readonly order: number;
  readonly plate: Plate;
  readonly isFull: boolean;
}

const TURN_MS = 8;

let newest: PlateOrder | null = null;
let isAtWork = false;

const breath = new MessageChannel();
/** Lets waiting messages in. */
const lookUp = (): Promise<void> =>
  new Promise((resolve) => {
    breath.port1.onmessage = () => resolve();
    breath.port2.postMessage(null);
  });

let kept: { readonly key: string; readonly fields: PlateFields } | null = null;
function fieldsFor({ subject, paper, cellPx }: PlateRequest): PlateFields {
  const room = columnsOf({ ...paper, cellPx });
  const key = JSON.stringify([subject, room]);
  if (kept?.key !== key) kept = { key, fields: plateFields(subject, room) };
  return kept.fields;
}

async function work(): Promise<void> {
  isAtWork = true;
  while (newest !== null) {
    const { order, request } = newest;
    newest = null;
    const fields = fieldsFor(request);
    const coarse = await makeUnlessPutAway({ ...request, cellPx: request.cellPx * COARSE_FACTOR }, fields);
    if (coarse !== null) deliver({ order, plate: coarse, isFull: false });
    const full = coarse === null ? null : await makeUnlessPutAway(request, fields);
    if (full !== null) deliver({ order, plate: full, isFull: true });
  }
  isAtWork = false;
}

/** Null when another plate was asked for meanwhile. */
async function makeUnlessPutAway(request: PlateRequest, fields: PlateFields): Promise<Plate | null> {
  const rows = makePlate(request, fields);
  for (;;) {
    const endMs = performance.now() + TURN_MS;
    while (performance.now() < endMs) {
      const step = rows.next();
      if (step.done) return step.value;
    }
    await lookUp();
    if (newest !== null) return null;
  }
}

function deliver(delivery: PlateDelivery): void {
  postMessage(delivery, { transfer: [delivery.plate.cells.buffer] });
}

addEventListener("message", ({ data }: MessageEvent<PlateOrder>) => {
  newest = data;
  if (!isAtWork) void work();
});
