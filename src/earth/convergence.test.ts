import fc from "fast-check";
import { expect, test } from "vitest";
import { directionBack } from "./convergence.ts";
import { trueDeg, turnBetween } from "./direction.ts";
import { direct, inverse } from "./geodesic.ts";

test("the way back agrees with the geodesic's own arrival direction within 0.01 degree to 199 NM", () => {
  fc.assert(
    fc.property(
      fc.double({ min: -80, max: 80, noNaN: true }),
      fc.double({ min: -180, max: 180, noNaN: true }),
      fc.double({ min: 0, max: 360, noNaN: true }),
      fc.double({ min: 1, max: 199, noNaN: true }),
      (latDeg, lonDeg, azimuthDeg, distanceNm) => {
        const station = { latDeg, lonDeg };
        const azimuth = trueDeg(azimuthDeg);
        const place = direct(station, azimuth, distanceNm);
        const back = inverse(place, station);
        if (back.kind !== "line") throw new Error("the two places are apart");
        expect(Math.abs(turnBetween(directionBack(station, place, azimuth), back.azimuth))).toBeLessThan(
          0.01,
        );
      },
    ),
    { seed: 4, numRuns: 500 },
  );
});
