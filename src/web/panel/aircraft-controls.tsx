/** The aircraft's own row of the panel: heading by its card or its number, altitude, and what the wind makes of it. */

import { useComputed } from "@preact/signals";
import type { JSX } from "preact";
import { useMemo, useRef } from "preact/hooks";
import { HeadingIndicator, type Lit, type Theme } from "../../draw/index.ts";
import { magneticDeg, threeDigits } from "../../earth/index.ts";
import { isCovered } from "../../scene/index.ts";
import { GuessOnHeading } from "../covers/guess-on-face.tsx";
import { useElementSize } from "../frame/element-size.ts";
import { inThousands, readAltitude, readDirection, wholeDirection } from "../input/read-number.ts";
import { Stepper } from "../input/stepper.tsx";
import { HIGHEST_ALTITUDE_FT, LOWEST_ALTITUDE_FT } from "../state/actions.ts";
import type { Bench } from "../state/bench.ts";
import { newGesture, stepGesture } from "../state/gestures.ts";
import { Clock } from "./clock.tsx";
import type { FlightTime } from "./clock-state.ts";
import { CoveredNote } from "./covered-note.tsx";
import { TurningCard } from "./turning-card.tsx";

export interface AircraftControlsProps {
  readonly bench: Bench;
  readonly theme: Theme;
  readonly lit: Lit | null;
  readonly flight: FlightTime | null;
}

export function AircraftControls({ bench, theme, lit, flight }: AircraftControlsProps): JSX.Element {
  // Not the whole scene: while the aircraft is dragged none of these change.
  const heading = useComputed(() => bench.scene.value.aircraft.heading).value;
  const altitudeFt = useComputed(() => bench.scene.value.aircraft.altitudeFt).value;
  const covers = useComputed(() => bench.scene.value.covers).value;
  const headingCovered = covers.includes("heading") || covers.includes("panel");
  const setHeading = (deg: number, gesture: string) =>
    bench.act({ kind: "set-heading", heading: magneticDeg(deg) }, gesture);
  const turnHeading = (byDeg: number, gesture = stepGesture("heading")) =>
    bench.act({ kind: "turn-heading", byDeg }, gesture);
  const setAltitude = (feet: number, gesture: string) =>
    bench.act({ kind: "set-altitude", altitudeFt: feet }, gesture);
  const holder = useRef<HTMLDivElement>(null);
  const sizePx = useElementSize(holder)?.widthPx ?? 0;
  const card = useMemo(
    () =>
      sizePx === 0 ? null : (
        <svg width={sizePx} height={sizePx} viewBox={`0 0 ${sizePx} ${sizePx}`} aria-hidden="true">
          <g transform={`translate(${sizePx / 2} ${sizePx / 2})`}>
            <HeadingIndicator
              heading={heading}
              sizePx={sizePx}
              theme={theme}
              covers={covers}
              lit={lit ?? undefined}
            />
          </g>
        </svg>
      ),
    [heading, theme, covers, lit, sizePx],
  );
  return (
    <section class="aircraft" aria-label="Aircraft">
      <div class="face" ref={holder}>
        {card}
        {sizePx === 0 ? null : <GuessOnHeading bench={bench} sizePx={sizePx} theme={theme} />}
        {headingCovered ? null : (
          <TurningCard
            name="Heading, by the card"
            what="heading"
            part="heading"
            valueDeg={heading}
            valueText={`heading ${threeDigits(heading)}`}
            follows="card"
            onSet={setHeading}
            onTurn={turnHeading}
          />
        )}
      </div>
      <div class="rows">
        {headingCovered ? (
          <CoveredNote what="heading" />
        ) : (
          <div data-part="heading">
            <Stepper
              id="heading"
              name="Heading"
              caption="heading"
              lit={lit?.parts.includes("heading") === true}
              shown={threeDigits(heading)}
              widthCh={3}
              now={Number(threeDigits(heading))}
              lowest={1}
              highest={360}
              stepBy={1}
              bigStepBy={10}
              stepWords="1 degree"
              read={(text) => readDirection("heading", text)}
              whole={wholeDirection}
              onSet={(deg) => setHeading(deg, newGesture())}
              onStep={(byDeg) => turnHeading(byDeg)}
            />
          </div>
        )}
        <Stepper
          id="altitude"
          name="Altitude"
          caption="altitude"
          lit={lit?.parts.includes("service-volume") === true}
          shown={inThousands(altitudeFt)}
          unit="ft"
          widthCh={6}
          now={Math.round(altitudeFt)}
          lowest={LOWEST_ALTITUDE_FT}
          highest={HIGHEST_ALTITUDE_FT}
          stepBy={100}
          bigStepBy={1000}
          stepWords="100 feet"
          read={(text) => readAltitude(text, LOWEST_ALTITUDE_FT, HIGHEST_ALTITUDE_FT)}
          onSet={(feet) => setAltitude(feet, newGesture())}
          onStep={(byFeet) => setAltitude(altitudeFt + byFeet, stepGesture("altitude"))}
        />
      </div>
      <Clock bench={bench} flight={flight} />
      {headingCovered ? null : <AirFacts bench={bench} />}
    </section>
  );
}

/** What follows from heading and wind. */
function AirFacts({ bench }: { readonly bench: Bench }): JSX.Element {
  const { scene, track, groundspeedKt, variationDeg } = bench.situation.value;
  const { wind, aircraft } = scene;
  const variation = `${Math.abs(variationDeg).toFixed(1)}° ${variationDeg < 0 ? "W" : "E"}`;
  const windWords =
    wind.speedKt === 0 ? "calm" : `${threeDigits(wind.from)}/${Math.round(wind.speedKt)} true`;
  const facts: readonly (readonly [string, string])[] = [
    ["air", `${Math.round(aircraft.tasKt)} kt`],
    ["wind", windWords],
    ["track", threeDigits(track)],
    ["ground", `${Math.round(groundspeedKt)} kt`],
    // Where it differs across the sheet, the variation tells a place.
    ...(isCovered(scene.covers, null, "aircraft") || isCovered(scene.covers, null, "chart")
      ? []
      : [["variation", variation] as const]),
  ];
  return (
    <dl class="facts">
      {facts.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
