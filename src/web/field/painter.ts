/** What a painter does, whichever it is, and which one a page gets. */

import type { FieldLook, Plate } from "../../draw/index.ts";
import { paintByCard } from "./paint-by-card.ts";
import { paintByHand } from "./paint-by-hand.ts";

/** Paints a plate onto one canvas, over and over. */
export interface Painter {
  readonly name: "card" | "hand";
  /** The plate to paint, each of its cells so many pixels wide, a power of two. The canvas gets the size of the print. */
  readonly setPlate: (plate: Plate, pixelsPerCell: number) => void;
  /** The inks of `inksFor`. */
  readonly setInks: (inks: Uint8Array) => void;
  readonly paint: (look: FieldLook) => void;
}

/** The graphics card paints where there is one; where it would be imitated by the processor, painting by hand is quicker. */
export function painterFor(canvas: HTMLCanvasElement): Painter {
  return paintByCard(canvas) ?? paintByHand(canvas);
}
