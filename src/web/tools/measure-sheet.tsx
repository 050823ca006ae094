/** Measuring without a hand on the chart: both ends from lists, the reading in words. With a hand, the lists follow it. */

import type { JSX } from "preact";
import { latLonText } from "../../earth/index.ts";
import { isCovered, type Scene } from "../../scene/index.ts";
import type { Bench } from "../state/bench.ts";
import { CROSS_ID } from "./chart-cross.tsx";
import { aircraftIsSeen, type MeasureEnd, measured, measuredLines, measuredSentence } from "./measured.ts";
import { ToolSheet } from "./tool-sheet.tsx";
import type { ToolState } from "./tool-state.ts";
import { useSettled } from "./use-settled.ts";

export interface MeasureSheetProps {
  readonly bench: Bench;
  readonly tools: ToolState;
}

export function MeasureSheet({ bench, tools }: MeasureSheetProps): JSX.Element {
  const { scene } = bench.situation.value;
  const measure = tools.measure.value;
  const from = measure?.from ?? tools.firstEnd.value;
  const reading = measure && measured(measure, scene);
  const said = useSettled(reading ? measuredSentence(reading) : "");
  const setEnd = (which: "from" | "to", end: MeasureEnd) => {
    const other = which === "from" ? (measure?.to ?? null) : from;
    if (other === null) tools.firstEnd.value = end;
    else {
      tools.firstEnd.value = null;
      tools.measure.value = which === "from" ? { from: end, to: other } : { from: other, to: end };
    }
  };
  const clear = () => {
    tools.measure.value = null;
    tools.firstEnd.value = null;
  };
  const covered = isCovered(scene.covers, null, "chart");
  return (
    <ToolSheet tools={tools} tool="measure" title="Measure">
      {covered ? (
        <p class="tool-body">The chart is covered; lift its cover to measure on it.</p>
      ) : (
        <div class="tool-body">
          <p class="note">Drag from one end to the other on the chart, or choose both here.</p>
          <div class="ends">
            <EndPick which="from" word="From" end={from} scene={scene} onPick={setEnd} />
            <EndPick which="to" word="To" end={measure?.to ?? null} scene={scene} onPick={setEnd} />
          </div>
          {reading ? (
            <p class="reading" data-reading="">
              {measuredLines(reading).map((line, index) => (
                <span key={index}>{line}</span>
              ))}
            </p>
          ) : null}
          <div class="tool-buttons">
            <button type="button" class="button" onClick={() => document.getElementById(CROSS_ID)?.focus()}>
              By arrow keys
            </button>
            <button
              type="button"
              class="button"
              disabled={measure === null}
              onClick={() => {
                if (measure !== null) tools.measure.value = { from: measure.to, to: measure.from };
              }}
            >
              Swap ends
            </button>
            <button type="button" class="button" disabled={from === null} onClick={clear}>
              Clear
            </button>
          </div>
        </div>
      )}
      <p class="unseen" role="status">
        {said}
      </p>
    </ToolSheet>
  );
}

interface EndPickProps {
  readonly which: "from" | "to";
  readonly word: string;
  readonly end: MeasureEnd | null;
  readonly scene: Scene;
  readonly onPick: (which: "from" | "to", end: MeasureEnd) => void;
}

function EndPick({ which, word, end, scene, onPick }: EndPickProps): JSX.Element {
  const { stations, land } = scene;
  const idents = [...new Set(stations.map(({ ident }) => ident))];
  return (
    <label class="field pick">
      <span class="caption">{word}</span>
      <select
        data-first={which === "from" ? "" : undefined}
        aria-label={`Measure ${which}`}
        value={end === null ? "" : keyOf(end)}
        onChange={(event) => {
          const chosen = endOfKey(event.currentTarget.value);
          if (chosen !== null) onPick(which, chosen);
        }}
      >
        <option value="" disabled>
          choose
        </option>
        {end?.kind === "place" ? <option value={keyOf(end)}>{latLonText(end.at)}</option> : null}
        {aircraftIsSeen(scene) ? <option value="aircraft:">The aircraft</option> : null}
        <optgroup label="Stations">
          {idents.map((ident) => (
            <option key={ident} value={`station:${ident}`}>
              {ident} {stations.find((station) => station.ident === ident)?.name}
            </option>
          ))}
        </optgroup>
        {land === null || land.airfields.length === 0 ? null : (
          <optgroup label="Airfields">
            {land.airfields.map(({ name }) => (
              <option key={name} value={`airfield:${name}`}>
                {name}
              </option>
            ))}
          </optgroup>
        )}
      </select>
    </label>
  );
}

function keyOf(end: MeasureEnd): string {
  switch (end.kind) {
    case "station":
      return `station:${end.ident}`;
    case "airfield":
      return `airfield:${end.name}`;
    case "aircraft":
    case "place":
      return `${end.kind}:`;
  }
}

/** A place has no key to choose it by: it stands in the list only while it is chosen. */
function endOfKey(key: string): MeasureEnd | null {
  const [, kind, name = ""] = /^(\w+):(.*)$/s.exec(key) ?? [];
  if (kind === "station") return { kind, ident: name };
  if (kind === "airfield") return { kind, name };
  return kind === "aircraft" ? { kind } : null;
}
