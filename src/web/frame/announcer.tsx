/** Says the faces to a screen reader once they have settled: not while the hand is still turning. */

import type { JSX } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import { faceSentence } from "../../draw/index.ts";
import type { Bench } from "../state/bench.ts";

const SETTLED_AFTER_MS = 900;
const BETWEEN = "\n";

export function Announcer({ bench }: { readonly bench: Bench }): JSX.Element {
  const situation = bench.situation.value;
  const covers = situation.scene.covers;
  const said = useRef<readonly string[]>([]);
  const [news, setNews] = useState("");
  const now = situation.receivers.map((reading) => faceSentence(reading, covers)).join(BETWEEN);
  // What has been said may be what has just been covered.
  useEffect(() => setNews(""), [covers]);
  useEffect(() => {
    const timer = setTimeout(() => {
      const sentences = now.split(BETWEEN);
      const before = said.current;
      said.current = sentences;
      // Only what changed: the other receivers' faces have been heard.
      const changed = sentences.filter((sentence, index) => sentence !== before[index]);
      if (changed.length > 0) setNews(changed.join(" "));
    }, SETTLED_AFTER_MS);
    return () => clearTimeout(timer);
  }, [now]);
  return (
    <div class="unseen" role="status" aria-live="polite" aria-label="Instruments">
      {news}
    </div>
  );
}
