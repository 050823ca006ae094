/** Home, practice or the bench: which of them fills the page. Home and practice have their own place in the address and in the browser's history. */

import { computed, type ReadonlySignal, signal } from "@preact/signals";

export const HOME_MARK = "#home";
export const PRACTICE_MARK = "#practice";
export const SETS_MARK = "#sets";

export interface Screen {
  readonly isHome: ReadonlySignal<boolean>;
  /** What practice was asked for: the code of a problem, the link of a set, or empty for its start. Null: it does not fill the page. */
  readonly practice: ReadonlySignal<string | null>;
  /** The instructor's desk, where problem sets are made. */
  readonly isSets: ReadonlySignal<boolean>;
  /** Something else than the bench fills the page. */
  readonly isAway: ReadonlySignal<boolean>;
  readonly goHome: () => void;
  readonly goPractise: () => void;
  /** To the bench as it stands. */
  readonly toBench: () => void;
}

const bareAddress = (): string => location.pathname + location.search;

/** A set's link stands in the address by itself, a problem's code after `practice=`. */
const practiceIn = (hash: string): string | null =>
  hash.startsWith("#p1.") ? hash : (/^#practice(?:=(.*))?$/.exec(hash)?.slice(1).join("") ?? null);

export function createScreen(): Screen {
  const mark = signal(location.hash);
  const isHome = computed(() => mark.value === HOME_MARK);
  const practice = computed(() => practiceIn(mark.value));
  const isSets = computed(() => mark.value === SETS_MARK);
  const isAway = computed(() => isHome.value || isSets.value || practice.value !== null);
  const follow = () => {
    mark.value = location.hash;
  };
  addEventListener("popstate", follow);
  const go = (wanted: string) => {
    if (location.hash !== wanted) history.pushState(null, "", bareAddress() + wanted);
    mark.value = wanted;
  };
  return {
    isHome,
    practice,
    isSets,
    isAway,
    goHome: () => go(HOME_MARK),
    goPractise: () => go(PRACTICE_MARK),
    toBench: () => {
      // The bench writes its own mark there.
      if (isAway.peek()) go("");
    },
  };
}
