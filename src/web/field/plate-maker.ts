/** The page's end of the worker: asks for plates, and hands on those that are still wanted. */

import type { Plate, PlateRequest } from "../../draw/index.ts";
import type { PlateDelivery, PlateOrder } from "./field-worker.ts";

export interface PlateMaker {
  /**
   * Asks for a plate. Another subject puts aside what is being made; another view of the same waits until that is done, so
   * that plates keep coming while the chart is dragged.
   */
  readonly ask: (request: PlateRequest) => void;
  readonly close: () => void;
}

/** Starts a worker. `deliver` gets each plate as it comes, with the very subject and paper that were asked for. */
export function plateMaker(deliver: (plate: Plate, isFull: boolean) => void): PlateMaker {
  const worker = new Worker(new URL("./field-worker.ts", import.meta.url), { type: "module" });
  let making: PlateOrder | null = null;
  let waiting: PlateRequest | null = null;
  let orders = 0;
  const send = (request: PlateRequest) => {
    orders += 1;
    waiting = null;
    making = { order: orders, request };
    worker.postMessage(making);
  };
  worker.onmessage = ({ data }: MessageEvent<PlateDelivery>) => {
    if (data.order !== making?.order) return;
    const { subject, paper } = making.request;
    if (data.isFull) {
      making = null;
      if (waiting !== null) send(waiting);
    }
    deliver({ ...data.plate, subject, paper }, data.isFull);
  };
  return {
    ask: (request) => {
      if (making !== null && making.request.subject === request.subject) waiting = request;
      else send(request);
    },
    close: () => worker.terminate(),
  };
}
