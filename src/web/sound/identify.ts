/**
 * Identify: listening to one receiver at a time. It ends at a second press, when the receiver is tuned elsewhere, when
 * its ident is covered, when another scene comes onto the bench. A covered ident does not sound at all: hearing it would
 * be reading it. A covered frequency sounds, since hearing is then the way to the answer (see `ident-words.ts`).
 */

import {
  batch,
  computed,
  effect,
  type ReadonlySignal,
  type Signal,
  signal,
  untracked,
} from "@preact/signals";
import { coveredParts } from "../../draw/index.ts";
import type { ReceiverReading } from "../../panel/index.ts";
import type { Scene } from "../../scene/index.ts";
import type { Bench } from "../state/bench.ts";
import { hissLevel, onChannel } from "./on-channel.ts";
import { soundVolume } from "./sound-volume.ts";
import type { Speaker } from "./speaker.ts";

/** Why nothing is heard although something is on: no Web Audio here, the sound's code did not arrive, the browser forbids it. */
export type Mute = "no-web-audio" | "not-loaded" | "held-back";

export interface Identify {
  /** Name of the receiver that is listened to. */
  readonly playing: ReadonlySignal<string | null>;
  /** Seconds of what is on its channel that have been heard. */
  readonly elapsedS: ReadonlySignal<number>;
  readonly mute: ReadonlySignal<Mute | null>;
  /** 0 to 100, kept across visits. */
  readonly volumePercent: Signal<number>;
  /** Begins to listen to a receiver, or stops. Nothing happens where its ident is covered. */
  readonly toggle: (receiver: string) => void;
  readonly stop: () => void;
  /** Stops, and lets go of the bench for good. */
  readonly close: () => void;
}

/** What was chosen to be listened to; when any of it changes the listening is over. */
interface Listening {
  readonly receiver: string;
  readonly frequencyMhz: number;
  readonly scene: Scene;
}

/** A browser that has not let the sound begin by then holds it back. */
const HELD_BACK_AFTER_MS = 700;

export function createIdentify(bench: Bench): Identify {
  const listening = signal<Listening | null>(null);
  const playing = computed(() => listening.value?.receiver ?? null);
  const elapsedS = signal(0);
  const mute = signal<Mute | null>(null);
  const volumePercent = soundVolume();
  let context: AudioContext | null = null;
  let speaker: Speaker | null = null;
  let loading = false;
  let closed = false;
  /** When the listening began by the page's clock, for where no sound keeps the time. */
  let beganMs = 0;

  const audible = (receiver: string): ReceiverReading | null => {
    const { scene, receivers } = bench.situation.value;
    if (coveredParts(receiver, scene.covers).has("ident")) return null;
    return receivers.find(({ settings }) => settings.name === receiver) ?? null;
  };
  const stillHeard = ({ receiver, frequencyMhz, scene }: Listening): ReceiverReading | null => {
    const reading = audible(receiver);
    const same = reading?.settings.frequencyMhz === frequencyMhz && bench.opened.value.asOpened === scene;
    return same ? reading : null;
  };
  const reading = computed(() => (listening.value === null ? null : stillHeard(listening.value)));
  // Written out, so that it changes only when what is keyed does, not with every move of the aircraft.
  const keyed = computed(() =>
    reading.value === null ? null : JSON.stringify([playing.value, onChannel(reading.value)]),
  );

  const begin = () => {
    const heard = untracked(() => reading.value);
    if (heard === null) return;
    beganMs = performance.now();
    elapsedS.value = 0;
    speaker?.play(onChannel(heard), hissLevel(heard.signal));
  };

  /** In the press itself: browsers let sound begin then and only then. The rest may come a moment later. */
  const openSpeaker = () => {
    if (typeof AudioContext === "undefined") {
      mute.value = "no-web-audio";
      return;
    }
    context ??= new AudioContext();
    const opened = context;
    void opened.resume();
    if (loading || speaker !== null) return;
    loading = true;
    mute.value = null;
    void import("./speaker.ts").then(
      ({ createSpeaker }) => {
        if (closed) return;
        speaker = createSpeaker(opened, volumePercent.peek());
        begin();
      },
      () => {
        loading = false;
        mute.value = "not-loaded";
      },
    );
  };

  const stop = () => {
    listening.value = null;
  };

  const ends = [
    effect(() => {
      // Tuned away, covered, or another scene: over.
      if (listening.value !== null && reading.value === null) stop();
    }),
    effect(() => {
      if (keyed.value === null) speaker?.hush();
      else begin();
    }),
    effect(() => {
      if (reading.value !== null) speaker?.setHiss(hissLevel(reading.value.signal));
    }),
    effect(() => {
      const percent = volumePercent.value;
      speaker?.setVolume(percent);
    }),
    effect(() => {
      if (playing.value === null) return;
      let frame = requestAnimationFrame(function onFrame() {
        const pageS = (performance.now() - beganMs) / 1000;
        const heardS = speaker?.heardS() ?? null;
        if (context !== null && speaker !== null)
          mute.value = heardS === null && pageS > HELD_BACK_AFTER_MS / 1000 ? "held-back" : null;
        elapsedS.value = heardS ?? pageS;
        frame = requestAnimationFrame(onFrame);
      });
      return () => cancelAnimationFrame(frame);
    }),
  ];

  return {
    playing,
    elapsedS,
    mute,
    volumePercent,
    stop,
    toggle: (receiver) => {
      if (listening.peek()?.receiver === receiver) return stop();
      const heard = untracked(() => audible(receiver));
      if (heard === null) return;
      openSpeaker();
      batch(() => {
        elapsedS.value = 0;
        listening.value = {
          receiver,
          frequencyMhz: heard.settings.frequencyMhz,
          scene: bench.opened.peek().asOpened,
        };
      });
    },
    close: () => {
      closed = true;
      stop();
      for (const end of ends) end();
      void context?.close();
      context = null;
    },
  };
}
