/** Is it the right station, and fit for use? Only the ident tells. */

import {
  explainFrequency,
  frequencyText,
  givesBearing,
  givesDistance,
  printedMorse,
} from "../radio/index.ts";
import type { Rule } from "./step.ts";

const TUNING = "FAA Aeronautical Information Manual, para 1-1-3; ICAO Annex 10 Vol V, 4.2";

export const tuned: Rule = ({ reading }) => {
  const { settings, station, signal } = reading;
  const frequency = frequencyText(settings.frequencyMhz);
  const base = { rule: "tuned", numbers: { frequencyMhz: settings.frequencyMhz }, source: TUNING } as const;
  if (signal.kind === "none" && signal.why.kind === "localizer-channel")
    return {
      ...base,
      title: "Not a VOR channel",
      sentence: `${explainFrequency(settings.frequencyMhz).explanation}.`,
      parts: ["frequency"],
    };
  if (station === null)
    return {
      ...base,
      title: "Nothing on this channel",
      sentence: `No station of this scene sends on ${frequency}: check the frequency against the chart.`,
      parts: ["frequency", "flag"],
    };
  if (signal.kind === "two-at-once") {
    const [one, other] = signal.stations;
    return {
      ...base,
      title: "Two stations at once",
      sentence: `${frequency} brings ${one.name} and ${other.name} together, neither strong enough to cover the other: both idents sound and the needle means nothing.`,
      parts: ["frequency", "ident", "needle", "flag"],
    };
  }
  if (signal.kind === "none" && signal.why.kind !== "distance-only" && reading.ident.kind === "none")
    return {
      ...base,
      title: "Tuned, not proved",
      sentence: `${frequency} is ${station.name}, ${station.ident}, by the chart, but no ident is heard: nothing on the panel may be believed.`,
      parts: ["frequency", "ident", "flag"],
    };
  if (reading.ident.kind === "test-signal")
    return {
      ...base,
      title: "A test signal",
      sentence: `${frequency} is the test signal of ${station.name}: a row of dots or a steady tone is heard, and no letters.`,
      source: "FAA Aeronautical Information Manual, para 1-1-4",
      parts: ["frequency", "ident", "station"],
    };
  if (reading.ident.kind !== "ident") return null;
  return {
    ...base,
    title: "Tuned and proved",
    sentence: `${frequency} is ${station.name}, and its ident is heard: ${station.ident}, ${printedMorse(station.ident)}.`,
    parts: ["frequency", "ident", "station"],
  };
};

export const identified: Rule = ({ reading }) => {
  const { station, signal, ident, settings } = reading;
  if (station === null || signal.kind === "two-at-once" || ident.kind === "ident") return null;
  if (ident.kind === "test-signal") return null;
  const frequency = frequencyText(settings.frequencyMhz);
  const base = { rule: "identified", numbers: { frequencyMhz: settings.frequencyMhz } } as const;
  const parts = ["frequency", "ident", "station"] as const;
  if (ident.kind === "test")
    return {
      ...base,
      title: "On test",
      sentence: `${frequency} sends T-E-S-T, ${printedMorse("TEST")}: ${station.name} is being worked on, so do not use it, however lively the needle.`,
      source: "FAA Aeronautical Information Manual, para 1-1-3 c",
      parts,
    };
  if (ident.kind === "dme-only" && givesBearing(station))
    return {
      ...base,
      title: "Only the DME is heard",
      sentence: `Only the high 1350 Hz ident is heard, once in half a minute or so: the distance may be used, the bearing not.`,
      source: "FAA Aeronautical Information Manual, para 1-1-7",
      parts: [...parts, "dme"],
    };
  if (ident.kind === "dme-only")
    return {
      ...base,
      title: "Distance only",
      sentence: `${frequency} is paired with ${station.name}, ${station.ident}, which gives a distance and no bearing: the needle has nothing to say.`,
      source: "FAA Aeronautical Information Manual, para 1-1-7",
      parts: [...parts, "dme"],
    };
  if (signal.kind === "none") return null;
  return {
    ...base,
    title: "No ident",
    sentence: `No ident is heard on ${frequency}, so nothing proves that this is ${station.name} or that it is fit for use: do not use it.`,
    source: "FAA Aeronautical Information Manual, para 1-1-3 c",
    parts: givesDistance(station) ? [...parts, "dme"] : parts,
  };
};
