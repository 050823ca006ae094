/**
 * The bench in motion: time runs, the aircraft flies its heading in the scene's wind, and what has been can be gone back to. The present
 * scene is the bench's own; the player carries it on, and follows whatever a hand changes meanwhile. From play to pause is one gesture.
 */

import { batch, computed, effect, type ReadonlySignal, signal, untracked } from "@preact/signals";
import type { TrailPoint } from "../../draw/index.ts";
import { type MagneticDeg, turnBetween } from "../../earth/index.ts";
import { type Flight, flyOn } from "../../flight/index.ts";
import { type Aircraft, resolver } from "../../scene/index.ts";
import type { Bench, Opened } from "../state/bench.ts";
import { newGesture, stepGesture } from "../state/gestures.ts";
import {
  cutAfter,
  type FlightLog,
  flightAt,
  inMicroseconds,
  type Moment,
  momentFrom,
  samePlace,
  trailOf,
  withMoment,
} from "./flight-log.ts";

/** How many seconds of flight go by in one of ours. */
export const SPEEDS = [1, 2, 5, 10, 20] as const;
export type Speed = (typeof SPEEDS)[number];

export interface Player {
  readonly playing: ReadonlySignal<boolean>;
  readonly speed: ReadonlySignal<Speed>;
  /** The time of the scene on the bench, seconds since the flight began. */
  readonly nowS: ReadonlySignal<number>;
  /** The latest time flown to; at least `nowS`. */
  readonly endS: ReadonlySignal<number>;
  readonly log: ReadonlySignal<FlightLog>;
  /** The places flown over up to the time shown, with the aircraft's own last. */
  readonly trail: ReadonlySignal<readonly TrailPoint[]>;
  /** What the aircraft has been told, and has not done yet. */
  readonly turningTo: ReadonlySignal<MagneticDeg | null>;
  readonly climbingToFt: ReadonlySignal<number | null>;
  readonly play: () => void;
  readonly pause: () => void;
  readonly setSpeed: (speed: Speed) => void;
  /** So many seconds of flight go by, while it plays. */
  readonly goOn: (stepS: number) => void;
  /** On by so many seconds, along what was flown and then beyond it; back by a negative number. Halts. */
  readonly stepBy: (stepS: number) => void;
  /** Shows the scene of a time that was flown through. Halts. */
  readonly scrubTo: (timeS: number) => void;
  readonly turnTo: (heading: MagneticDeg) => void;
  readonly climbTo: (altitudeFt: number) => void;
}

