import fc from "fast-check";
import { expect, test } from "vitest";
import { spread } from "../../test/spread.ts";
import { directionBack } from "./convergence.ts";
import { trueDeg, turnBetween } from "./direction.ts";
import { direct, inverse } from "./geodesic.ts";

test("the way back agrees with the geodesic's own arrival direction within 0.01 degree to 199 NM", () => {
  fc.assert(
    fc.property(
      spread(-80, 80),
      spread(-180, 180),
      spread(0, 360),
      spread(1, 199),
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
