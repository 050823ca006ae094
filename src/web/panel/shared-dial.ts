/** Two magnetic indicators are one dial with two pointers, single and double, as in `figure`; one, three or four stay apart. */

import type { ReceiverReading } from "../../panel/index.ts";

export interface SharedDial {
  /** Bears the dial and the single pointer. */
  readonly first: ReceiverReading;
  readonly second: ReceiverReading;
}

export function sharedDial(receivers: readonly ReceiverReading[]): SharedDial | null {
  const [first, second, ...others] = receivers.filter(({ settings }) => settings.face === "rmi");
  return first === undefined || second === undefined || others.length > 0 ? null : { first, second };
}
