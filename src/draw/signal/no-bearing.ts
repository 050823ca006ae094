/** Why there is nothing to compare, in a sentence. */

import type { NoSignal, ReceiverReading } from "../../panel/index.ts";
import { MONITOR_WORDS } from "../../reason/index.ts";

/** With any cover in the scene the reason is withheld: it would tell of place, station, flag. */
export function noBearingSentence(reading: ReceiverReading, covers: readonly string[] = []): string {
  const plain = `${reading.settings.name} measures no bearing: there are no two waves to compare`;
  const why = covers.length > 0 ? "" : whyNone(reading);
  return why === "" ? `${plain}.` : `${plain}. ${why}`;
}

function whyNone({ signal }: ReceiverReading): string {
  switch (signal.kind) {
    case "good":
    case "weak":
      return "";
    case "overhead":
      return `You are in the cone over ${signal.station.ident}, where the wave turns with no direction.`;
    case "two-at-once":
      return `${signal.stations.map(({ ident }) => ident).join(" and ")} come in at once, and neither can be told from the other.`;
    case "none":
      return whyNothing(signal.why);
  }
}

function whyNothing(why: NoSignal): string {
  switch (why.kind) {
    case "no-station":
      return "No station is on this frequency.";
    case "localizer-channel":
      return "This is a localizer's channel: it sends 90 and 150 Hz, and no 30.";
    case "distance-only":
      return `${why.station.ident} gives distance only.`;
    case "silent":
      return `${why.station.ident} is silent.`;
    case "below-horizon":
      return `${why.station.ident} is below the horizon.`;
    case "terrain":
      return `${why.peakName} stands before ${why.station.ident}.`;
    case "too-weak":
      return `${why.station.ident} is too weak here.`;
    case "flagged":
      return `${why.station.ident} arrives, but the receiver's monitors found that ${MONITOR_WORDS[why.cause]}.`;
  }
}
