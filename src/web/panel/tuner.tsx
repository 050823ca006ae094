/** Tunes one receiver: type a frequency or an ident, step through the channels, or pick a station. What is wrong is said in place. */

import type { JSX } from "preact";
import { useState } from "preact/hooks";
import { still } from "../../draw/index.ts";
import { frequencyText, type Station } from "../../radio/index.ts";
import { arrowStep } from "../input/arrow-step.ts";
import { useClearedByNextPress } from "../input/cleared-by-next-press.ts";
import { useWheel } from "../input/use-wheel.ts";
import { newGesture, stepGesture } from "../state/gestures.ts";
import { CoveredNote } from "./covered-note.tsx";
import { channelStepped, readTuning, stationsOn } from "./tuning.ts";

export interface TunerProps {
  /** The receiver's name. */
  readonly name: string;
  readonly frequencyMhz: number;
  readonly stations: readonly Station[];
  readonly covered: boolean;
  /** A covered ident hides which station is tuned, but not the frequency. */
  readonly identCovered: boolean;
  /** Lit by a step of the argument that speaks of it. */
  readonly lit: boolean;
  readonly onTune: (frequencyMhz: number, gesture: string) => void;
}

/** One megahertz is twenty steps of the channel plan. */
const BIG_STEP_CHANNELS = 20;

export const Tuner = still(function Tuner(props: TunerProps): JSX.Element {
  if (!props.covered) return <OpenTuner {...props} />;
  return (
    <div class="tuner">
      <span class="receiver-name">{props.name}</span>
      <CoveredNote what="frequency" />
    </div>
  );
});

function OpenTuner(props: TunerProps): JSX.Element {
  const { name, frequencyMhz, stations, identCovered, lit, onTune } = props;
  const [typed, setTyped] = useState<string | null>(null);
  const [refused, setRefused] = useState("");
  useClearedByNextPress(refused !== "", () => setRefused(""));
  const shown = frequencyText(frequencyMhz);
  const tune = (mhz: number, gesture: string) => {
    setTyped(null);
    setRefused("");
    onTune(mhz, gesture);
  };
  const take = (text: string) => {
    const read = readTuning(text, stations);
    setTyped(null);
    if (read.kind === "tune") tune(read.frequencyMhz, newGesture());
    else setRefused(read.sentence);
  };
  const step = (by: number) => tune(channelStepped(frequencyMhz, by), stepGesture(`${name} frequency`));
  const onWheel = useWheel({ stepBy: 1, bigStepBy: BIG_STEP_CHANNELS }, step);
  const id = `${name}-frequency`;
  return (
    <div class="tuner" data-part="frequency" data-lit={lit}>
      <label class="receiver-name" for={id}>
        {name}
      </label>
      <input
        id={id}
        class="number-input frequency"
        type="text"
        inputMode="decimal"
        autocomplete="off"
        autocapitalize="characters"
        spellcheck={false}
        aria-label={`${name} frequency`}
        aria-invalid={refused !== ""}
        aria-describedby={`${id}-note`}
        value={typed ?? shown}
        onFocus={(event) => event.currentTarget.select()}
        onInput={(event) => setTyped(event.currentTarget.value)}
        onBlur={() => {
          if (typed !== null && typed !== shown) take(typed);
        }}
        onWheel={onWheel}
        onKeyDown={(event) => {
          if (event.key === "Enter") {
            take(typed ?? shown);
            event.currentTarget.select();
          } else if (event.key === "Escape") {
            setTyped(null);
            setRefused("");
          } else if (
            event.key.startsWith("Arrow") &&
            event.key !== "ArrowLeft" &&
            event.key !== "ArrowRight"
          ) {
            const by = arrowStep(event, 1, BIG_STEP_CHANNELS);
            if (by === null) return;
            event.preventDefault();
            step(by);
          }
        }}
      />
      {identCovered ? null : (
        <StationPick name={name} frequencyMhz={frequencyMhz} stations={stations} onPick={tune} />
      )}
      <p class="fault" id={`${id}-note`} role="status">
        {refused === "" ? null : `${refused}. Still on ${shown}.`}
      </p>
    </div>
  );
}

interface StationPickProps {
  readonly name: string;
  readonly frequencyMhz: number;
  readonly stations: readonly Station[];
  readonly onPick: (frequencyMhz: number, gesture: string) => void;
}

function StationPick({ name, frequencyMhz, stations, onPick }: StationPickProps): JSX.Element {
  const on = stationsOn(frequencyMhz, stations);
  const chosen = on[0]?.ident ?? "";
  return (
    <span class="station-pick">
      <span aria-hidden="true">
        <b>{on[0]?.ident ?? "none"}</b> {on[0]?.name ?? ""}
      </span>
      <select
        aria-label={`${name} station`}
        value={chosen}
        onChange={(event) => {
          const ident = event.currentTarget.value;
          const station = stations.find((known) => known.ident === ident);
          if (station !== undefined) onPick(station.frequencyMhz, newGesture());
        }}
      >
        {chosen === "" ? (
          <option value="" disabled>
            no station
          </option>
        ) : null}
        {stations.map((station) => (
          <option key={station.ident} value={station.ident}>
            {station.ident} {station.name}, {frequencyText(station.frequencyMhz)}
          </option>
        ))}
      </select>
    </span>
  );
}
