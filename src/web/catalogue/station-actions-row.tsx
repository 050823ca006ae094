/** What can be done with the station that was found: it comes into the scene with its neighbours, is tuned, is flown to. */

import type { JSX } from "preact";
import { useEffect, useState } from "preact/hooks";
import { direct, inverse, type LatLon } from "../../earth/index.ts";
import { explainFrequency, type Station } from "../../radio/index.ts";
import type { Bench } from "../state/bench.ts";
import { newGesture } from "../state/gestures.ts";
import { BEGIN_AT_NM, beginningNear } from "./fly-there.ts";
import { stationKey } from "./station-lists.ts";
import { visitStation } from "./visit.ts";

export interface StationActionsProps {
  readonly bench: Bench;
  readonly station: Station;
  readonly published: readonly Station[];
  readonly onGoTo: (place: LatLon, widthNm: number) => void;
}

/** Across a chart that shows the station and an aircraft 20 NM away, NM. */
const SHOWN_ACROSS_NM = 80;

export function StationActions({ bench, station, published, onGoTo }: StationActionsProps): JSX.Element {
  const [refused, setRefused] = useState("");
  const [done, setDone] = useState("");
  const bring = (gesture: string): boolean => {
    const visit = visitStation(bench.scene.value, published, station);
    setRefused(visit.kind === "refused" ? visit.sentence : "");
    if (visit.kind === "refused") return false;
    bench.act({ kind: "set-stations", stations: visit.stations }, gesture);
    return true;
  };
  // Choosing it is going there.
  useEffect(() => {
    if (bring(newGesture())) onGoTo(station.position, SHOWN_ACROSS_NM);
  }, []);
  const tune = (receiver: string) => {
    const tuned = newGesture();
    if (!bring(tuned)) return;
    bench.act({ kind: "tune-receiver", receiver, frequencyMhz: station.frequencyMhz }, tuned);
    bench.attend(receiver);
    setDone(`${receiver} is tuned to ${station.ident}.`);
  };
  const fly = () => {
    const { position, heading, altitudeFt } = beginningNear(station, bench.scene.value);
    const flown = newGesture();
    bench.act({ kind: "move-aircraft", to: position }, flown);
    bench.act({ kind: "set-heading", heading }, flown);
    bench.act({ kind: "set-altitude", altitudeFt }, flown);
    // Once more, for what is out of reach from there goes.
    bring(flown);
    const out = inverse(station.position, position);
    const between = out.kind === "line" ? direct(station.position, out.azimuth, BEGIN_AT_NM / 2) : position;
    onGoTo(between, SHOWN_ACROSS_NM);
    setDone(`The aircraft is ${BEGIN_AT_NM} miles from ${station.ident}, heading for it.`);
  };
  const receivers = bench.scene.value.receivers;
  const verdict = explainFrequency(station.frequencyMhz);
  return (
    <div class="found-actions" data-station={stationKey(station)}>
      {refused === "" ? (
        <>
          <p class="note">{facts(station)}</p>
          <div class="tool-buttons">
            {verdict.service === "vor"
              ? receivers.map(({ name, frequencyMhz }) => (
                  <button
                    key={name}
                    type="button"
                    class="button"
                    aria-pressed={frequencyMhz === station.frequencyMhz}
                    onClick={() => tune(name)}
                  >
                    Tune {name}
                  </button>
                ))
              : null}
            <button type="button" class="button" onClick={fly}>
              Fly there
            </button>
          </div>
          {verdict.service === "vor" ? null : (
            <p class="note">It cannot be tuned here: {verdict.explanation}.</p>
          )}
        </>
      ) : (
        <p class="fault" role="status">
          {refused}
        </p>
      )}
      <p class="unseen" role="status">
        {done}
      </p>
    </div>
  );
}

/** Elevation, the north its radials are counted from, and its published volume as far as known. */
function facts({
  kind,
  elevationFt,
  declinationDeg,
  declinationEstimated,
  vorClass,
  dmeClass,
  dmeChannel,
}: Station): string {
  const degrees = Number(Math.abs(declinationDeg).toFixed(1));
  const north = degrees === 0 ? "true north" : `${degrees}° ${declinationDeg < 0 ? "W" : "E"}`;
  const volume = [vorClass, dmeClass].filter(Boolean).join("/");
  return [
    dmeChannel === null ? "no DME" : `DME ${dmeChannel}`,
    `${Math.round(elevationFt).toLocaleString("en")} ft`,
    kind === "DME" || kind === "VOT"
      ? ""
      : `radials from ${north}${declinationEstimated ? " (estimated)" : ""}`,
    volume === "" ? "" : `class ${volume}`,
  ]
    .filter(Boolean)
    .join(" · ");
}
