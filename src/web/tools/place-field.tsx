/** One field that takes a place however it is written, and puts the aircraft there. */

import type { JSX } from "preact";
import { useState } from "preact/hooks";
import type { LatLon } from "../../earth/index.ts";
import { readAircraftPlace, type Scene } from "../../scene/index.ts";
import { publishedStations } from "../catalogue/catalogue-state.ts";
import type { Bench } from "../state/bench.ts";
import { newGesture } from "../state/gestures.ts";

export interface PlaceFieldProps {
  readonly bench: Bench;
  readonly onShow: (place: LatLon) => void;
}

export function PlaceField({ bench, onShow }: PlaceFieldProps): JSX.Element {
  const [typed, setTyped] = useState("");
  const [fault, setFault] = useState("");
  const [done, setDone] = useState("");
  const take = () => {
    const read = readPlace(typed, bench.scene.value);
    setFault(typeof read === "string" ? read : "");
    setDone("");
    if (typeof read === "string") return;
    bench.act({ kind: "move-aircraft", to: read }, newGesture());
    onShow(read);
    setDone(`The aircraft is at ${typed.trim()}.`);
  };
  return (
    <form
      class="place-form"
      onSubmit={(event) => {
        event.preventDefault();
        take();
      }}
    >
      <label class="field">
        <span class="caption">Put the aircraft at</span>
        <input
          data-first=""
          class="text-input"
          type="text"
          autocomplete="off"
          autocapitalize="characters"
          spellcheck={false}
          aria-label="Place of the aircraft"
          aria-invalid={fault !== ""}
          aria-describedby="place-note place-fault"
          value={typed}
          onInput={(event) => {
            setTyped(event.currentTarget.value);
            setFault("");
          }}
        />
      </label>
      <button type="submit" class="button">
        Move
      </button>
      <p class="note" id="place-note">
        TXJ 246/18, TXJ246018 or 10°18.8′S 002°03.7′E
      </p>
      <p class="fault" id="place-fault" role="status">
        {fault}
      </p>
      <p class="unseen" role="status">
        {done}
      </p>
    </form>
  );
}

/** The place the text names, or one sentence that says why it names none. */
export function readPlace(text: string, scene: Scene): LatLon | string {
  if (text.trim() === "") return "Write where: a station's radial and miles, or latitude and longitude.";
  const read = readAircraftPlace(text, { own: scene.stations, table: [] });
  if (read.ok) return read.position;
  const ident = read.code === "unknown-ident" ? read.point?.ident : undefined;
  const inLists = ident !== undefined && publishedStations.value.some((station) => station.ident === ident);
  const hint = inLists ? `; find ${ident} under Stations first` : "";
  return `${read.reason.charAt(0).toUpperCase()}${read.reason.slice(1)}${hint}.`;
}
