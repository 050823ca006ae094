/**
 * What the covers leave to be seen on the chart. A cover hides a thing together with everything on the chart that would give it
 * away: an aircraft with its radial and its distance from the course, a heading with the turn of the dart and the track.
 */

import { type CoverPart, isCovered, type Situation } from "../../scene/index.ts";

export interface SeenOnChart {
  /** False: the whole sheet lies under a strip. */
  readonly chart: boolean;
  readonly aircraft: boolean;
  readonly heading: boolean;
}

export interface SeenOfReceiver {
  /** Which station it is tuned to; without it no line may start there. */
  readonly station: boolean;
  readonly radial: boolean;
  readonly course: boolean;
  /** Which half of the course line is TO and which FROM, and whether a flag shows at all. */
  readonly halves: boolean;
  /** Whether the station is received at all, which the flag says too. */
  readonly reception: boolean;
  /** How far off the course line the aircraft is. */
  readonly offset: boolean;
  readonly distance: boolean;
}

export function seenOnChart(situation: Situation): SeenOnChart {
  const covers = situation.scene.covers;
  return {
    chart: !isCovered(covers, null, "chart"),
    aircraft: !isCovered(covers, null, "aircraft"),
    heading: !isCovered(covers, null, "heading"),
  };
}

export function seenOfReceiver(situation: Situation, receiver: string): SeenOfReceiver {
  const covers = situation.scene.covers;
  const hidden = (part: CoverPart): boolean => isCovered(covers, receiver, part);
  const panel = isCovered(covers, null, "panel");
  const aircraft = !isCovered(covers, null, "aircraft");
  // Frequency and ident each name the station.
  const station = !hidden("frequency") && !hidden("ident");
  // The tail of a magnetic indicator's pointer is the radial itself.
  const face = situation.scene.receivers.find(({ name }) => name === receiver)?.face;
  const pointer = face === "rmi" && hidden("needle");
  const course = station && !hidden("course") && !isPlaceSought(covers);
  return {
    station,
    radial: station && aircraft && !pointer,
    course,
    halves: course && !panel && !hidden("flag"),
    reception: !panel && !hidden("flag"),
    offset: course && aircraft && !panel && !hidden("needle"),
    distance: station && aircraft && !hidden("dme"),
  };
}

/** Where aircraft and argument are covered, the place is to be found from the panel: the line that leads to it is the learner's to draw. */
const isPlaceSought = (covers: readonly string[]): boolean =>
  isCovered(covers, null, "aircraft") && isCovered(covers, null, "reasons");

/** What strips on the sheet say is covered, of what this chart would otherwise show. */
export function coveredOnChart(situation: Situation, receiver?: string): string[] {
  const chosen = receiver ?? situation.scene.receivers[0]?.name;
  const seen = seenOnChart(situation);
  const covered = seen.aircraft ? (seen.heading ? [] : ["heading"]) : ["aircraft"];
  const sought = isPlaceSought(situation.scene.covers);
  if (chosen !== undefined && !sought && !seenOfReceiver(situation, chosen).course)
    covered.push(`${chosen} course`);
  return covered;
}
