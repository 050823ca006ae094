/** The form of one station of one's own: a new one, or one that is changed. */

import type { ComponentChildren, ComponentProps, JSX } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import { type LatLon, readLatLon } from "../../earth/index.ts";
import { STATION_KINDS, type Station } from "../../radio/index.ts";
import type { Bench } from "../state/bench.ts";
import { newGesture } from "../state/gestures.ts";
import { CROSS_ID } from "./chart-cross.tsx";
import {
  blankForm,
  checkStation,
  declinationOn,
  formOf,
  placeText,
  STATION_FIELDS,
  type StationChecked,
  type StationField,
} from "./station-form.ts";
import type { ToolState } from "./tool-state.ts";

export interface StationEditorProps {
  readonly bench: Bench;
  readonly tools: ToolState;
  /** The station that is changed; null: a new one. */
  readonly before: Station | null;
  /** Where a new one is offered a place. */
  readonly at: LatLon;
  readonly onShow: (place: LatLon) => void;
}

type Faults = Extract<StationChecked, { ok: false }>["faults"];

export function StationEditor({ bench, tools, before, at, onShow }: StationEditorProps): JSX.Element {
  const { date } = bench.scene.value;
  const [form, setForm] = useState(() => (before === null ? blankForm(at, date) : formOf(before)));
  const [faults, setFaults] = useState<Faults>({});
  const declinationTyped = useRef(before !== null);
  const root = useRef<HTMLFormElement>(null);
  useEffect(() => focusField("ident"), []);
  const focusField = (name: string) => {
    root.current?.querySelector<HTMLElement>(`[name="${name}"]`)?.focus({ preventScroll: true });
  };
  const set = (field: StationField, text: string) => {
    if (field === "declination") declinationTyped.current = true;
    setFaults(({ [field]: _, ...others }) => others);
    setForm((now) => {
      const next = { ...now, [field]: text };
      if (field !== "at" || declinationTyped.current) return next;
      const place = readLatLon(text);
      return place.ok ? { ...next, declination: declinationOn(place.position, date) } : next;
    });
  };
  const close = () => {
    tools.wanted.value = null;
    tools.edited.value = null;
  };
  const save = () => {
    const scene = bench.scene.value;
    const checked = checkStation(form, scene, before);
    if (!checked.ok) {
      setFaults(checked.faults);
      const first = STATION_FIELDS.find((field) => checked.faults[field] !== undefined);
      if (first !== undefined) focusField(first);
      return;
    }
    const { station } = checked;
    if (before === null) bench.act({ kind: "add-station", station }, newGesture());
    else bench.act({ kind: "change-station", ident: before.ident, station }, newGesture());
    onShow(station.position);
    close();
  };
  const pick = () => {
    tools.wanted.value = {
      words: "where the station stands",
      give: (place) => {
        set("at", placeText(place));
        focusField("at");
      },
    };
    // The cross comes with the next drawing.
    requestAnimationFrame(() => document.getElementById(CROSS_ID)?.focus({ preventScroll: true }));
  };
  const field = (name: StationField, caption: string, extra: ComponentProps<"input"> = {}) => (
    <Field name={name} caption={caption} fault={faults[name]}>
      <input
        class="text-input"
        type="text"
        autocomplete="off"
        spellcheck={false}
        {...inputProps(name, faults[name])}
        value={form[name]}
        onInput={(event) => set(name, event.currentTarget.value)}
        {...extra}
      />
    </Field>
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
      {field("ident", "Ident", { maxLength: 4, autocapitalize: "characters" })}
      {field("name", "Name")}
      <Field name="kind" caption="Kind" fault={faults.kind}>
        <span class="pick">
          <select
            {...inputProps("kind", faults.kind)}
            value={form.kind}
            onChange={(event) => set("kind", event.currentTarget.value)}
          >
            {STATION_KINDS.map((kind) => (
              <option key={kind} value={kind}>
                {kind}
              </option>
            ))}
          </select>
        </span>
      </Field>
      {field("frequency", "Frequency, MHz", { inputMode: "decimal", placeholder: "113.90" })}
      <div class="wide at-row">
        {field("at", "Stands at")}
        <button type="button" class="button" aria-pressed={tools.wanted.value !== null} onClick={pick}>
          Pick on the chart
        </button>
      </div>
      {field("elevation", "Elevation, ft", { inputMode: "numeric" })}
      {field("declination", "Declination")}
      <p class="note wide">
        The north its radials are counted from: today’s variation here, to the whole degree, unless you say
        otherwise.
      </p>
      <div class="tool-buttons wide">
        <button type="submit" class="button">
          {before === null ? "Add the station" : "Save"}
        </button>
        <button type="button" class="button" onClick={close}>
          Cancel
        </button>
        {before === null ? null : (
          <button
            type="button"
            class="button"
            onClick={() => {
              bench.act({ kind: "remove-station", ident: before.ident }, newGesture());
              close();
            }}
          >
            Remove
          </button>
        )}
      </div>
    </form>
  );
}

const inputProps = (name: StationField, fault: string | undefined) => ({
  name,
  id: `station-${name}`,
  "aria-invalid": fault !== undefined,
  "aria-describedby": fault === undefined ? undefined : `station-${name}-fault`,
});

function Field(props: {
  readonly name: StationField;
  readonly caption: string;
  readonly fault: string | undefined;
  readonly children: ComponentChildren;
}): JSX.Element {
  const { name, caption, fault, children } = props;
  return (
    <div class="field">
      <label class="caption" for={`station-${name}`}>
        {caption}
      </label>
      {children}
      <p class="fault" id={`station-${name}-fault`} role="status">
        {fault ?? ""}
      </p>
    </div>
  );
}
