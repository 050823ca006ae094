import {
  compassDeg,
  fuelUsed,
  headingAndTasForTrack,
  headingForCourse,
  legDistanceNm,
  magneticFromTrue,
  nmFromSm,
  smFromNm,
  trackForHeading,
  trueDeg,
  turned,
  windFromTriangle,
} from "../../src/earth/index.ts";
import { checkRows, type Solve, solvedBy } from "./published-rows.ts";
import windTriangleRows from "./rows/wind-triangle.json" with { type: "json" };

type Inputs = Parameters<Solve>[0];

const wind = (i: Inputs) => ({
  from: trueDeg(i.wind_from_deg!),
  speedKt: i.wind_kt ?? nmFromSm(i.wind_mph!),
});
const tasKt = (i: Inputs) => i.tas_kt ?? nmFromSm(i.tas_mph!);

function held(i: Inputs) {
  const answer = headingForCourse({ course: trueDeg(i.true_course_deg!), tasKt: tasKt(i), wind: wind(i) });
  if (answer.kind !== "held") throw new Error("the course cannot be held");
  return answer;
}

function madeGood(i: Inputs) {
  const answer = trackForHeading({ heading: trueDeg(i.true_heading_deg!), tasKt: tasKt(i), wind: wind(i) });
  if (answer.kind !== "moving") throw new Error("the aircraft stands");
  return {
    true_track_deg: answer.track,
    drift_deg_right: answer.driftDeg,
    groundspeed_kt: answer.groundspeedKt,
    groundspeed_mph: smFromNm(answer.groundspeedKt),
  };
}

checkRows({
  name: "wind-triangle",
  rows: windTriangleRows,
  knownRows: 28,
  ours: solvedBy({
    "Heading and groundspeed for a course": (i) => {
      const { heading, groundspeedKt, correctionDeg } = held(i);
      return { true_heading_deg: heading, groundspeed_kt: groundspeedKt, wca_deg: correctionDeg };
    },
    "Drift, track and groundspeed for a heading": madeGood,
    "Track and groundspeed for a heading": madeGood,
    "Left drift": (i) => ({ true_track_deg: turned(trueDeg(i.true_heading_deg!), i.drift_deg_right!) }),
    "Correction to heading": (i) => ({ true_heading_deg: turned(trueDeg(i.true_course_deg!), i.wca_deg!) }),
    "Wind from heading, TAS, track and groundspeed": (i) => {
      const { from, speedKt } = windFromTriangle({
        heading: trueDeg(i.true_heading_deg!),
        tasKt: i.tas_kt!,
        track: trueDeg(i.true_track_deg!),
        groundspeedKt: i.groundspeed_kt!,
      });
      return { wind_from_deg: from, wind_kt: speedKt };
    },
    "Wind from course, correction, TAS and groundspeed": (i) => {
      const track = trueDeg(i.true_course_deg!);
      const { from, speedKt } = windFromTriangle({
        heading: turned(track, i.wca_deg!),
        tasKt: tasKt(i),
        track,
        groundspeedKt: nmFromSm(i.groundspeed_mph!),
      });
      return { wind_from_deg: from, wind_mph: smFromNm(speedKt) };
    },
    "Heading and airspeed needed for a track and groundspeed": (i) => {
      const needed = headingAndTasForTrack({
        track: trueDeg(i.true_track_deg!),
        groundspeedKt: i.groundspeed_kt!,
        wind: wind(i),
      });
      return { true_heading_deg: needed.heading, tas_kt: needed.tasKt };
    },
    "Time, compass heading, distance and fuel in a climb or descent": (i) => {
      const { heading, groundspeedKt } = held(i);
      const timeMin = i.height_change_ft! / i.rate_ft_per_min!;
      const magnetic = magneticFromTrue(heading, i.variation_deg_east!);
      return {
        time_min: timeMin,
        compass_heading_deg: compassDeg(magnetic + i.deviation_deg_added!),
        distance_nm: legDistanceNm({ groundspeedKt, timeMin }),
        fuel_gal: fuelUsed({ fuelPerHour: i.fuel_gal_per_h!, timeMin }),
      };
    },
  }),
});
