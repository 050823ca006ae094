/** The shape of a scene file: its keys, what each may hold, and what a person is told is right. */

import * as z from "zod/mini";
import { FACES } from "../panel/index.ts";
import { landPathLeaf, landShape } from "./land-shape.ts";
import { positionShape } from "./position-shape.ts";
import { choiceLeaf, noted, numberLeaf, type RecordShape, textLeaf } from "./shape.ts";
import { signalShape } from "./signal-shape.ts";
import { pathLeaf, stationShape } from "./station-shape.ts";

export const SCENE_VERSION = 1;
export const MOST_RECEIVERS = 4;

const heading = numberLeaf({
  min: 0,
  max: 360,
  right: "a heading is 000 to 360 degrees magnetic, such as 090",
  description: "Where the nose points, degrees magnetic, 000 to 360. 360 when absent.",
  examples: [90],
});

export const aircraftLeaves = {
  at: positionShape({
    right: "write where the aircraft is, such as at: TXJ 246/18 or at: 10°18.8′S 002°03.7′E",
    description:
      "Where the aircraft is: ident, radial and NM from a station of the scene (TXJ 246/18 or TXJ246018), or latitude and longitude.",
    examples: ["TXJ 246/18", "10°18.8′S 002°03.7′E"],
  }),
  heading: z.optional(heading),
  altitude: numberLeaf({
    min: -1500,
    max: 60_000,
    right: "an altitude is feet above mean sea level, -1500 to 60000, such as 3500",
    description: "Feet above mean sea level.",
    examples: [3500],
  }),
  tas: z.optional(
    numberLeaf({
      min: 0,
      max: 600,
      right: "a true airspeed is 0 to 600 knots, such as 100",
      description: "True airspeed, knots. 100 when absent.",
      examples: [100],
    }),
  ),
};

export const receiverLeaves = {
  name: z.optional(
    textLeaf({
      max: 12,
      pattern: /^[A-Za-z][A-Za-z0-9-]*$/,
      right: "a receiver's name is a letter and then letters, digits or dashes, at most 12, such as NAV1",
      description: "What the receiver is called; NAV1, NAV2 and so on when absent.",
      examples: ["NAV1"],
    }),
  ),
  tune: textLeaf({
    max: 16,
    looksLike: ["number"],
    right: "tune a frequency such as 115.60 or the ident of a station of the scene such as TXJ",
    description: "The frequency tuned, MHz, or the ident of a station of the scene.",
    examples: [115.6, "TXJ"],
  }),
  course: z.optional(
    numberLeaf({
      min: 0,
      max: 360,
      right: "a course is 000 to 360 degrees, such as 070",
      description: "The selected course, degrees from the station's north, 000 to 360. 360 when absent.",
      examples: [70],
    }),
  ),
  face: z.optional(
    choiceLeaf(FACES, {
      right: "a face is cdi, hsi or rmi",
      description: "The instrument: cdi (fixed-card course indicator), hsi or rmi. cdi when absent.",
    }),
  ),
  error: z.optional(
    numberLeaf({
      min: -30,
      max: 30,
      right: "an error is -30 to 30 degrees added to every bearing this receiver measures, such as 4",
      description: "What this receiver adds to every bearing it measures, degrees. 0 when absent.",
      examples: [4],
    }),
  ),
};

export const coverLeaf = textLeaf({
  max: 40,
  right:
    "cover a view (chart, panel, signal, reasons), aircraft, heading, a receiver, or a part such as NAV1.needle",
  description:
    "What is hidden: chart, panel, signal, reasons, aircraft, heading, a receiver's name, or its needle, flag, course, dme, ident or frequency as in NAV1.needle.",
  examples: ["NAV1.needle"],
});

const aircraftShape = noted(z.strictObject(aircraftLeaves), "add aircraft: with at: and altitude: under it", {
  description: "Where the aircraft is and how it flies.",
});
const receiverShape = noted(z.strictObject(receiverLeaves), "", {
  id: "receiver",
  description: "A navigation receiver and its instrument.",
});

/** A calendar day. */
export const dateLeafFor = (description: string) =>
  textLeaf({
    max: 20,
    pattern: /^\d{4}-\d{2}-\d{2}$/,
    right: "a date is year-month-day, such as 2026-06-01",
    description,
    examples: ["2026-06-01"],
  });