export function createPlayer(bench: Bench): Player {
  const playing = signal(false);
  const speed = signal<Speed>(1);
  const nowS = bench.clockS;
  const log = signal<FlightLog>([]);
  const turningTo = signal<MagneticDeg | null>(null);
  const climbingToFt = signal<number | null>(null);
  const endS = computed(() => Math.max(nowS.value, log.value.at(-1)?.timeS ?? 0));
  // Thinned anew once a second and not with every frame.
  const secondS = computed(() => Math.floor(nowS.value));
  const trailPast = computed(() => trailOf(cutAfter(log.value, secondS.value)));
  const stations = computed(() => bench.scene.value.stations);
  const land = computed(() => bench.scene.value.land);
  const resolve = computed(() => resolver(stations.value, land.value));
  /** The bench as the player last knew it: what differs from this was done by someone else. */
  let known = bench.opened.value;
  let gesture: string | null = null;
  /** When each aircraft that was put on the bench flew there: by this what is taken back is known again. */
  const times = new WeakMap<Aircraft, number>();

  const momentOf = (flight: Flight, timeS: number, of = bench.scene.value): Moment =>
    momentFrom(resolve.value({ ...of, aircraft: flight.aircraft }, timeS), flight, timeS);
  const flightOf = (aircraft: Aircraft): Flight => ({
    aircraft,
    turningTo: turningTo.value,
    climbingToFt: climbingToFt.value,
  });
  const flightNow = (): Flight => flightOf(bench.scene.value.aircraft);
  const remember = () => {
    log.value = withMoment(log.value, momentOf(flightNow(), nowS.value));
  };
  const order = (flight: Pick<Flight, "turningTo" | "climbingToFt">) => {
    turningTo.value = flight.turningTo;
    climbingToFt.value = flight.climbingToFt;
  };
  /** An order given here and now: from this moment on it bends what is flown. */
  const obey = (flight: Pick<Flight, "turningTo" | "climbingToFt">) =>
    batch(() => {
      order(flight);
      if (log.value.length > 0 && nowS.value >= endS.value) remember();
    });
  /** Changes the bench without taking it for another's doing. */
  const write = (change: () => void) =>
    batch(() => {
      change();
      known = bench.opened.value;
      times.set(known.scene.aircraft, nowS.value);
    });

  const flyFor = (stepS: number, put: (aircraft: Aircraft) => void) => {
    const air = bench.scene.value;
    let flight = flightNow();
    let atS = nowS.value;
    times.set(flight.aircraft, atS);
    // Here another flight begins, or what was flown later is dropped.
    const begins = log.value.length === 0 || atS < endS.value;
    let written = begins ? withMoment(log.value, momentOf(flight, atS)) : log.value;
    const untilS = inMicroseconds(atS + stepS);
    for (let nextS = Math.floor(atS) + 1; nextS <= untilS; nextS++) {
      flight = flyOn(flight, air, nextS - atS);
      atS = nextS;
      written = withMoment(written, momentOf(flight, atS));
    }
    flight = flyOn(flight, air, untilS - atS);
    write(() => {
      log.value = written;
      nowS.value = untilS;
      order(flight);
      put(flight.aircraft);
    });
  };

  const halt = () => {
    if (!playing.value) return;
    playing.value = false;
    remember();
  };
  const begin = (opened: Opened) => {
    known = opened;
    log.value = [];
    nowS.value = 0;
    order({ turningTo: null, climbingToFt: null });
  };

  /** What someone else did to the bench, as it bears on the flight. */
  const follow = (opened: Opened) => {
    if (opened === known) return;
    const before = known.scene;
    const [was, is] = [before.aircraft, opened.scene.aircraft];
    const another = opened.asOpened !== known.asOpened;
    known = opened;
    if (another) {
      playing.value = false;
      begin(opened);
      return;
    }
    if (samePlace(was, is)) {
      if (is.heading !== was.heading) turningTo.value = null;
      if (is.altitudeFt !== was.altitudeFt) climbingToFt.value = null;
      times.set(is, nowS.value);
      // At the end of what was flown, the change belongs to it; before the end, what was flown stays as it was. In flight the
      // receivers are remembered with the next second; only what bends the flight must be at once.
      const isEnd = log.value.length > 0 && nowS.value >= endS.value;
      if (isEnd && (is !== was || !playing.value)) remember();
      return;
    }
    const flownAt = timeOf(is);
    // A hand has put the aircraft elsewhere: another flight begins there. Else it was taken back, or brought again.
    if (flownAt === null) begin(opened);
    else {
      // A flight that is taken back before its end was remembered can still be brought again.
      if (playing.value) log.value = withMoment(log.value, momentOf(flightOf(was), nowS.value, before));
      playing.value = false;
      nowS.value = flownAt.timeS;
      order(flownAt);
    }
  };
  /** When the aircraft was there, in the flight as it is remembered now; null when it was not. */
  const timeOf = (aircraft: Aircraft): (Flight & { readonly timeS: number }) | null => {
    const timeS = times.get(aircraft);
    const flight = timeS === undefined ? null : flightAt(log.value, timeS);
    if (timeS === undefined || flight === null || timeS > endS.value) return null;
    return samePlace(flight.aircraft, aircraft) ? { ...flight, timeS } : null;
  };
  effect(() => {
    const opened = bench.opened.value;
    untracked(() => batch(() => follow(opened)));
  });

  const scrubTo = (timeS: number) => {
    halt();
    const startS = log.value[0]?.timeS ?? 0;
    const withinS = Math.min(endS.value, Math.max(startS, timeS));
    const flight = flightAt(log.value, withinS);
    if (flight === null || withinS === nowS.value) return;
    write(() => {
      nowS.value = withinS;
      order(flight);
      const { aircraft, wind, receivers } = flight;
      bench.act({ kind: "replay", aircraft, wind, receivers }, stepGesture("scrub"));
    });
  };
  const flyAs = (ofGesture: string) => (aircraft: Aircraft) =>
    bench.act({ kind: "fly", aircraft }, ofGesture);

  return {
    playing,
    speed,
    nowS,
    endS,
    log,
    trail: computed(() => [
      ...trailPast.value,
      { timeS: nowS.value, position: bench.scene.value.aircraft.position },
    ]),
    turningTo,
    climbingToFt,
    play: () => {
      if (playing.value) return;
      gesture = null;
      playing.value = true;
    },
    pause: () => batch(halt),
    setSpeed: (wanted) => {
      speed.value = wanted;
    },
    goOn: (stepS) => {
      if (!playing.value || stepS <= 0) return;
      // The first step of a flight is the entry that is taken back; the others carry it on.
      if (gesture === null) {
        gesture = newGesture();
        flyFor(stepS, flyAs(gesture));
      } else flyFor(stepS, (aircraft) => bench.carryOn({ kind: "fly", aircraft }));
    },
    stepBy: (stepS) => {
      halt();
      if (stepS < 0 || nowS.value < endS.value) {
        scrubTo(nowS.value + stepS);
        return;
      }
      flyFor(stepS, flyAs(stepGesture("flight step")));
      remember();
    },
    scrubTo,
    turnTo: (heading) => {
      const already = turnBetween(bench.scene.value.aircraft.heading, heading) === 0;
      obey({ turningTo: already ? null : heading, climbingToFt: climbingToFt.value });
    },
    climbTo: (altitudeFt) => {
      const already = altitudeFt === bench.scene.value.aircraft.altitudeFt;
      obey({ turningTo: turningTo.value, climbingToFt: already ? null : altitudeFt });
    },
  };
}
