/** The shape of a station, and of a station file: keys, what each may hold, and what a person is told is right. */

import * as z from "zod/mini";
import { STATION_KINDS, STATION_STATUSES } from "../radio/index.ts";
import { positionShape } from "./position-shape.ts";
import { choiceLeaf, noted, numberLeaf, type RecordShape, textLeaf } from "./shape.ts";

export const STATIONS_VERSION = 1;

/** The path of another file. `example` is one such as belongs there. */
export const pathLeafFor = (example: string) =>
  textLeaf({
    max: 1000,
    right: `write the path of a file, from the folder of this one, such as ${example}`,
    description: "The path of a file, from the folder of the file that names it.",
    examples: [example],
  });

export const pathLeaf = pathLeafFor("ostrelle.stations.yaml");

const elevation = (description: string) =>
  numberLeaf({
    min: -1500,
    max: 30_000,
    right: "an elevation is feet above mean sea level, -1500 to 30000, such as 1240",
    description,
    examples: [1240],
  });

export const stationLeaves = {
  ident: textLeaf({
    max: 4,
    pattern: /^[A-Z0-9]{1,4}$/,
    looksLike: ["number", "boolean"],
    right: "an ident is one to four capital letters or digits, such as HJL",
    description: "One to four capital letters or digits.",
    examples: ["HJL"],
  }),
  name: z.optional(
    textLeaf({
      max: 80,
      looksLike: ["number", "boolean"],
      right: "a name has at most 80 characters",
      description: "The station's name. The ident when absent.",
      examples: ["Haldrey"],
    }),
  ),
  kind: choiceLeaf(STATION_KINDS, {
    right: "a kind is VOR, VOR-DME, VORTAC, DME, TACAN or VOT",
    description: "What stands there.",
  }),
  frequency: z.optional(
    textLeaf({
      max: 16,
      looksLike: ["number"],
      right: "write the frequency in MHz, such as frequency: 113.90",
      description:
        "MHz. For a DME or TACAN alone, the frequency its channel is paired with; there channel may stand instead.",
      examples: [113.9],
    }),
  ),
  channel: z.optional(
    textLeaf({
      max: 8,
      right: "a DME channel is a number from 1 to 126 with X or Y, such as 86X",
      description:
        "The DME channel, checked against the frequency. It follows from the frequency when absent.",
      examples: ["86X"],
    }),
  ),
  at: positionShape({
    right: "write where the station stands, such as at: 10°20.0′S 001°27.0′E",
    description: "Where the station stands, WGS 84.",
    examples: ["10°20.0′S 001°27.0′E"],
  }),
  elevation: elevation("The antenna's height, feet above mean sea level."),
  declination: z.optional(
    textLeaf({
      max: 20,
      looksLike: ["number"],
      pattern: /^([-+]?\d{1,3}(\.\d+)?|\d{1,3}(\.\d+)?\s*°?\s*[EWew])$/,
      right: "write degrees with E or W, such as 10W, or a number with east positive, such as -10",
      description:
        "The north its radials are counted from: degrees east (10E or 10) or west (10W or -10) of true north. The magnetic model's variation on the day when absent, and marked as estimated.",
      examples: ["10W", -10],
    }),
  ),
  class: z.optional(
    textLeaf({
      max: 8,
      pattern: /^[A-Z]{1,2}(\/[A-Z]{1,2})?$/,
      right: "a class is T, L, H, VL, VH, DL or DH, or one of each part such as VH/DH",
      description:
        "The published service volume: T, L, H, VL, VH, DL, DH, or both parts as VH/DH. Unknown when absent.",
      examples: ["VH", "VL/DL"],
    }),
  ),
  status: z.optional(
    choiceLeaf(STATION_STATUSES, {
      right: "a status is on-air, silent, test or no-ident",
      description: "How it works: on-air, silent, test (it sends T-E-S-T) or no-ident. on-air when absent.",
    }),
  ),
  power: z.optional(
    numberLeaf({
      min: 0.1,
      max: 10_000,
      right: "a power is 0.1 to 10000 watts radiated, such as 200",
      description:
        "Effective radiated power toward the horizon, watts. 50 for class T and 200 for others when absent.",
      examples: [200],
    }),
  ),
  dmeAt: z.optional(
    positionShape({
      right: "write where the DME stands, such as dmeAt: 10°20.1′S 001°27.2′E",
      description: "Where the DME stands when it is not beside the VOR.",
    }),
  ),
  dmeElevation: z.optional(
    elevation("The DME's height when it is not beside the VOR, feet above mean sea level."),
  ),
};

export const stationShape = noted(z.strictObject(stationLeaves), "", {
  id: "station",
  description: "A ground station.",
});

export const STATION: RecordShape = {
  keys: stationLeaves,
  meant: {
    id: "ident",
    type: "kind",
    freq: "frequency",
    mhz: "frequency",
    dme: "channel",
    position: "at",
    lat: "at",
    lon: "at",
    location: "at",
    elev: "elevation",
    altitude: "elevation",
    variation: "declination",
    magvar: "declination",
    north: "declination",
    volume: "class",
    watts: "power",
  },
};

const pathOrPaths = z.union([pathLeaf, z.array(pathLeaf)]);

export const stationFileLeaves = {
  stations: noted(z.literal(STATIONS_VERSION), `a station file begins with stations: ${STATIONS_VERSION}`, {
    description: "The version of the station file, which says too that it is one.",
  }),
  name: z.optional(
    textLeaf({
      max: 200,
      blank: true,
      right: "a name has at most 200 characters",
      description: "What the stations are called together.",
    }),
  ),
  about: z.optional(
    textLeaf({
      max: 4000,
      blank: true,
      right: "what the file holds is told in at most 4000 characters",
      description: "What the file holds and where it comes from.",
    }),
  ),
  include: z.optional(
    noted(pathOrPaths, "", {
      description: "Other station files whose stations belong here too, by their paths from this file.",
    }),
  ),
  list: z.optional(
    noted(z.array(stationShape), "write list: and the stations under it", { description: "The stations." }),
  ),
};

/** A whole station file, for the published JSON Schema. */
export const stationFileShape = z.strictObject(stationFileLeaves);

export const STATION_FILE: RecordShape = {
  keys: stationFileLeaves,
  meant: { title: "name", includes: "include", notes: "about", description: "about", navaids: "list" },
};
