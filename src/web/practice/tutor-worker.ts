/** The tutor beside the page, so that choosing among dozens of fresh problems never holds up a hand. */

import { carryOut, type TutorOrder, type TutorReply } from "./tutor-desk.ts";

addEventListener("message", ({ data }: MessageEvent<TutorOrder>) => {
  const reply: TutorReply = { order: data.order, reply: carryOut(data) };
  postMessage(reply);
});
