/** The clock of one bench: a stopwatch fed with what goes by, in real time or in the flight's. It outlives the panel that shows it. */

import { computed, type ReadonlySignal, signal } from "@preact/signals";
import type { Player } from "../motion/player.ts";
import type { Bench } from "../state/bench.ts";
import { AT_REST, counted, reset, type Stopwatch, started, stopped } from "./stopwatch.ts";

/** What the clock asks of the bench in motion. */
export type FlightTime = Pick<Player, "playing" | "nowS" | "endS">;

export interface Clock {
  readonly running: ReadonlySignal<boolean>;
  readonly wholeS: ReadonlySignal<number>;
  /** Looks how much has gone by. `nowMs` counts real time from anywhere. */
  readonly look: (nowMs: number, flight: FlightTime | null) => void;
  readonly startOrStop: (nowMs: number, flight: FlightTime | null) => void;
  readonly reset: (nowMs: number, flight: FlightTime | null) => void;
}

export function createClock(): Clock {
  const watch = signal<Stopwatch>(AT_REST);
  let seenMs = 0;
  let seenFlightS = 0;
  const look = (nowMs: number, flight: FlightTime | null) => {
    const flightNowS = flight?.nowS.value ?? 0;
    // Another flight began: its time starts anew.
    const another = (flight?.endS.value ?? 0) < seenFlightS;
    const flightS = another ? 0 : flightNowS - seenFlightS;
    const playing = flight?.playing.value ?? false;
    watch.value = counted(watch.value, { realS: (nowMs - seenMs) / 1000, flightS, playing });
    seenMs = nowMs;
    seenFlightS = flightNowS;
  };
  return {
    running: computed(() => watch.value.running),
    wholeS: computed(() => Math.floor(watch.value.countedS)),
    look,
    startOrStop: (nowMs, flight) => {
      look(nowMs, flight);
      watch.value = watch.value.running ? stopped(watch.value) : started(watch.value);
    },
    reset: (nowMs, flight) => {
      look(nowMs, flight);
      watch.value = reset(watch.value);
    },
  };
}

const clocks = new WeakMap<Bench, Clock>();

/** The bench's clock; the same one whenever asked. */
export function clockOf(bench: Bench): Clock {
  const clock = clocks.get(bench) ?? createClock();
  clocks.set(bench, clock);
  return clock;
}
