/** Recent work, kept in this browser and nowhere else: at most twelve scenes, the newest first. */

import { type ReadonlySignal, signal } from "@preact/signals";
import { MOST_ENTRIES, type RecentEntry, recentFrom, recentText } from "./recent-entry.ts";

export interface Recent {
  readonly entries: ReadonlySignal<readonly RecentEntry[]>;
  /** Puts the entry first, in the place of one with the same id or the same work. */
  readonly keep: (entry: RecentEntry) => void;
  readonly forget: (id: string) => void;
  readonly forgetAll: () => void;
}

/** The part of `localStorage` that is used. */
export type Store = Pick<Storage, "getItem" | "setItem" | "removeItem">;

export const RECENT_KEY = "needlework.recent";

/**
 * The recent work of this browser. Where its store is refused, full or spoilt, less is remembered and nothing else happens. Other
 * pages of the bench are followed: what one of them keeps or forgets, this one shows.
 */
export function createRecent(store: Store | null = browserStore()): Recent {
  const read = (): readonly RecentEntry[] => {
    try {
      return recentFrom(store?.getItem(RECENT_KEY) ?? null);
    } catch {
      return [];
    }
  };
  const entries = signal(read());
  const put = (next: readonly RecentEntry[]) => {
    entries.value = store === null ? next : written(store, next);
  };
  if (typeof addEventListener === "function")
    addEventListener("storage", (event) => {
      // A null key: the whole store was emptied.
      if (event.key === RECENT_KEY || event.key === null) entries.value = read();
    });
  // Read anew each time: another page may have written since.
  const present = () => (store === null ? entries.value : read());
  return {
    entries,
    keep: (entry) => {
      const work = JSON.stringify(entry.work);
      const others = present().filter(
        ({ id, work: other }) => id !== entry.id && JSON.stringify(other) !== work,
      );
      put([entry, ...others].slice(0, MOST_ENTRIES));
    },
    forget: (id) => put(present().filter((entry) => entry.id !== id)),
    forgetAll: () => put([]),
  };
}

/** Writes as many of the entries as the store takes, the oldest left out first, and gives those. */
function written(store: Store, entries: readonly RecentEntry[]): readonly RecentEntry[] {
  for (let count = entries.length; count > 0; count--)
    try {
      const kept = entries.slice(0, count);
      store.setItem(RECENT_KEY, recentText(kept));
      return kept;
    } catch {
      // Full: an older entry goes.
    }
  try {
    store.removeItem(RECENT_KEY);
  } catch {
    // A private window: nothing was kept there in the first place.
  }
  return [];
}

/** Null where the browser refuses its store to this page. */
function browserStore(): Store | null {
  try {
    return localStorage;
  } catch {
    return null;
  }
}
