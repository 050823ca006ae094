/** Parts of the page that are fetched when they are first drawn, or a little before. */

import type { FunctionComponent } from "preact";
import { useEffect, useState } from "preact/hooks";

export interface Later<P> {
  /** Nothing stands in its place until it has come. */
  readonly Part: FunctionComponent<P>;
  /** Fetches it, so that it stands at once when it is wanted. */
  readonly fetch: () => Promise<void>;
}

export function later<P>(load: () => Promise<FunctionComponent<P>>): Later<P> {
  let part: FunctionComponent<P> | null = null;
  let coming: Promise<void> | null = null;
  const fetch = (): Promise<void> => {
    coming ??= load().then((loaded) => {
      part = loaded;
    });
    return coming;
  };
  return {
    fetch,
    Part: (props) => {
      const [, drawAgain] = useState(part !== null);
      useEffect(() => {
        if (part === null) void fetch().then(() => drawAgain(true));
      }, []);
      const Loaded = part;
      return Loaded === null ? null : <Loaded {...(props as P & object)} />;
    },
  };
}
