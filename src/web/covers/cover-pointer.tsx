/**
 * Covering by pointing: while it is on, a press on a thing covers it and a press on a strip lifts it, and no other hand works on the table.
 * While it is off, a press on a strip asks about what lies under it.
 */

import type { JSX } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import type { Bench } from "../state/bench.ts";
import { askingOf } from "./asking.ts";
import { coverWords } from "./cover-words.ts";
import { type PageCover, pageCoverAt, stripAt } from "./coverables-on-page.ts";

/** A press that moved farther than this is a drag, px. */
const STILL_WITHIN_PX = 6;

/** Where presses are taken: the table, but for the card that asks. */
const isOnTable = ({ target }: Event): boolean =>
  target instanceof Element && target.closest(".table") !== null;

export function CoverPointer({ bench }: { readonly bench: Bench }): JSX.Element | null {
  const asking = askingOf(bench);
  const pointing = asking.pointing.value;
  const [under, setUnder] = useState<PageCover | null>(null);
  const [done, setDone] = useState("");
  useAskedByStrip(bench, !pointing);
  useEffect(() => {
    if (!pointing) return;
    setUnder(null);
    setDone("");
    const listening = new AbortController();
    const options = { signal: listening.signal, capture: true };
    const find = (event: MouseEvent) =>
      isOnTable(event) ? pageCoverAt(event.clientX, event.clientY, bench.scene.peek().covers) : null;
    const hold = (event: Event) => {
      if (!isOnTable(event)) return;
      event.preventDefault();
      event.stopPropagation();
    };
    const end = () => {
      asking.pointing.value = false;
    };
    addEventListener("pointermove", (event) => setUnder(find(event)), options);
    for (const kind of ["pointerdown", "mousedown", "wheel", "dblclick"] as const)
      addEventListener(kind, hold, { ...options, passive: false });
    addEventListener(
      "click",
      (event) => {
        hold(event);
        const found = find(event);
        if (found === null) return;
        const { cover } = found;
        const lift = bench.scene.peek().covers.includes(cover);
        bench.act({ kind: lift ? "lift-cover" : "put-cover", cover });
        setDone(`${coverWords(cover)}: ${lift ? "lifted" : "covered"}`);
        setUnder(null);
      },
      options,
    );
    addEventListener(
      "keydown",
      (event) => {
        if (event.key !== "Escape") return;
        event.preventDefault();
        event.stopPropagation();
        end();
      },
      options,
    );
    return () => listening.abort();
  }, [pointing, bench, asking]);
  if (!pointing) return null;
  return (
    <>
      {under === null ? null : <Outline under={under} covers={bench.scene.value.covers} />}
      <section class="sheet pointing-note" aria-label="Covering by pointing">
        <p>Point at a thing to cover it, at a strip to lift it.</p>
        <p role="status">{done}</p>
        <button
          type="button"
          class="button"
          onClick={() => {
            asking.pointing.value = false;
          }}
        >
          Done
        </button>
      </section>
    </>
  );
}

/** Around what would be covered or lifted. */
function Outline({ under, covers }: { under: PageCover; covers: readonly string[] }): JSX.Element {
  const { cover, box } = under;
  return (
    <div
      class="cover-outline"
      aria-hidden="true"
      style={{
        left: `${box.left}px`,
        top: `${box.top}px`,
        width: `${box.width}px`,
        height: `${box.height}px`,
      }}
    >
      <span>
        {covers.includes(cover) ? "lift" : "cover"} {coverWords(cover)}
      </span>
    </div>
  );
}

/** A press on a strip turns to the card that asks about it. */
function useAskedByStrip(bench: Bench, on: boolean): void {
  const pressed = useRef({ x: 0, y: 0 });
  useEffect(() => {
    if (!on) return;
    const asking = askingOf(bench);
    const listening = new AbortController();
    const { signal } = listening;
    addEventListener(
      "pointerdown",
      ({ clientX: x, clientY: y }) => {
        pressed.current = { x, y };
      },
      { signal, capture: true },
    );
    addEventListener(
      "click",
      (event) => {
        const { clientX: x, clientY: y } = event;
        const moved = Math.hypot(x - pressed.current.x, y - pressed.current.y) > STILL_WITHIN_PX;
        // A press by key has no place.
        if (!isOnTable(event) || event.detail === 0 || moved) return;
        const strip = stripAt(x, y, bench.scene.peek().covers);
        if (strip === null) return;
        asking.ask(strip.cover);
        asking.call();
      },
      { signal },
    );
    return () => listening.abort();
  }, [bench, on]);
}
