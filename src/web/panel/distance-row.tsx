/** What the distance measuring equipment says of the station tuned: slant range, the speed at which it changes, time to go. */

import type { JSX } from "preact";
import type { ReceiverReading } from "../../panel/index.ts";

export interface DistanceRowProps {
  readonly reading: ReceiverReading;
  /** Lit by a step of the argument that speaks of it. */
  readonly lit: boolean;
}

export function DistanceRow({ reading, lit }: DistanceRowProps): JSX.Element {
  const { dme } = reading;
  return (
    <p class="row" data-lit={lit}>
      <span class="caption">DME</span>
      {dme === null ? (
        <span class="caption">{whyNone(reading)}</span>
      ) : (
        <span class="figures">
          <Figure value={dme.distanceNm.toFixed(1)} unit="NM" />
          <Figure value={dme.groundspeedKt.toFixed(0)} unit="kt" />
          {dme.minutesToStation === null ? null : (
            <Figure value={dme.minutesToStation.toFixed(0)} unit="min" />
          )}
        </span>
      )}
    </p>
  );
}

const Figure = ({ value, unit }: { readonly value: string; readonly unit: string }): JSX.Element => (
  <span>
    <span class="digits">{value}</span> <span class="unit">{unit}</span>
  </span>
);

function whyNone({ station }: ReceiverReading): string {
  if (station === null) return "no station";
  return station.dmeChannel === null ? `${station.ident} has none` : "no reply";
}
