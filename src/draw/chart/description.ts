/** The chart in words, for whoever does not see it. What is covered is not said. */

import { inverse, latLonText, stationFromTrue, threeDigits } from "../../earth/index.ts";
import type { ReceiverReading, Reflector } from "../../panel/index.ts";
import { feet } from "../../reason/index.ts";
import type { Situation } from "../../scene/index.ts";
import { roughlyApartNm } from "./fit-view.ts";
import { frequencyText } from "./info-box.tsx";
import { hasRadials } from "./receiver-lines.ts";
import { reflectorsSeen } from "./reflectors.tsx";
import { seenOfReceiver, seenOnChart } from "./seen.ts";
import { tunedStations } from "./station-plan.ts";

/** How many stations are named before the rest are only counted. */
const NAMED_STATIONS = 8;

export const chartTitle = (situation: Situation): string =>
  situation.scene.title === "" ? "Chart" : `Chart: ${situation.scene.title}`;

/**
 * "Aircraft bears 246 from TXJ, 18.0 miles; heading 090; 3,500 feet." and on, sentence by sentence: the place seen from the first
 * receiver's station that may be named, else by latitude and longitude; then wind, receivers, stations.
 */
export function chartDescription(situation: Situation): string {
  const seen = seenOnChart(situation);
  if (!seen.chart) return "The chart is covered.";
  const sentences = [
    seen.aircraft ? aircraftSentence(situation) : "The aircraft is covered.",
    windSentence(situation),
    ...situation.receivers.map((reading) => receiverSentence(situation, reading)),
    stationsSentence(situation),
    ...reflectorsSeen(situation).map((reflector) => reflectorSentence(situation, reflector)),
  ];
  return sentences.filter((sentence) => sentence !== "").join(" ");
}

function aircraftSentence(situation: Situation): string {
  const { aircraft } = situation.scene;
  const heading = seenOnChart(situation).heading ? `; heading ${threeDigits(aircraft.heading)}` : "";
  return `Aircraft ${placeText(situation)}${heading}; ${feet(aircraft.altitudeFt).replace(" ft", " feet")}.`;
}

function placeText(situation: Situation): string {
  for (const reading of situation.receivers) {
    const { station, geometry } = reading;
    const seen = seenOfReceiver(situation, reading.settings.name);
    if (!geometry || !seen.radial || !seen.distance || !hasRadials(station)) continue;
    return `bears ${threeDigits(geometry.trueRadial)} from ${station.ident}, ${geometry.distanceNm.toFixed(1)} miles`;
  }
  return `at ${latLonText(situation.scene.aircraft.position)}`;
}

function windSentence(situation: Situation): string {
  const { from, speedKt } = situation.scene.wind;
  if (speedKt === 0) return "";
  return `Wind from ${threeDigits(from)} true, ${Math.round(speedKt)} knots.`;
}

function receiverSentence(situation: Situation, { settings, station }: ReceiverReading): string {
  const seen = seenOfReceiver(situation, settings.name);
  if (!seen.station) return "";
  const tuned = station === null ? "no station on its frequency" : station.ident;
  const course = seen.course && hasRadials(station) ? `, course ${threeDigits(settings.course)}` : "";
  return `${settings.name} tuned to ${tuned}${course}.`;
}

/** "A reflector stands on the 300 radial of TXJ, 2.0 miles out." */
function reflectorSentence({ scene }: Situation, { ident, position }: Reflector): string {
  const station = scene.stations.find((one) => one.ident === ident);
  const way = station && inverse(station.position, position);
  if (station === undefined || way?.kind !== "line")
    return `A reflector of ${ident} stands at ${latLonText(position)}.`;
  const radial = stationFromTrue(way.azimuth, station.declinationDeg);
  return `A reflector stands on the ${threeDigits(radial)} radial of ${ident}, ${way.distanceNm.toFixed(1)} miles out.`;
}

/** The tuned ones first, then by distance from the first of them: never from the aircraft, which may be covered. */
function stationsSentence(situation: Situation): string {
  const { stations } = situation.scene;
  if (stations.length === 0) return "";
  const tuned = [...tunedStations(situation).keys()];
  const others = stations.filter((station) => !tuned.includes(station));
  const anchor = tuned[0];
  if (anchor)
    others.sort(
      (a, b) => roughlyApartNm(anchor.position, a.position) - roughlyApartNm(anchor.position, b.position),
    );
  const named = [...tuned, ...others]
    .slice(0, NAMED_STATIONS)
    .map((station) => `${station.name} ${station.kind} ${station.ident} ${frequencyText(station)}`);
  const rest = stations.length - named.length;
  return `Stations: ${named.join(", ")}${rest > 0 ? ` and ${rest} more` : ""}.`;
}
