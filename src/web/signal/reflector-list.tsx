/** The reflectors of a scene in a list, each with its place, its amplitude at hand, and what takes it away. */

import type { JSX } from "preact";
import { reflectorsCovered } from "../../draw/index.ts";
import type { Reflector } from "../../panel/index.ts";
import { MOST_REFLECTORS, REFLECTOR_AMPLITUDE } from "../../scene/index.ts";
import { readWithin } from "../input/read-number.ts";
import { Stepper } from "../input/stepper.tsx";
import { CoveredNote } from "../panel/covered-note.tsx";
import type { Bench } from "../state/bench.ts";
import { newGesture, stepGesture } from "../state/gestures.ts";
import { stationsThatEcho } from "../state/signal-actions.ts";
import { reflectorPlace } from "./reflector-form.ts";

export const NEW_REFLECTOR_ID = "new-reflector";

export interface ReflectorListProps {
  readonly bench: Bench;
  readonly reflectors: readonly Reflector[];
  /** The place of one in the list, or null for a new one. */
  readonly onEdit: (index: number | null) => void;
}

export function ReflectorList({ bench, reflectors, onEdit }: ReflectorListProps): JSX.Element {
  const scene = bench.scene.value;
  if (reflectorsCovered(scene)) return <CoveredNote what="reflectors" />;
  const full = reflectors.length >= MOST_REFLECTORS;
  const none = stationsThatEcho(scene).length === 0;
  return (
    <>
      {reflectors.length === 0 ? (
        <p class="note">None. A hangar, a ridge or a wind turbine throws a signal back and bends it.</p>
      ) : (
        <ul class="reflectors">
          {reflectors.map((reflector, index) => (
            <Row key={index} {...{ bench, reflector, index, onEdit }} />
          ))}
        </ul>
      )}
      <div class="tool-buttons">
        <button
          type="button"
          class="button"
          id={NEW_REFLECTOR_ID}
          disabled={full || none}
          onClick={() => onEdit(null)}
        >
          New reflector
        </button>
      </div>
      {full ? <p class="note">A scene has at most {MOST_REFLECTORS}.</p> : null}
      {none ? (
        <p class="note">No station of this scene has radials to throw back; add one under Place.</p>
      ) : null}
    </>
  );
}

interface RowProps extends Pick<ReflectorListProps, "bench" | "onEdit"> {
  readonly reflector: Reflector;
  readonly index: number;
}

function Row({ bench, reflector, index, onEdit }: RowProps): JSX.Element {
  const { stations } = bench.scene.value;
  const place = reflectorPlace(reflector, stations);
  const { amplitude, ident } = reflector;
  const set = (to: number, gesture: string) =>
    bench.act({ kind: "change-reflector", index, reflector: { ...reflector, amplitude: to } }, gesture);
  return (
    <li>
      <span class="reflector-place">
        <b>{place}</b>
        {place.startsWith(`${ident} `) ? null : <span class="note"> throws back {ident}</span>}
      </span>
      <span class="reflector-acts">
        <button type="button" class="button" aria-label={`Change ${place}`} onClick={() => onEdit(index)}>
          Change
        </button>
        <button
          type="button"
          class="button"
          aria-label={`Remove ${place}`}
          onClick={() => {
            bench.act({ kind: "remove-reflector", index }, newGesture());
            // The button goes with its reflector.
            document.getElementById(NEW_REFLECTOR_ID)?.focus();
          }}
        >
          Remove
        </button>
      </span>
      <Stepper
        id={`reflector-${index}-amplitude`}
        name={`${place} amplitude`}
        caption="amplitude"
        shown={String(amplitude)}
        widthCh={6}
        decimals
        now={amplitude}
        lowest={REFLECTOR_AMPLITUDE.min}
        highest={REFLECTOR_AMPLITUDE.max}
        stepBy={0.05}
        bigStepBy={0.1}
        stepWords="0.05"
        read={(text) => readWithin(text, REFLECTOR_AMPLITUDE)}
        onSet={(to) => set(to, newGesture())}
        onStep={(by) => set(amplitude + by, stepGesture(`reflector ${index} amplitude`))}
      />
    </li>
  );
}
