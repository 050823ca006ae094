/** The signal that the pictures are made of: what arrives at the aircraft, with the ident's key held down so that its tone is seen. */

import type { ReceiverReading } from "../../panel/index.ts";
import { STANDARD_MODULATION, type VorSignal } from "../../radio/index.ts";
import { coveredParts } from "../faces/index.ts";

/** What arrives, or null where there is nothing to show. Where a scene has covers, a signal that gives no bearing is not shown either. */
export function pictureSignal(reading: ReceiverReading, covers: readonly string[] = []): VorSignal | null {
  const { measured, radial, geometry, settings } = reading;
  if (radial === null && (measured === null || covers.length > 0)) return null;
  const arriving = measured?.arriving;
  // A station without ident is told by its missing tone, which a cover over the ident withholds.
  const silent = reading.ident.kind === "none" && !coveredParts(settings.name, covers).has("ident");
  const toward = arriving?.radial ?? geometry?.trueRadial ?? radial;
  if (toward === null) return null;
  return {
    modulation: {
      ...(arriving?.modulation ?? STANDARD_MODULATION),
      ident: { kind: silent ? "none" : "steady" },
    },
    radial: toward,
    frequencyMhz: settings.frequencyMhz,
    echoes: arriving?.echoes ?? [],
    propeller: arriving?.propeller ?? null,
    carrierToNoiseDbHz: arriving?.carrierToNoiseDbHz ?? null,
    seed: 1,
  };
}

/** What lies on the signal beside its own three parts, in words; empty for nothing. */
export function disturbances({ echoes, propeller, carrierToNoiseDbHz }: VorSignal): string {
  const found = [
    echoes.length === 0 ? "" : echoes.length === 1 ? "an echo" : `${echoes.length} echoes`,
    propeller === null ? "" : "the propeller's chopping",
    carrierToNoiseDbHz === null ? "" : `noise, ${Math.round(carrierToNoiseDbHz)} dB-Hz below the carrier`,
  ].filter((words) => words !== "");
  return found.length === 0 ? "" : ` With it come ${found.join(", ")}.`;
}
