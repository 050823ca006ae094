/** Home or the bench: which of the two fills the page. Home has its own place in the address and in the browser's history. */

import { type ReadonlySignal, signal } from "@preact/signals";

export const HOME_MARK = "#home";

export interface Screen {
  readonly isHome: ReadonlySignal<boolean>;
  readonly goHome: () => void;
  /** To the bench as it stands. */
  readonly leaveHome: () => void;
}

const bareAddress = (): string => location.pathname + location.search;

export function createScreen(): Screen {
  const isHome = signal(location.hash === HOME_MARK);
  addEventListener("popstate", () => {
    isHome.value = location.hash === HOME_MARK;
  });
  return {
    isHome,
    goHome: () => {
      if (location.hash !== HOME_MARK) history.pushState(null, "", bareAddress() + HOME_MARK);
      isHome.value = true;
    },
    leaveHome: () => {
      // The bench writes its own mark there.
      if (location.hash === HOME_MARK) history.pushState(null, "", bareAddress());
      isHome.value = false;
    },
  };
}
