/** The page's end of the tutor: asks, and waits for the answer. Where the browser has no worker for it, the page works it out itself. */

import type { World } from "../../practice/index.ts";
import {
  groundOf,
  type TutorAnswers,
  type TutorOrder,
  type TutorReply,
  type TutorTask,
} from "./tutor-desk.ts";

export interface TutorClient {
  readonly ask: <T extends TutorTask>(
    world: World,
    task: T,
    wish: TutorAnswers[T]["wish"],
  ) => Promise<TutorAnswers[T]["reply"]>;
  readonly close: () => void;
}

export function createTutorClient(): TutorClient {
  let orders = 0;
  const waiting = new Map<
    number,
    { readonly order: TutorOrder; readonly done: (reply: TutorReply["reply"]) => void }
  >();
  let worker = startWorker();
  const here = async (order: TutorOrder): Promise<TutorReply["reply"]> =>
    (await import("./tutor-desk.ts")).carryOut(order);
  if (worker !== null) {
    worker.onmessage = ({ data }: MessageEvent<TutorReply>) => {
      waiting.get(data.order)?.done(data.reply);
      waiting.delete(data.order);
    };
    // It did not arrive, or this browser cannot run it.
    worker.onerror = (event) => {
      event.preventDefault();
      worker?.terminate();
      worker = null;
      for (const { order, done } of waiting.values()) void here(order).then(done);
      waiting.clear();
    };
  }
  return {
    ask: async (world, task, wish) => {
      orders += 1;
      const order = { order: orders, ground: groundOf(world), task, wish } as TutorOrder;
      const reply =
        worker === null
          ? await here(order)
          : await new Promise<TutorReply["reply"]>((done) => {
              waiting.set(order.order, { order, done });
              worker?.postMessage(order);
            });
      return reply as TutorAnswers[typeof task]["reply"];
    },
    close: () => worker?.terminate(),
  };
}

function startWorker(): Worker | null {
  try {
    return new Worker(new URL("./tutor-worker.ts", import.meta.url), { type: "module" });
  } catch {
    return null;
  }
}
