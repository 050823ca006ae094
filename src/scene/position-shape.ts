/** The shape of a place in a file: one text, or latitude and longitude side by side or under their names. */

import * as z from "zod/mini";
import { noted, numberLeaf, type RecordShape, textLeaf } from "./shape.ts";

const RIGHT = "write it like 10°18.8′S or -10.313";

const coordinate = (limit: number, description: string) =>
  z.union([
    numberLeaf({ min: -limit, max: limit, right: RIGHT, description }),
    textLeaf({ max: 40, right: RIGHT, description }),
  ]);

const latitude = noted(coordinate(90, "Degrees, north positive; or with N or S."), RIGHT, {
  id: "latitude",
  description: "Latitude.",
});
const longitude = noted(coordinate(180, "Degrees, east positive; or with E or W."), RIGHT, {
  id: "longitude",
  description: "Longitude.",
});

const latLonLeaves = { lat: latitude, lon: longitude };

/** `{ lat: -10.313, lon: 2.062 }` */
export const LAT_LON: RecordShape = {
  keys: latLonLeaves,
  meant: { latitude: "lat", longitude: "lon", long: "lon", lng: "lon" },
};

/** Any form of a place; `right` is what a person is told where it is missing. */
export const positionShape = ({
  right,
  ...told
}: {
  right: string;
  description: string;
  examples?: unknown[];
}) => noted(z.union([z.string(), z.strictObject(latLonLeaves), z.tuple([latitude, longitude])]), right, told);

/** A ring of places. */
export const ringShape = (description: string) =>
  noted(
    z
      .array(positionShape({ right: "write each point as [lat, lon]", description: "A point of the ring." }))
      .check(z.minLength(3)),
    "write a list of at least three points such as - [-10.25, 1.40]",
    { description },
  );
