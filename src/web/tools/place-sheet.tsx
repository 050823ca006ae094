/** Putting things somewhere: the aircraft by radial and distance or by coordinates, and stations of one's own. */

import type { JSX } from "preact";
import { useEffect, useRef } from "preact/hooks";
import type { LatLon } from "../../earth/index.ts";
import { frequencyText } from "../../radio/index.ts";
import { listsLoaded, loadLists, publishedKeys } from "../catalogue/catalogue-state.ts";
import { ownStations } from "../catalogue/station-lists.ts";
import type { Bench } from "../state/bench.ts";
import { PlaceField } from "./place-field.tsx";
import { StationEditor } from "./station-editor.tsx";
import { ToolSheet } from "./tool-sheet.tsx";
import type { ToolState } from "./tool-state.ts";

export interface PlaceSheetProps {
  readonly bench: Bench;
  readonly tools: ToolState;
  /** The middle of the chart as it is seen: where a new station is offered a place. */
  readonly middle: () => LatLon | null;
  /** Brings a place into sight. */
  readonly onShow: (place: LatLon) => void;
}

export function PlaceSheet({ bench, tools, middle, onShow }: PlaceSheetProps): JSX.Element {
  const scene = bench.scene.value;
  useEffect(() => void loadLists(scene.date), []);
  const edited = tools.edited.value;
  const own = listsLoaded.value ? ownStations(scene.stations, publishedKeys.value) : [];
  const before = scene.stations.find(({ ident }) => ident === edited) ?? null;
  const isEditing = edited === "" || before !== null;
  const wasEditing = useRef(isEditing);
  useEffect(() => {
    // Back from the form: to where one came from, or near it.
    if (wasEditing.current && !isEditing) document.getElementById("new-station")?.focus();
    wasEditing.current = isEditing;
  }, [isEditing]);
  return (
    <ToolSheet tools={tools} tool="place" title={isEditing ? editTitle(edited ?? "") : "Place"}>
      {isEditing ? (
        <StationEditor
          key={edited}
          {...{ bench, tools, before, onShow }}
          at={before?.position ?? middle() ?? scene.aircraft.position}
        />
      ) : (
        <div class="tool-body">
          <PlaceField bench={bench} onShow={onShow} />
          <h3>Stations of your own</h3>
          {own.length === 0 ? (
            <p class="note">None in this scene yet.</p>
          ) : (
            <ul class="own-stations">
              {own.map(({ ident, name, kind, frequencyMhz }) => (
                <li key={ident}>
                  <span>
                    <b>{ident}</b> {name === ident ? "" : name}
                    <span class="note">
                      {kind} {frequencyText(frequencyMhz)}
                    </span>
                  </span>
                  <button
                    type="button"
                    class="button"
                    aria-label={`Change ${ident}`}
                    onClick={() => {
                      tools.edited.value = ident;
                    }}
                  >
                    Change
                  </button>
                </li>
              ))}
            </ul>
          )}
          {own.length === 0 ? null : <p class="note">Drag them on the chart to move them.</p>}
          <div class="tool-buttons">
            <button
              type="button"
              class="button"
              id="new-station"
              onClick={() => {
                tools.edited.value = "";
              }}
            >
              New station here
            </button>
          </div>
        </div>
      )}
    </ToolSheet>
  );
}

const editTitle = (ident: string): string => (ident === "" ? "New station" : `Station ${ident}`);
