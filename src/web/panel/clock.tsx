/** The clock on the panel: T starts and stops it, Shift T brings it back to nothing, and so do its buttons. */

import type { JSX } from "preact";
import { useEffect } from "preact/hooks";
import type { Bench } from "../state/bench.ts";
import { clockOf, type FlightTime } from "./clock-state.ts";
import { minutesSeconds, minutesSecondsSpoken } from "./stopwatch.ts";

export interface ClockProps {
  readonly bench: Bench;
  /** Null where nothing flies. */
  readonly flight: FlightTime | null;
}

/** Often enough that a second never comes late by more than the eye allows. */
const LOOK_EVERY_MS = 100;

export function Clock({ bench, flight }: ClockProps): JSX.Element {
  const clock = clockOf(bench);
  const running = clock.running.value;
  const seconds = clock.wholeS.value;
  useEffect(() => {
    if (!running) return;
    const timer = setInterval(() => clock.look(performance.now(), flight), LOOK_EVERY_MS);
    return () => clearInterval(timer);
  }, [clock, flight, running]);
  const startOrStop = () => clock.startOrStop(performance.now(), flight);
  const reset = () => clock.reset(performance.now(), flight);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey || event.repeat) return;
      if (event.key.toLowerCase() !== "t" || isTypedInto(event.target)) return;
      event.preventDefault();
      if (event.shiftKey) clock.reset(performance.now(), flight);
      else clock.startOrStop(performance.now(), flight);
    };
    addEventListener("keydown", onKey);
    return () => removeEventListener("keydown", onKey);
  }, [clock, flight]);
  return (
    <fieldset class="clock" aria-label="Clock">
      <span class="clock-time digits" role="timer" aria-label={`Clock, ${minutesSecondsSpoken(seconds)}`}>
        {minutesSeconds(seconds)}
      </span>
      <span class="clock-buttons">
        <button type="button" class="button" title="Key T" aria-keyshortcuts="T" onClick={startOrStop}>
          {running ? "Stop" : "Start"}
        </button>
        <button type="button" class="button" title="Key Shift T" aria-keyshortcuts="Shift+T" onClick={reset}>
          Reset
        </button>
      </span>
    </fieldset>
  );
}

/** Where a T is a letter: a text, a list that is searched by letters, or a dialog with business of its own. */
const isTypedInto = (target: EventTarget | null): boolean =>
  target instanceof Element && target.closest("input, textarea, select, [contenteditable], dialog") !== null;
