/** Finding a station, in the demo's isles, in the scene and in a catalogue of one's own, and going there. */

import type { JSX } from "preact";
import { useEffect, useMemo, useState } from "preact/hooks";
import { inverse, type LatLon, magneticFromTrue, threeDigits } from "../../earth/index.ts";
import { frequencyText, type Station } from "../../radio/index.ts";
import type { Situation } from "../../scene/index.ts";
import type { Bench } from "../state/bench.ts";
import { aircraftIsSeen } from "../tools/measured.ts";
import { ToolSheet } from "../tools/tool-sheet.tsx";
import type { ToolState } from "../tools/tool-state.ts";
import { useSettled } from "../tools/use-settled.ts";
import { CatalogueFoot } from "./catalogue-foot.tsx";
import { loadLists, publishedStations } from "./catalogue-state.ts";
import { indexStations, searchStations } from "./search.ts";
import { StationActions } from "./station-actions-row.tsx";
import { joinedLists, stationKey } from "./station-lists.ts";

export interface StationsSheetProps {
  readonly bench: Bench;
  readonly tools: ToolState;
  /** Brings a place into sight, with so many miles across. */
  readonly onGoTo: (place: LatLon, widthNm: number) => void;
}

const MOST_SHOWN = 30;

export function StationsSheet({ bench, tools, onGoTo }: StationsSheetProps): JSX.Element {
  const situation = bench.situation.value;
  const { stations, date, aircraft } = situation.scene;
  useEffect(() => void loadLists(date), []);
  const [query, setQuery] = useState("");
  const [chosen, setChosen] = useState<string | null>(null);
  const published = publishedStations.value;
  const index = useMemo(() => indexStations(joinedLists(stations, published)), [stations, published]);
  const seen = aircraftIsSeen(situation.scene);
  // Ordered from where the aircraft was when it was asked: a list that reorders itself under the hand cannot be read.
  const found = useMemo(
    () => searchStations(index, query, seen ? aircraft.position : null, MOST_SHOWN),
    [index, query, seen],
  );
  const summary = summaryOf(found.total, found.stations.length, query);
  return (
    <ToolSheet tools={tools} tool="stations" title="Stations">
      <div class="tool-body search">
        <label class="field">
          <span class="caption">Ident, name or frequency</span>
          <input
            data-first=""
            class="text-input"
            type="search"
            autocomplete="off"
            spellcheck={false}
            aria-label="Find a station by ident, name or frequency"
            aria-controls="stations-found"
            value={query}
            onInput={(event) => setQuery(event.currentTarget.value)}
            onKeyDown={(event) => {
              if (event.key !== "ArrowDown") return;
              event.preventDefault();
              document.querySelector<HTMLElement>("#stations-found button")?.focus();
            }}
          />
        </label>
        <p class="note">
          {summary}
          {found.meant === null ? null : (
            <>
              {" "}
              Did you mean{" "}
              <button type="button" class="quiet" onClick={() => setQuery(found.meant ?? "")}>
                {found.meant}
              </button>
              ?
            </>
          )}
        </p>
      </div>
      <ul class="stations-found" id="stations-found" aria-label="Stations found" onKeyDown={walkList}>
        {found.stations.map((station) => {
          const key = stationKey(station);
          return (
            <li key={key} data-chosen={key === chosen}>
              <button
                type="button"
                class="found"
                aria-expanded={key === chosen}
                onClick={() => setChosen(key === chosen ? null : key)}
              >
                <b class="found-ident">{station.ident}</b> <span class="found-name">{station.name}</span>{" "}
                <span class="found-frequency digits">{frequencyText(station.frequencyMhz)}</span>{" "}
                <span class="note">{station.kind}</span>{" "}
                <span class="note found-where">{seen ? whereFrom(situation, station) : ""}</span>
              </button>
              {key === chosen ? (
                <StationActions bench={bench} station={station} published={published} onGoTo={onGoTo} />
              ) : null}
            </li>
          );
        })}
      </ul>
      <CatalogueFoot date={date} />
      <p class="unseen" role="status">
        {useSettled(summary)}
      </p>
    </ToolSheet>
  );
}

function summaryOf(total: number, shown: number, query: string): string {
  if (total === 0) return query.trim() === "" ? "No stations here." : `No station fits “${query.trim()}”.`;
  const stations = total === 1 ? "1 station" : `${total.toLocaleString("en")} stations`;
  return shown < total ? `${stations}, the first ${shown} here: type more to narrow them.` : `${stations}.`;
}

/** "18.0 NM, 057": how far and by the compass which way, from the aircraft. */
function whereFrom({ scene, variationDeg }: Situation, station: Station): string {
  const line = inverse(scene.aircraft.position, station.position);
  if (line.kind === "same-place") return "at the aircraft";
  const miles =
    line.distanceNm < 100 ? line.distanceNm.toFixed(1) : Math.round(line.distanceNm).toLocaleString("en");
  return `${miles} NM, ${threeDigits(magneticFromTrue(line.azimuth, variationDeg))} magnetic`;
}

/** Arrow keys walk from one result to the next; up from the first goes back to the field. */
function walkList(event: KeyboardEvent): void {
  const by = event.key === "ArrowDown" ? 1 : event.key === "ArrowUp" ? -1 : 0;
  if (by === 0 || !(event.currentTarget instanceof HTMLElement)) return;
  const buttons = [...event.currentTarget.querySelectorAll<HTMLElement>("button")];
  const at = buttons.findIndex((button) => button.matches(":focus"));
  event.preventDefault();
  if (at + by < 0) document.querySelector<HTMLElement>("#tool-sheet [data-first]")?.focus();
  else buttons[at + by]?.focus();
}
