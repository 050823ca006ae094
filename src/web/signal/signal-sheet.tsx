/** The signal of the scene on a small sheet: computed or measured, how the stations send, noise, propeller, reflectors. */

import type { JSX } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import type { Propeller, SignalConditions } from "../../panel/index.ts";
import { SIGNAL_KINDS, type SignalKind, TYPICAL_NOISE_DB } from "../../radio/index.ts";
import {
  beatsWith,
  isCovered,
  NOISE_DB,
  PROPELLER_BLADES,
  PROPELLER_SPEED_RPM,
  type Scene,
} from "../../scene/index.ts";
import { readWithin } from "../input/read-number.ts";
import { Stepper } from "../input/stepper.tsx";
import { CoveredNote } from "../panel/covered-note.tsx";
import type { Bench } from "../state/bench.ts";
import { newGesture, stepGesture } from "../state/gestures.ts";
import { FIRST_PROPELLER, PLAIN_SIGNAL, stationsThatEcho } from "../state/signal-actions.ts";
import type { SheetProps } from "../tools/chart-tool-sheets.tsx";
import { ToolSheet } from "../tools/tool-sheet.tsx";
import { ReflectorEditor } from "./reflector-editor.tsx";
import { NEW_REFLECTOR_ID, ReflectorList } from "./reflector-list.tsx";
import { SIGNAL_KIND_NAMES } from "./signal-button.tsx";

export function SignalSheet({ bench, tools, chartSeen, onShow }: SheetProps): JSX.Element {
  const { signal, covers } = bench.scene.value;
  // A place in the list, "new", or null while the list itself is looked at.
  const [edited, setEdited] = useState<number | "new" | null>(null);
  const isThere = edited === "new" || (edited !== null && signal?.reflectors[edited] !== undefined);
  const editing = signal !== null && isThere;
  const wasEditing = useRef(editing);
  useEffect(() => {
    // Back from the form: to where one came from, or near it.
    if (wasEditing.current && !editing) document.getElementById(NEW_REFLECTOR_ID)?.focus();
    wasEditing.current = editing;
    if (!editing) setEdited(null);
  }, [editing]);
  const covered = isCovered(covers, null, "signal");
  const title = !editing || covered ? "Measured signal" : edited === "new" ? "New reflector" : "Reflector";
  return (
    <ToolSheet tools={tools} tool="signal" title={title}>
      {covered ? (
        <div class="tool-body">
          <CoveredNote what="signal" />
          <p class="note">Lift its cover to see and change it.</p>
        </div>
      ) : editing ? (
        <ReflectorEditor
          {...{ bench, tools, onShow }}
          index={edited === "new" ? null : edited}
          picks={chartSeen && !isCovered(covers, null, "chart")}
          onClose={() => setEdited(null)}
        />
      ) : (
        <div class="tool-body">
          <KindTabs bench={bench} />
          {signal === null ? null : (
            <>
              <Noise bench={bench} noiseDb={signal.noiseDb} />
              <Turning bench={bench} propeller={signal.propeller} />
              <h3 class="parted">Reflectors</h3>
              <ReflectorList
                bench={bench}
                reflectors={signal.reflectors}
                onEdit={(index) => setEdited(index ?? "new")}
              />
            </>
          )}
        </div>
      )}
    </ToolSheet>
  );
}

/** What each scene, as it was opened, had when its signal was last turned off. */
const turnedOff = new WeakMap<Scene, SignalConditions>();

function KindTabs({ bench }: { readonly bench: Bench }): JSX.Element {
  const scene = bench.scene.value;
  const { signal } = scene;
  const { asOpened } = bench.opened.value;
  const choose = (signalKind: SignalKind | null) => {
    if (signalKind === null) {
      if (signal !== null) turnedOff.set(asOpened, signal);
      bench.act({ kind: "set-signal", signal: null }, newGesture());
    } else if (signal === null) {
      const before = turnedOff.get(asOpened) ?? asOpened.signal ?? PLAIN_SIGNAL;
      const idents = stationsThatEcho(scene).map(({ ident }) => ident);
      const reflectors = before.reflectors.filter(({ ident }) => idents.includes(ident));
      bench.act({ kind: "set-signal", signal: { ...before, kind: signalKind, reflectors } }, newGesture());
    } else bench.act({ kind: "set-signal-kind", signalKind }, newGesture());
  };
  return (
    <>
      <fieldset class="tabs signal-kinds" aria-label="Measured">
        {[null, ...SIGNAL_KINDS].map((kind) => (
          <button
            key={kind}
            type="button"
            aria-pressed={(signal?.kind ?? null) === kind}
            data-first={(signal?.kind ?? null) === kind ? "" : undefined}
            onClick={() => choose(kind)}
          >
            {kind === null ? "Off" : kind === "conventional" ? "Conventional" : SIGNAL_KIND_NAMES[kind]}
          </button>
        ))}
      </fieldset>
      <p class="note">
        {signal === null
          ? "Panel and needle go by the radial as it is computed. Turn the signal on, and they go by what a receiver measures of it."
          : "Panel and needle go by what a receiver measures of the signal that arrives."}
      </p>
    </>
  );
}

