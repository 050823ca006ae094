/** The shape of a land file: coast and relief to draw, peaks that block signals, airfields. */

import * as z from "zod/mini";
import { positionShape, ringShape } from "./position-shape.ts";
import { noted, numberLeaf, type RecordShape, textLeaf } from "./shape.ts";
import { pathLeafFor } from "./station-shape.ts";

export const LAND_VERSION = 1;

export const landPathLeaf = pathLeafFor("ostrelle.land.yaml");

const nameLeaf = (of: string) =>
  textLeaf({
    max: 80,
    looksLike: ["number", "boolean"],
    right: `write the name of the ${of}, at most 80 characters`,
    description: `The name of the ${of}.`,
  });

const heightLeaf = (description: string) =>
  numberLeaf({
    min: -1500,
    max: 30_000,
    right: "write feet above mean sea level, -1500 to 30000, such as 4260",
    description,
    examples: [4260],
  });

const placeShape = (of: string) =>
  positionShape({
    right: `write where the ${of} is, such as at: 10°27.5′S 001°22.0′E`,
    description: `Where the ${of} is.`,
    examples: ["10°27.5′S 001°22.0′E"],
  });

export const islandLeaves = {
  name: nameLeaf("island"),
  coast: ringShape("Points along the coast, in either sense; the first is not repeated."),
};

export const reliefLeaves = {
  above: heightLeaf("The land inside the ring rises above this, feet."),
  ring: ringShape("Points around the higher ground."),
};

export const peakLeaves = {
  name: nameLeaf("peak"),
  at: placeShape("peak"),
  elevation: heightLeaf("Feet above mean sea level."),
  radius: numberLeaf({
    min: 0.1,
    max: 60,
    right: "write the NM from the summit to where the mountain meets the sea, 0.1 to 60, such as 6",
    description: "Where the mountain, a cone, meets sea level, NM from the summit.",
    examples: [6],
  }),
};

export const airfieldLeaves = {
  name: nameLeaf("airfield"),
  at: placeShape("airfield"),
  elevation: heightLeaf("Feet above mean sea level."),
  runway: z.optional(
    numberLeaf({
      min: 1,
      max: 36,
      whole: true,
      right: "write the lower number painted on the runway, 1 to 36, such as 13",
      description: "The lower runway number as painted, tens of degrees magnetic.",
      examples: [13],
    }),
  ),
};

const listOf = (leaves: z.core.$ZodLooseShape, key: string, description: string) =>
  z.optional(noted(z.array(z.strictObject(leaves)), `write ${key}: and a list under it`, { description }));

const contentLeaves = {
  name: nameLeaf("land"),
  islands: listOf(islandLeaves, "islands", "Islands and other coasts."),
  relief: listOf(reliefLeaves, "relief", "Higher ground, for the tints of the chart."),
  peaks: listOf(peakLeaves, "peaks", "Mountains that block signals."),
  airfields: listOf(airfieldLeaves, "airfields", "Airfields."),
};

export const landFileLeaves = {
  land: noted(z.literal(LAND_VERSION), `a land file begins with land: ${LAND_VERSION}`, {
    description: "The version of the land file, which says too that it is one.",
  }),
  ...contentLeaves,
};

/** A whole land file, for the published JSON Schema. */
export const landFileShape = z.strictObject(landFileLeaves);
/** The land written inside a scene, without the version. */
export const landShape = noted(z.strictObject(contentLeaves), "", {
  id: "land",
  description: "The ground under the scene.",
});

const PEAK_WORDS = { height: "elevation", top: "elevation", position: "at", base: "radius" };

export const LAND_FILE: RecordShape = {
  keys: landFileLeaves,
  meant: { island: "islands", mountains: "peaks" },
};
export const LAND: RecordShape = { ...LAND_FILE, keys: contentLeaves };
export const ISLAND: RecordShape = { keys: islandLeaves, meant: { ring: "coast", outline: "coast" } };
export const RELIEF: RecordShape = { keys: reliefLeaves, meant: { coast: "ring", elevation: "above" } };
export const PEAK: RecordShape = { keys: peakLeaves, meant: PEAK_WORDS };
export const AIRFIELD: RecordShape = { keys: airfieldLeaves, meant: { ...PEAK_WORDS, rwy: "runway" } };
