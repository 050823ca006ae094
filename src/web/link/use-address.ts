/** Keeps the address and the bench in step while the page is open. */

import { useEffect } from "preact/hooks";
import type { LinkView, LinkWorld } from "../../scene/index.ts";
import type { Bench, Opened } from "../state/bench.ts";
import { demoScene } from "../state/demo-scenes.ts";
import type { Asked } from "./address-mark.ts";
import { followAddress } from "./follow-address.ts";
import { type LinkRead, readLink } from "./read-link.ts";

export interface AddressUse {
  readonly bench: Bench;
  readonly world: LinkWorld;
  /** The scene that a bare address opens. */
  readonly home: Opened["asOpened"];
  readonly view?: () => LinkView | null;
  /** Whether something else than the bench fills the page. */
  readonly isAway?: () => boolean;
  /** A person put the mark of another scene into the address: here it is, or what is wrong with it. */
  readonly onRead: (read: AskedRead) => void;
}

export type AskedRead =
  | LinkRead
  | { readonly ok: true; readonly name: string; readonly origin: "demo"; readonly scene: Opened["scene"] };

/** The piece of the chart that a link was made of; null for none. */
export const viewIn = (
  read: { readonly ok: boolean; readonly view?: LinkView | null } | null,
): LinkView | null => read?.view ?? null;

/** The scene that an address asks for; null when it asks for none. */
export async function readAsked(asked: Asked, world: LinkWorld): Promise<AskedRead | null> {
  switch (asked.kind) {
    case "nothing":
      return null;
    case "demo": {
      const { key, scene } = demoScene(asked.key);
      return { ok: true, name: key, origin: "demo", scene };
    }
    case "link":
      return readLink(asked.text, world);
  }
}

export function useAddress({ bench, world, home, view, isAway, onRead }: AddressUse): void {
  useEffect(
    () =>
      followAddress({
        bench,
        world,
        home,
        ...(view === undefined ? {} : { view }),
        ...(isAway === undefined ? {} : { isAway }),
        onAsked: async (asked) => {
          const read = await readAsked(asked, world);
          if (read !== null) onRead(read);
        },
      }),
    [bench, world, home],
  );
}
