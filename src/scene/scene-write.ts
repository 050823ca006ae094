/** A scene as a new scene file, in the order and the form a pilot would say it. To change a file there is, see scene-edit.ts. */

import type { ReceiverSettings } from "../panel/index.ts";
import { frequencyText } from "../radio/index.ts";
import { landLines } from "./land-text.ts";
import type { Scene } from "./scene.ts";
import { SCENE_VERSION } from "./scene-shape.ts";
import { signalLines } from "./signal-text.ts";
import { stationLines } from "./station-text.ts";
import {
  directionText,
  numberText,
  positionText,
  quotedIfNeeded,
  textPair,
  windText,
} from "./written-values.ts";

/** What the scene itself no longer knows: which files it came from, and from which station its place was counted. */
export interface SceneWriteOptions {
  /** Paths of station files from the folder of the new file; without them the stations are written into it. */
  readonly stations?: string | readonly string[];
  /** Path of the land file; without it the land is written into the scene. */
  readonly land?: string;
  /** The aircraft's place as the file shall say it, such as `TXJ 246/18`; degrees and minutes when absent. */
  readonly at?: string;
}

/** The text of a scene file that reads back as this scene, within the roundings of `written-values.ts`. */
export function writeScene(scene: Scene, { stations, land, at }: SceneWriteOptions = {}): string {
  const { aircraft } = scene;
  return [
    `scene: ${SCENE_VERSION}\n`,
    scene.title && textPair("title", scene.title),
    scene.about && textPair("about", scene.about),
    `date: ${scene.date}\n`,
    stations === undefined
      ? block("stations", scene.stations.flatMap(stationLines), " []")
      : `stations: ${pathsText(stations)}\n`,
    land !== undefined
      ? `land: ${quotedIfNeeded(land)}\n`
      : scene.land && block("land", landLines(scene.land), ""),
    block(
      "aircraft",
      [
        `at: ${at === undefined ? positionText(aircraft.position) : quotedIfNeeded(at)}`,
        `heading: ${directionText(aircraft.heading)}`,
        `altitude: ${numberText(aircraft.altitudeFt, 1)}`,
        `tas: ${numberText(aircraft.tasKt, 1)}`,
      ],
      "",
    ),
    `wind: ${windText(scene.wind)}\n`,
    block(
      "receivers",
      scene.receivers.map((receiver) => `- ${receiverText(receiver)}`),
      " []",
    ),
    scene.signal && block("signal", signalLines(scene.signal), " {}"),
    scene.covers.length > 0 && `cover: [${scene.covers.join(", ")}]\n`,
    scene.ask && textPair("ask", scene.ask),
  ]
    .filter(Boolean)
    .join("");
}

/** `{ name: NAV1, tune: 115.60, course: 070 }`, with face and error where they are not the usual. */
export function receiverText({
  name,
  frequencyMhz,
  course,
  face,
  bearingErrorDeg,
}: ReceiverSettings): string {
  const error = numberText(bearingErrorDeg, 2);
  const pairs = [
    `name: ${quotedIfNeeded(name)}`,
    `tune: ${frequencyText(frequencyMhz)}`,
    `course: ${directionText(course)}`,
    face === "cdi" ? "" : `face: ${face}`,
    error === "0" ? "" : `error: ${error}`,
  ];
  return `{ ${pairs.filter(Boolean).join(", ")} }`;
}

const pathsText = (paths: string | readonly string[]): string =>
  typeof paths === "string"
    ? quotedIfNeeded(paths)
    : `[${paths.map((path) => JSON.stringify(path)).join(", ")}]`;

const block = (key: string, lines: readonly string[], empty: string): string =>
  lines.length === 0 ? `${key}:${empty}\n` : `${key}:\n${lines.map((line) => `  ${line}\n`).join("")}`;
