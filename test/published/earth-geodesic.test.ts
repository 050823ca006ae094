import { direct, inverse, latLon, M_PER_NM, trueDeg } from "../../src/earth/index.ts";
import {
  sphereAzimuthDeg,
  sphereCrossing,
  sphereCrossTrack,
  sphereDestination,
  sphereDistanceNm,
  sphereIntermediate,
} from "../second-route.ts";
import { checkRows, type Solve, solvedBy } from "./published-rows.ts";
import geodesicRows from "./rows/geodesic.json" with { type: "json" };

const from = (i: Readonly<Record<string, number>>) => latLon(i.lat_1_deg!, i.lon_1_deg!);
const to = (i: Readonly<Record<string, number>>) => latLon(i.lat_2_deg!, i.lon_2_deg!);

const inverseProblem: Solve = (i) => {
  const line = inverse(from(i), to(i));
  if (line.kind === "same-place") return { distance_m: line.distanceM };
  return { distance_m: line.distanceM, azimuth_1_deg: line.azimuth, azimuth_2_deg: line.arrivalAzimuth };
};

const directProblem: Solve = (i) => {
  const end = direct(from(i), trueDeg(i.azimuth_1_deg!), i.distance_m! / M_PER_NM);
  const line = inverse(from(i), end);
  const azimuth2 = line.kind === "line" ? { azimuth_2_deg: line.arrivalAzimuth } : {};
  return { lat_2_deg: end.latDeg, lon_2_deg: end.lonDeg, ...azimuth2 };
};

checkRows({
  name: "geodesic",
  rows: geodesicRows,
  knownRows: 24,
  ours: solvedBy({
    "Inverse problem on WGS 84": inverseProblem,
    "Inverse problem, GRS 80 (same on WGS 84 to 0.1 mm)": inverseProblem,
    "Short line": inverseProblem,
    "Along the equator": inverseProblem,
    "Across the date line": inverseProblem,
    "Coincident points": inverseProblem,
    "Direct problem on WGS 84": directProblem,
    "Direct problem through the pole": directProblem,
    "Great-circle distance and initial course, sphere": (i) => {
      const distance = sphereDistanceNm(from(i), to(i));
      return {
        distance_nm: distance,
        distance_rad: (distance / 60 / 180) * Math.PI,
        azimuth_1_deg: sphereAzimuthDeg(from(i), to(i)),
      };
    },
    "Point on a radial, sphere": (i) => {
      const end = sphereDestination(from(i), i.azimuth_1_deg!, i.distance_nm!);
      return { lat_2_deg: end.latDeg, lon_2_deg: end.lonDeg };
    },
    "Cross-track and along-track distance, sphere": (i) => {
      const place = latLon(i.point_lat_deg!, i.point_lon_deg!);
      const { crossTrackNm, alongTrackNm } = sphereCrossTrack(from(i), to(i), place);
      return {
        cross_track_nm_right: crossTrackNm,
        along_track_nm: alongTrackNm,
        distance_to_point_nm: sphereDistanceNm(from(i), place),
      };
    },
    "Point 40 percent of the way, sphere": (i) => {
      const place = sphereIntermediate(from(i), to(i), i.fraction!);
      return { lat_deg: place.latDeg, lon_deg: place.lonDeg };
    },
    "Intersection of two true radials, sphere": (i) => {
      const place = sphereCrossing(from(i), i.true_radial_1_deg!, to(i), i.true_radial_2_deg!);
      return place ? { lat_deg: place.latDeg, lon_deg: place.lonDeg } : {};
    },
  }),
});
