/** The form of one reflector: a new one, or one that is changed. */

import type { ComponentChildren, JSX } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import type { LatLon } from "../../earth/index.ts";
import type { Reflector } from "../../panel/index.ts";
import type { Bench } from "../state/bench.ts";
import { newGesture } from "../state/gestures.ts";
import { stationsThatEcho } from "../state/signal-actions.ts";
import { CROSS_ID } from "../tools/chart-cross.tsx";
import type { ToolState } from "../tools/tool-state.ts";
import {
  blankReflector,
  checkReflector,
  formOfReflector,
  type ReflectorChecked,
  type ReflectorForm,
  reflectorPlace,
  stationNamedIn,
} from "./reflector-form.ts";

export interface ReflectorEditorProps {
  readonly bench: Bench;
  readonly tools: ToolState;
  /** Its place in the list; null: a new one. */
  readonly index: number | null;
  /** Whether a place can be picked on the chart. */
  readonly picks: boolean;
  readonly onShow: (place: LatLon) => void;
  readonly onClose: () => void;
}

type Field = keyof ReflectorForm;
type Faults = Extract<ReflectorChecked, { ok: false }>["faults"];

export function ReflectorEditor(props: ReflectorEditorProps): JSX.Element {
  const { bench, tools, index, picks, onShow, onClose } = props;
  const { stations, signal } = bench.scene.value;
  const before: Reflector | null = (index === null ? undefined : signal?.reflectors[index]) ?? null;
  const idents = [...new Set(stationsThatEcho(bench.scene.value).map(({ ident }) => ident))];
  const [form, setForm] = useState(() =>
    before === null ? blankReflector(attendedStation(bench, idents)) : formOfReflector(before, stations),
  );
  const [faults, setFaults] = useState<Faults>({});
  const stationChosen = useRef(before !== null);
  const root = useRef<HTMLFormElement>(null);
  const focusField = (name: Field) =>
    root.current?.querySelector<HTMLElement>(`[name="${name}"]`)?.focus({ preventScroll: true });
  useEffect(() => {
    focusField("at");
    return () => {
      tools.wanted.value = null;
    };
  }, []);
  const set = (field: Field, text: string) => {
    if (field === "station") stationChosen.current = true;
    setFaults(({ [field]: _, ...others }) => others);
    setForm((now) => {
      const named = field === "at" && !stationChosen.current ? stationNamedIn(text, idents) : null;
      return { ...now, [field]: text, ...(named !== null && { station: named }) };
    });
  };
  const save = () => {
    const checked = checkReflector(form, bench.scene.value, before);
    if (!checked.ok) {
      setFaults(checked.faults);
      focusField(checked.faults.at === undefined ? "amplitude" : "at");
      return;
    }
    const { reflector } = checked;
    if (index === null) bench.act({ kind: "add-reflector", reflector }, newGesture());
    else bench.act({ kind: "change-reflector", index, reflector }, newGesture());
    onShow(reflector.position);
    onClose();
  };
  const pick = () => {
    tools.wanted.value = {
      words: "where the reflector stands",
      give: (position) => {
        set("at", reflectorPlace({ ident: form.station, position }, stations));
        // After the press itself, which would take the focus to the chart.
        requestAnimationFrame(() => focusField("at"));
      },
    };
    // The cross comes with the next drawing.
    requestAnimationFrame(() => document.getElementById(CROSS_ID)?.focus({ preventScroll: true }));
  };
  const input = (name: Field) => ({
    name,
    id: `reflector-${name}`,
    "aria-invalid": faults[name] !== undefined,
    "aria-describedby": faults[name] === undefined ? undefined : `reflector-${name}-fault`,
    value: form[name],
  });
  const text = (name: Field) => (
    <input
      class="text-input"
      type="text"
      autocomplete="off"
      spellcheck={false}
      {...(name === "amplitude" ? { inputMode: "decimal" } : { autocapitalize: "characters" })}
      {...input(name)}
      onInput={(event) => set(name, event.currentTarget.value)}
    />
  );
  return (
    <form
      ref={root}
      class="tool-body station-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        save();
      }}
    >
      <div class={picks ? "wide at-row" : "wide"}>
        <Labelled name="at" caption="Stands at" fault={faults.at}>
          {text("at")}
        </Labelled>
        {picks ? (
          <button type="button" class="button" aria-pressed={tools.wanted.value !== null} onClick={pick}>
            Pick on the chart
          </button>
        ) : null}
      </div>
      <p class="note wide">A station’s radial and miles such as TXJ 300/2, or latitude and longitude.</p>
      <Labelled name="station" caption="Throws back" fault={undefined}>
        <span class="pick">
          <select {...input("station")} onChange={(event) => set("station", event.currentTarget.value)}>
            {idents.map((ident) => (
              <option key={ident} value={ident}>
                {ident}
              </option>
            ))}
          </select>
        </span>
      </Labelled>
      <Labelled name="amplitude" caption="Amplitude" fault={faults.amplitude}>
        {text("amplitude")}
      </Labelled>
      {faults.amplitude === undefined ? (
        <p class="note wide">Strength of the echo beside what arrives directly, 0 to 0.9.</p>
      ) : null}
      <div class="tool-buttons wide">
        <button type="submit" class="button">
          {index === null ? "Add the reflector" : "Save"}
        </button>
        <button type="button" class="button" onClick={onClose}>
          Cancel
        </button>
      </div>
    </form>
  );
}

/** What the receiver that is attended to listens to, where that can be thrown back; else the first that can. */
function attendedStation(bench: Bench, idents: readonly string[]): string {
  const { receivers } = bench.situation.value;
  const heard = receivers.find(({ settings }) => settings.name === bench.attended.value)?.station?.ident;
  return idents.find((ident) => ident === heard) ?? idents[0] ?? "";
}

function Labelled(props: {
  readonly name: Field;
  readonly caption: string;
  readonly fault: string | undefined;
  readonly children: ComponentChildren;
}): JSX.Element {
  const { name, caption, fault, children } = props;
  return (
    <div class="field">
      <label class="caption" for={`reflector-${name}`}>
        {caption}
      </label>
      {children}
      <p class="fault" id={`reflector-${name}-fault`} role="status">
        {fault ?? ""}
      </p>
    </div>
  );
}
