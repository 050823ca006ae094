import {
  compassDeg,
  compassFromMagnetic,
  direct,
  latLon,
  magneticDeg,
  magneticFromCompass,
  magneticFromTrue,
  reciprocal,
  stationDeg,
  trueDeg,
  trueFromMagnetic,
  trueFromStation,
  turned,
  wrap180,
} from "../../src/earth/index.ts";
import { checkRows, solvedBy } from "./published-rows.ts";
import radialBearingRows from "./rows/radial-bearing.json" with { type: "json" };

checkRows({
  name: "radial-bearing",
  rows: radialBearingRows,
  knownRows: 13,
  ours: solvedBy({
    "Radial to true bearing from the station": (i) => ({
      true_bearing_deg: trueFromStation(stationDeg(i.radial_deg!), i.station_variation_deg_east!),
    }),
    "RMI reading to true bearing from the station": (i) => {
      const radial = reciprocal(stationDeg(i.rmi_to_station_deg!));
      return {
        radial_deg: radial,
        true_bearing_from_station_deg: trueFromStation(radial, i.station_variation_deg_east!),
      };
    },
    "Position from radial and distance": (i) => {
      const azimuth = trueFromStation(stationDeg(i.radial_deg!), i.station_variation_deg_east!);
      const place = direct(latLon(i.station_lat_deg!, i.station_lon_deg!), azimuth, i.distance_nm!);
      return { lat_deg: place.latDeg, lon_deg: place.lonDeg };
    },
    "Relative bearing to true bearing from the object": (i) => {
      const heading = trueFromMagnetic(magneticDeg(i.magnetic_heading_deg!), i.variation_deg_east!);
      return {
        true_heading_deg: heading,
        true_bearing_from_object_deg: reciprocal(turned(heading, i.relative_bearing_deg!)),
      };
    },
    "Variation from track, drift and compass heading": (i) => {
      const trueHeading = turned(trueDeg(i.true_track_deg!), -i.drift_deg_right!);
      const magnetic = magneticFromCompass(compassDeg(i.compass_heading_deg!), i.deviation_deg_east!);
      return {
        true_heading_deg: trueHeading,
        magnetic_heading_deg: magnetic,
        variation_deg_east: wrap180(trueHeading - magnetic),
      };
    },
    "Compass to magnetic to true": (i) => {
      const magnetic = magneticFromCompass(compassDeg(i.compass_deg!), i.deviation_deg_east!);
      return { magnetic_deg: magnetic, true_deg: trueFromMagnetic(magnetic, i.variation_deg_east!) };
    },
    "Magnetic to compass": (i) => ({
      compass_deg: compassFromMagnetic(magneticDeg(i.magnetic_deg!), i.deviation_deg_east!),
    }),
    "True to magnetic": (i) => ({
      magnetic_deg: magneticFromTrue(trueDeg(i.true_deg!), i.variation_deg_east!),
    }),
    "Homing turn": (i) => ({
      new_heading_deg: turned(magneticDeg(i.magnetic_heading_deg!), i.relative_bearing_deg!),
    }),
  }),
});
