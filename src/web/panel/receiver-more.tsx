/** What is seldom wanted of a receiver, behind a word: its own error, and receivers coming and going. */

import type { JSX } from "preact";
import { useEffect, useLayoutEffect, useRef, useState } from "preact/hooks";
import { still } from "../../draw/index.ts";
import type { ReceiverSettings } from "../../panel/index.ts";
import { readError, signedDegrees } from "../input/read-error.ts";
import { Stepper } from "../input/stepper.tsx";
import type { Bench } from "../state/bench.ts";
import { newGesture, stepGesture } from "../state/gestures.ts";
import { LARGEST_ERROR_DEG, MOST_RECEIVERS } from "../state/receiver-actions.ts";
import { CoveredNote } from "./covered-note.tsx";

export interface ReceiverMoreProps {
  readonly bench: Bench;
  readonly settings: ReceiverSettings;
  /** Beside a covered needle the error would tell a part of it. */
  readonly errorCovered: boolean;
}

/** Kept free at the edges of the window, px. */
const EDGE_PX = 8;

export const ReceiverMore = still(function ReceiverMore(props: ReceiverMoreProps): JSX.Element {
  const { bench, settings, errorCovered } = props;
  const { name } = settings;
  const [open, setOpen] = useState(false);
  const holder = useRef<HTMLDivElement>(null);
  const button = useRef<HTMLButtonElement>(null);
  const slip = useRef<HTMLFieldSetElement>(null);
  // On the top layer, where no sheet cuts it off.
  useLayoutEffect(() => {
    if (!open || slip.current === null || button.current === null) return;
    slip.current.showPopover();
    const under = button.current.getBoundingClientRect();
    const { offsetWidth, offsetHeight } = slip.current;
    slip.current.style.left = `${Math.max(EDGE_PX, Math.min(under.right, innerWidth - EDGE_PX) - offsetWidth)}px`;
    slip.current.style.top = `${Math.min(under.bottom, innerHeight - EDGE_PX - offsetHeight)}px`;
  }, [open]);
  useEffect(() => {
    if (!open) return;
    const listening = new AbortController();
    const options = { signal: listening.signal, capture: true };
    const onElsewhere = ({ target }: Event) => {
      if (target instanceof Node && holder.current?.contains(target) !== true) setOpen(false);
    };
    addEventListener("pointerdown", onElsewhere, options);
    addEventListener("focusin", onElsewhere, options);
    addEventListener(
      "keydown",
      ({ key }) => {
        if (key !== "Escape") return;
        setOpen(false);
        button.current?.focus();
      },
      options,
    );
    return () => listening.abort();
  }, [open]);
  const id = `${name}-more`;
  return (
    <div class="receiver-more" ref={holder}>
      <button
        type="button"
        class="quiet"
        ref={button}
        aria-label={`More of ${name}`}
        aria-expanded={open}
        aria-controls={open ? id : undefined}
        onClick={() => setOpen(!open)}
      >
        More
      </button>
      {open ? (
        <fieldset class="sheet more-slip" ref={slip} id={id} popover="manual" aria-label={`${name}, more`}>
          {errorCovered ? (
            <CoveredNote what="receiver error" />
          ) : (
            <ErrorStepper bench={bench} settings={settings} />
          )}
          <p class="note">Added to every bearing {name} measures, as a receiver check would find it.</p>
          <Coming bench={bench} name={name} onDone={() => setOpen(false)} />
        </fieldset>
      ) : null}
    </div>
  );
});

function ErrorStepper({ bench, settings }: Pick<ReceiverMoreProps, "bench" | "settings">): JSX.Element {
  const { name, bearingErrorDeg } = settings;
  const set = (errorDeg: number, gesture: string) =>
    bench.act({ kind: "set-bearing-error", receiver: name, errorDeg }, gesture);
  return (
    <Stepper
      id={`${name}-error`}
      name={`${name} error`}
      caption="error"
      shown={signedDegrees(bearingErrorDeg)}
      unit="°"
      widthCh={5}
      now={bearingErrorDeg}
      lowest={-LARGEST_ERROR_DEG}
      highest={LARGEST_ERROR_DEG}
      stepBy={1}
      bigStepBy={5}
      stepWords="1 degree"
      read={(text) => readError(text, LARGEST_ERROR_DEG)}
      onSet={(errorDeg) => set(errorDeg, newGesture())}
      onStep={(byDeg) => set(bearingErrorDeg + byDeg, stepGesture(`${name} error`))}
    />
  );
}

interface ComingProps {
  readonly bench: Bench;
  readonly name: string;
  readonly onDone: () => void;
}

/** One more receiver, or this one gone. */
function Coming({ bench, name, onDone }: ComingProps): JSX.Element {
  const { receivers } = bench.scene.value;
  const full = receivers.length >= MOST_RECEIVERS;
  const last = receivers.length === 1;
  return (
    <div class="more-buttons">
      <button
        type="button"
        class="button"
        disabled={full}
        title={full ? `A panel holds ${MOST_RECEIVERS} receivers` : undefined}
        onClick={() => {
          bench.act({ kind: "add-receiver" });
          onDone();
        }}
      >
        Add a receiver
      </button>
      <button
        type="button"
        class="button"
        disabled={last}
        title={last ? "The panel's last receiver stays" : undefined}
        onClick={() => {
          bench.act({ kind: "remove-receiver", receiver: name });
          onDone();
        }}
      >
        Remove {name}
      </button>
    </div>
  );
}
