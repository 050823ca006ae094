/** The controls of time, in one row under the chart: play, step, how fast, where in the flight; and behind "More" orders and history. */

import type { JSX } from "preact";
import { type Theme, timeWords } from "../../draw/index.ts";
import { later } from "../frame/later.tsx";
import type { Bench } from "../state/bench.ts";
import { remembered } from "../state/preferences.ts";
import type { MotionMoreProps } from "./motion-more.tsx";
import { Pace } from "./pace.tsx";
import type { Player } from "./player.ts";

export interface MotionBarProps {
  readonly bench: Bench;
  readonly player: Player;
  readonly theme: Theme;
  readonly typeScale?: number;
  /** On a phone: one short row, the rest behind "More". */
  readonly compact?: boolean;
}

/** Orders and the plot of what has been. */
const more = later<MotionMoreProps>(async () => (await import("./motion-more.tsx")).MotionMore);

const moreOpen = remembered<boolean>(
  "motion-more",
  false,
  (text) => text === "open",
  (open) => (open ? "open" : "shut"),
);

export function MotionBar({
  bench,
  player,
  theme,
  typeScale = 1,
  compact = false,
}: MotionBarProps): JSX.Element {
  const playing = player.playing.value;
  const open = moreOpen.value;
  return (
    <section class="motion" aria-label="Motion" data-compact={compact}>
      {open ? (
        <more.Part bench={bench} player={player} theme={theme} typeScale={typeScale}>
          {compact ? <Pace player={player} /> : null}
        </more.Part>
      ) : null}
      <div class="motion-row">
        <button
          type="button"
          class="button motion-play"
          aria-keyshortcuts="Space"
          title="Space"
          onClick={playing ? player.pause : player.play}
        >
          <PlaySign playing={playing} />
          {playing ? "Pause" : "Play"}
        </button>
        {compact ? null : <Pace player={player} />}
        <Scrubber player={player} />
        <button
          type="button"
          class="button"
          aria-expanded={open}
          aria-label="More of the flight"
          title="Turns, climbs and what the needle has shown"
          onClick={() => {
            moreOpen.value = !open;
          }}
        >
          More
        </button>
      </div>
    </section>
  );
}

const PlaySign = ({ playing }: { readonly playing: boolean }): JSX.Element => (
  <svg class="motion-sign" width="12" height="12" viewBox="0 0 12 12" aria-hidden="true">
    <path d={playing ? "M2 1h3v10H2zM7 1h3v10H7z" : "M2.5 0.8L11 6L2.5 11.2z"} fill="currentColor" />
  </svg>
);

/** Where in the flight the bench is, and the hand that goes back along it. */
function Scrubber({ player }: { readonly player: Player }): JSX.Element {
  const nowS = player.nowS.value;
  const endS = player.endS.value;
  const startS = player.log.value[0]?.timeS ?? 0;
  const flown = endS > startS;
  const words = timeWords(nowS);
  return (
    <div class="motion-scrub">
      <input
        type="range"
        aria-label="Time of the flight"
        aria-valuetext={words}
        min={Math.floor(startS)}
        max={flown ? Math.ceil(endS) : 1}
        step={1}
        value={flown ? (nowS === endS ? Math.ceil(nowS) : nowS) : 0}
        disabled={!flown}
        onInput={(event) => player.scrubTo(Number(event.currentTarget.value))}
      />
      <output class="motion-time">
        {words}
        {nowS < endS ? <span class="note"> of {timeWords(endS)}</span> : null}
      </output>
    </div>
  );
}
