/**
 * The norths do not mix: this file compiles only while each marked line is a type error, so `tsc` is the check.
 */

import { expect, test } from "vitest";
import {
  type CompassDeg,
  compassDeg,
  compassFromMagnetic,
  direct,
  headingForCourse,
  type MagneticDeg,
  magneticDeg,
  magneticFromTrue,
  reciprocal,
  type StationDeg,
  stationDeg,
  stationFromTrue,
  type TrueDeg,
  trueDeg,
  trueFromMagnetic,
  trueFromStation,
  turnBetween,
} from "./index.ts";

const onTrue = trueDeg(90);
const onMagnetic = magneticDeg(90);
const onStation = stationDeg(90);
const onCompass = compassDeg(90);

const takes = {
  True: (direction: TrueDeg) => direction,
  Magnetic: (direction: MagneticDeg) => direction,
  Station: (direction: StationDeg) => direction,
  Compass: (direction: CompassDeg) => direction,
};

/** Never called: each line after a mark must be refused by the compiler. */
function misuses() {
  // @ts-expect-error a bare number has no north
  takes.True(90);
  // @ts-expect-error magnetic is not true
  takes.True(onMagnetic);
  // @ts-expect-error station is not true
  takes.True(onStation);
  // @ts-expect-error true is not magnetic
  takes.Magnetic(onTrue);
  // @ts-expect-error a radial is not a magnetic heading
  takes.Magnetic(onStation);
  // @ts-expect-error a heading is not a radial
  takes.Station(onMagnetic);
  // @ts-expect-error what the compass reads is not magnetic before deviation
  takes.Magnetic(onCompass);
  // @ts-expect-error and not the other way round
  takes.Compass(onMagnetic);
  // @ts-expect-error arithmetic loses the north
  takes.True(onTrue + 10);
  // @ts-expect-error the reciprocal of a radial is from station north
  takes.True(reciprocal(onStation));
  // @ts-expect-error variation is taken from a true direction, not from a magnetic one again
  magneticFromTrue(onMagnetic, 10);
  // @ts-expect-error declination belongs to radials, variation to headings
  trueFromStation(onMagnetic, 10);
  // @ts-expect-error a radial is made true by the station's declination
  trueFromMagnetic(onStation, 10);
  // @ts-expect-error a radial cannot be counted from a magnetic heading
  stationFromTrue(onMagnetic, 10);
  // @ts-expect-error no turn leads from one north to another
  turnBetween(onTrue, onMagnetic);
  // @ts-expect-error deviation is taken from a magnetic heading
  compassFromMagnetic(onTrue, 2);
  // @ts-expect-error geodesics start on a true azimuth
  direct({ latDeg: 0, lonDeg: 0 }, onStation, 10);
  // @ts-expect-error the wind triangle is worked in true
  headingForCourse({ course: onMagnetic, tasKt: 100, wind: { from: onTrue, speedKt: 10 } });
  // @ts-expect-error and its wind blows from a true direction
  headingForCourse({ course: onTrue, tasKt: 100, wind: { from: onMagnetic, speedKt: 10 } });
}

test("a direction is still a number at run time", () => {
  expect([onTrue, onMagnetic, onStation, onCompass]).toEqual([90, 90, 90, 90]);
  expect(misuses).toBeTypeOf("function");
});
