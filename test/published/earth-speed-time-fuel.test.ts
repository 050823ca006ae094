import {
  enduranceMin,
  fuelPerHourFromUse,
  fuelUsed,
  legDistanceNm,
  legGroundspeedKt,
  legTimeMin,
  offCourseCorrectionDeg,
} from "../../src/earth/index.ts";
import { checkRows, type Solve, solvedBy } from "./published-rows.ts";
import speedTimeFuelRows from "./rows/speed-time-fuel.json" with { type: "json" };

const time: Solve = (i) => {
  const timeMin = legTimeMin({ distanceNm: i.distance_nm!, groundspeedKt: i.groundspeed_kt! });
  const fuel =
    i.fuel_gal_per_h === undefined ? {} : { fuel_gal: fuelUsed({ fuelPerHour: i.fuel_gal_per_h, timeMin }) };
  return { time_min: timeMin, time_h: timeMin / 60, ...fuel };
};
const speed: Solve = (i) => ({
  groundspeed_kt: legGroundspeedKt({ distanceNm: i.distance_nm!, timeMin: i.time_min! }),
});

checkRows({
  name: "speed-time-fuel",
  rows: speedTimeFuelRows,
  knownRows: 16,
  ours: solvedBy({
    // At one knot the miles are the hours.
    "Minutes to hours": (i) => ({ hours: legDistanceNm({ groundspeedKt: 1, timeMin: i.minutes! }) }),
    "Hours to minutes": (i) => ({ minutes: legTimeMin({ distanceNm: i.hours!, groundspeedKt: 1 }) }),
    Time: time,
    "Time and fuel": time,
    "Time and fuel for a leg": time,
    "Time from a wind-triangle groundspeed": time,
    Speed: speed,
    "Fuel rate": (i) => ({ fuel_gal_per_h: fuelPerHourFromUse({ fuel: i.fuel_gal!, timeMin: i.time_min! }) }),
    Endurance: (i) => ({ time_min: enduranceMin({ fuel: i.fuel_gal!, fuelPerHour: i.fuel_gal_per_h! }) }),
    "Off-course correction by one in sixty": (i) => ({
      // The row leaves the side open; off to the left is corrected to the right.
      total_correction_deg: offCourseCorrectionDeg({
        offNm: -i.off_course_mi!,
        flownNm: i.flown_mi!,
        toFlyNm: i.to_fly_mi!,
      }),
    }),
    "Groundspeed from a climb gradient": (i) => ({
      groundspeed_kt: legGroundspeedKt({
        distanceNm: i.height_gain_ft! / i.gradient_ft_per_nm!,
        timeMin: i.time_min!,
      }),
    }),
  }),
});