function Noise({ bench, noiseDb }: { readonly bench: Bench; readonly noiseDb: number | null }): JSX.Element {
  const set = (db: number | null, gesture: string) => bench.act({ kind: "set-noise", noiseDb: db }, gesture);
  return (
    <div class="signal-part" data-line="true">
      <Ticked
        words="Noise"
        checked={noiseDb !== null}
        onTick={(on) => set(on ? TYPICAL_NOISE_DB : null, newGesture())}
      />
      {noiseDb === null ? null : (
        <Stepper
          id="signal-noise"
          name="Noise"
          caption="over thermal"
          shown={String(noiseDb)}
          unit="dB"
          widthCh={4}
          decimals
          now={noiseDb}
          lowest={NOISE_DB.min}
          highest={NOISE_DB.max}
          stepBy={1}
          bigStepBy={5}
          stepWords="1 decibel"
          read={(text) => readWithin(text, NOISE_DB)}
          onSet={(db) => set(db, newGesture())}
          onStep={(by) => set(noiseDb + by, stepGesture("signal noise"))}
        />
      )}
    </div>
  );
}

function Turning(props: { readonly bench: Bench; readonly propeller: Propeller | null }): JSX.Element {
  const { bench, propeller } = props;
  const set = (to: Propeller | null, gesture: string) =>
    bench.act({ kind: "set-propeller", propeller: to }, gesture);
  return (
    <div class="signal-part">
      <Ticked
        words="Propeller"
        checked={propeller !== null}
        onTick={(on) => set(on ? FIRST_PROPELLER : null, newGesture())}
      />
      {propeller === null ? null : (
        <>
          <Stepper
            id="propeller-speed"
            name="Propeller speed"
            caption="turns a minute"
            shown={String(propeller.speedRpm)}
            widthCh={5}
            decimals
            now={propeller.speedRpm}
            lowest={PROPELLER_SPEED_RPM.min}
            highest={PROPELLER_SPEED_RPM.max}
            stepBy={10}
            bigStepBy={100}
            stepWords="10 turns"
            read={(text) => readWithin(text, PROPELLER_SPEED_RPM)}
            onSet={(speedRpm) => set({ ...propeller, speedRpm }, newGesture())}
            onStep={(by) =>
              set({ ...propeller, speedRpm: propeller.speedRpm + by }, stepGesture("propeller speed"))
            }
          />
          <Stepper
            id="propeller-blades"
            name="Propeller blades"
            caption="blades"
            shown={String(propeller.blades)}
            widthCh={5}
            now={propeller.blades}
            lowest={PROPELLER_BLADES.min}
            highest={PROPELLER_BLADES.max}
            stepBy={1}
            bigStepBy={1}
            stepWords="1 blade"
            read={(text) => readWithin(text, PROPELLER_BLADES)}
            onSet={(blades) => set({ ...propeller, blades }, newGesture())}
            onStep={(by) =>
              set({ ...propeller, blades: propeller.blades + by }, stepGesture("propeller blades"))
            }
          />
          <p class="note">{bladeWords(propeller)}</p>
        </>
      )}
    </div>
  );
}

/** How often a blade chops the signal, and whether that beats with it. */
function bladeWords({ speedRpm, blades }: Propeller): string {
  const passHz = (speedRpm * blades) / 60;
  const multiple = beatsWith(passHz);
  const near = multiple === null ? "" : `, near ${multiple === 1 ? "" : "twice "}the signal’s 30 Hz`;
  return `${passHz.toFixed(1)} blades pass in a second${near}.`;
}

function Ticked(props: {
  readonly words: string;
  readonly checked: boolean;
  readonly onTick: (on: boolean) => void;
}): JSX.Element {
  return (
    <label class="signal-tick">
      <input
        type="checkbox"
        checked={props.checked}
        onChange={(event) => props.onTick(event.currentTarget.checked)}
      />
      {props.words}
    </label>
  );
}
