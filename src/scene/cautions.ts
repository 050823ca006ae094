/** Sentences that warn of what a good-looking panel does not say. One for each matter, in a fixed order. */

import type { ModelLife } from "../earth/index.ts";
import type { ReceiverReading } from "../panel/index.ts";
import { givesBearing } from "../radio/index.ts";
import { mayBeFarOff } from "./rough-signal.ts";
import type { Scene } from "./scene.ts";

/** Stands on every screen, sheet and plan. */
export const TRAINING_CAUTION =
  "A training aid, not for navigation: current charts and publications, the regulations and your instructor decide.";

export function cautionsFor(scene: Scene, model: ModelLife, receivers: readonly ReceiverReading[]): string[] {
  const cautions: string[] = [];
  if (!model.dateInside)
    cautions.push(
      `${scene.date} lies outside the life of ${model.name} (${model.validFrom} to ${model.validTo}); variation is carried on from it and grows uncertain.`,
    );
  for (const reading of receivers) cautions.push(...receiverCautions(reading));
  return [...new Set(cautions)];
}

function receiverCautions(reading: ReceiverReading): string[] {
  const { settings, signal, station, geometry, ident } = reading;
  const cautions: string[] = [];
  if (station === null || geometry === null) return cautions;
  const name = settings.name;
  if (signal.kind !== "none" && geometry.serviceVolume === "outside")
    cautions.push(
      `${name}: ${station.ident} is received beyond its published service volume; nobody has checked its signal here.`,
    );
  if (signal.kind === "weak")
    cautions.push(
      `${name}: ${station.ident} arrives weaker than the published minimum; do not rely on the needle.`,
    );
  if (signal.kind !== "none" && mayBeFarOff(reading))
    cautions.push(
      `${name}: the signal of ${station.ident} is bent or rough here; do not use it, however steady the needle looks just now.`,
    );
  if (signal.kind !== "none" && (ident.kind === "test" || ident.kind === "none" || ident.kind === "dme-only"))
    cautions.push(
      `${name}: ${station.ident} is not identified; do not use it, however good the needle looks.`,
    );
  // What only tells a distance has no radials that could be off.
  if (station.declinationEstimated && givesBearing(station))
    cautions.push(
      `${station.ident}: its declination is not in the source; today's variation stands in for it, and its radials may be some degrees off.`,
    );
  return cautions;
}
