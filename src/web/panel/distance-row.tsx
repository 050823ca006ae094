/** What the distance measuring equipment says of the station tuned: slant range, the speed at which it changes, time to go. */

import type { JSX } from "preact";
import type { ReceiverReading } from "../../panel/index.ts";
import { WhyButton } from "./why-button.tsx";

export interface DistanceRowProps {
  readonly reading: ReceiverReading;
  /** Whether the station may be named: neither frequency nor ident is covered. */
  readonly named: boolean;
  /** Lit by a step of the argument that speaks of it. */
  readonly lit: boolean;
}

export function DistanceRow({ reading, named, lit }: DistanceRowProps): JSX.Element {
  const { dme, settings } = reading;
  const figures: readonly (readonly [string, string])[] =
    dme === null
      ? []
      : [
          [dme.distanceNm.toFixed(1), "NM"],
          [dme.groundspeedKt.toFixed(0), "kt"],
          ...(dme.minutesToStation === null ? [] : [[dme.minutesToStation.toFixed(0), "min"] as const]),
        ];
  const words = dme === null ? whyNone(reading, named) : figures.map((figure) => figure.join(" ")).join(" ");
  return (
    <div class="row dme-row">
      <WhyButton receiver={settings.name} part="dme" what="DME" words={words} lit={lit}>
        <span class="caption">DME</span>{" "}
        {dme === null ? (
          <span class="caption">{words}</span>
        ) : (
          <span class="figures">
            {figures.map(([value, unit]) => (
              <span key={unit}>
                <span class="digits">{value}</span> <span class="unit">{unit}</span>{" "}
              </span>
            ))}
          </span>
        )}
      </WhyButton>
    </div>
  );
}

function whyNone({ station }: ReceiverReading, named: boolean): string {
  if (!named) return "no distance";
  if (station === null) return "no station";
  return station.dmeChannel === null ? `${station.ident} has none` : "no reply";
}