/** Stations as every file of ours names them. */
export const stationsShapeFor = (description: string) =>
  noted(
    z.union([pathLeaf, z.array(z.union([pathLeaf, stationShape]))]),
    "write stations: and a path such as ostrelle.stations.yaml, or a list of stations",
    { description },
  );

/** A land as every file of ours names it. */
export const landShapeFor = (description: string) =>
  noted(z.union([landPathLeaf, landShape]), "write land: and the path of a land file", { description });

export const sceneLeaves = {
  scene: noted(z.literal(SCENE_VERSION), `a scene file begins with scene: ${SCENE_VERSION}`, {
    description: "The version of the scene file, which says too that it is one.",
  }),
  title: z.optional(
    textLeaf({
      max: 200,
      blank: true,
      right: "a title has at most 200 characters",
      description: "The title.",
    }),
  ),
  about: z.optional(
    textLeaf({
      max: 4000,
      blank: true,
      right: "what it shows is told in at most 4000 characters",
      description: "What the scene shows, for the person who opens it.",
    }),
  ),
  date: z.optional(dateLeafFor("The day of the scene; magnetic variation depends on it. Today when absent.")),
  stations: stationsShapeFor(
    "A station file or worldwide table (.csv) by its path from this file, a list of them, or the stations themselves, mixed as needed.",
  ),
  land: z.optional(landShapeFor("A land file by its path from this file, or the land itself.")),
  aircraft: aircraftShape,
  wind: z.optional(
    textLeaf({
      max: 20,
      pattern: /^(calm|\d{1,3}(\.\d+)?\/\d{1,3}(\.\d+)?)$/i,
      right: "write where the wind blows from, degrees true, and its knots, such as 140/18, or calm",
      description:
        "Where the wind blows from, degrees true, and its speed in knots; or calm. Calm when absent.",
      examples: ["140/18", "calm"],
    }),
  ),
  receivers: noted(
    z.array(receiverShape).check(z.minLength(1), z.maxLength(MOST_RECEIVERS)),
    "write receivers: and under it a line such as - { name: NAV1, tune: 115.60, course: 070 }",
    { description: "One to four navigation receivers." },
  ),
  signal: z.optional(signalShape),
  cover: z.optional(
    noted(z.union([coverLeaf, z.array(coverLeaf)]), "", {
      description: "What the learner does not see and has to infer.",
    }),
  ),
  ask: z.optional(
    textLeaf({
      max: 2000,
      blank: true,
      right: "a question has at most 2000 characters",
      description: "The question put to the learner.",
    }),
  ),
};

/** A whole scene file, for the published JSON Schema. */
export const sceneFileShape = z.strictObject(sceneLeaves);

const IN_AIRCRAFT = "under aircraft:";
const IN_RECEIVER = "in a receiver, under receivers:";
const IN_SIGNAL = "under signal:";
const AT_TOP = "at the left edge, not indented";

export const SCENE: RecordShape = {
  keys: sceneLeaves,
  meant: {
    version: "scene",
    name: "title",
    notes: "about",
    description: "about",
    question: "ask",
    hide: "cover",
    station: "stations",
    nav: "receivers",
    map: "land",
    position: "aircraft",
  },
  elsewhere: {
    at: IN_AIRCRAFT,
    heading: IN_AIRCRAFT,
    altitude: IN_AIRCRAFT,
    tas: IN_AIRCRAFT,
    tune: IN_RECEIVER,
    course: IN_RECEIVER,
    face: IN_RECEIVER,
    error: IN_RECEIVER,
    noise: IN_SIGNAL,
    reflectors: IN_SIGNAL,
    propeller: IN_SIGNAL,
  },
};

export const AIRCRAFT: RecordShape = {
  keys: aircraftLeaves,
  meant: {
    position: "at",
    hdg: "heading",
    alt: "altitude",
    height: "altitude",
    speed: "tas",
    airspeed: "tas",
  },
  elsewhere: {
    wind: AT_TOP,
    date: AT_TOP,
    receivers: AT_TOP,
    cover: AT_TOP,
    ask: AT_TOP,
    tune: IN_RECEIVER,
    course: IN_RECEIVER,
  },
};

export const RECEIVER: RecordShape = {
  keys: receiverLeaves,
  meant: {
    frequency: "tune",
    freq: "tune",
    station: "tune",
    ident: "tune",
    obs: "course",
    crs: "course",
    radial: "course",
    type: "face",
    kind: "face",
    display: "face",
    instrument: "face",
  },
  elsewhere: { heading: IN_AIRCRAFT, cover: AT_TOP, wind: AT_TOP },
};
