/**
 * The demo scenes' answers, worked by hand. A place given as "TXJ 246/18" is on radial 246.00 at 18.00 NM by definition; what a
 * second station makes of it was worked with geographiclib on WGS 84 and is checked against the sphere.
 */

import {
  alongEllipsoid,
  dm,
  echoOffDeg,
  type HandAircraft,
  type HandPeak,
  type HandStation,
  type Place,
} from "./demo-by-hand.ts";

/** Copied from the table of the demo world, not from the station file. */
export const STATIONS: Readonly<Record<string, HandStation>> = {
  HJL: { at: [dm(-10, 20.0), dm(1, 27.0)], elevationFt: 1240, declinationDeg: -10, vorClass: "VH" },
  PJH: { at: [dm(-10, 31.5), dm(1, 33.0)], elevationFt: 85, declinationDeg: -9, vorClass: "T" },
  BJQ: { at: [dm(-10, 41.0), dm(0, 39.0)], elevationFt: 640, declinationDeg: -10, vorClass: "VL" },
  TXJ: { at: [dm(-10, 9.0), dm(2, 19.0)], elevationFt: 22, declinationDeg: -9, vorClass: "VL" },
  OXK: { at: [dm(-11, 24.0), dm(1, 44.0)], elevationFt: 310, declinationDeg: -10, vorClass: "VL" },
  LJY: { at: [dm(-9, 33.0), dm(1, 10.0)], elevationFt: 30, declinationDeg: -9, vorClass: "VL" },
  SRX: { at: [dm(-11, 7.0), dm(2, 47.0)], elevationFt: 260, declinationDeg: -10, vorClass: "VL" },
  PJT: { at: [dm(-10, 31.3), dm(1, 33.2)], elevationFt: 85, declinationDeg: -9, vorClass: null },
};

export const PEAKS: readonly HandPeak[] = [
  { at: [dm(-10, 27.5), dm(1, 22.0)], elevationFt: 4260, baseRadiusNm: 6 },
  { at: [dm(-10, 39.0), dm(0, 36.0)], elevationFt: 1450, baseRadiusNm: 3.5 },
  { at: [dm(-11, 26.5), dm(1, 42.5)], elevationFt: 1910, baseRadiusNm: 3 },
  { at: [dm(-11, 7.5), dm(2, 47.5)], elevationFt: 340, baseRadiusNm: 1 },
];

/** Where each scene puts the aircraft: a station's radial and miles, or degrees and minutes; heading magnetic; altitude, feet. */
const AIRCRAFT = `
  01 TXJ 246 18    090  3500
  02 HJL 256 24    346  3500
  03 BJQ 084 20    270  2500
  04 BJQ 084 20    345  2500
  05 HJL 088 26    085  3500
  06 OXK 355 30    345  4500
  07 TXJ 335 18    120  3500
  08 HJL 127 25    311  3500
  09 HJL 088 20    085  3500
  10 HJL 256 32    244  3500
  11 HJL 045 3     220 11740
  12 SRX 309 1.2   129  8500
  13 SRX 041 6     129  4500
  14 HJL 223 30    046  3500
  15 at  -10,31.2 1,33.4  150    85
  16 LJY 168 45    345  2500
  17 TXJ 164 30    342  4500
  18 TXJ 246 18    061  3500
  19 BJQ 084 20    267  2500
  20 TXJ 267 26    085  3500
  21 TXJ 164 38    162  6500
  22 at  -10,35.4 1,53.1  180  3500
  23 at  -10,31.2 1,33.4  090    85
  24 LJY 140 22    300  3500
  25 LJY 140 22    130  3500
  26 SRX 311 46    309  6500
  27 PJH 110 18    282  2500
  28 TXJ 246 18    244  3500
  29 TXJ 246 18    244  3500
  30 TXJ 246 18    244  3500
`;

/** A receiver's settings and what it must show. Angles in degrees, distances in NM to a hundredth; `-` is nothing shown. */
export interface Answer {
  readonly scene: string;
  readonly receiver: string;
  readonly station: string;
  readonly courseDeg: number;
  readonly radialDeg: number | null;
  readonly distanceNm: number;
  readonly dmeNm: number | null;
  readonly deviationDeg: number | null;
  readonly dots: number | null;
  readonly side: string | null;
  readonly flag: string;
  readonly reversed: boolean;
  readonly signal: string;
  readonly volume: string;
  readonly ident: string;
}

/**
 * How a row is worked, for scene 01, NAV1, radial 246.00 and 18.00 NM given:
 *   DME        3,500 ft less 22 ft is 3,478 ft or 0.572 NM up; sqrt(18.00^2 + 0.572^2) = 18.01
 *   deviation  070 - 246 = -176; sin(-176) = -0.0698; asin = -4.00, so two dots left
 *   flag       cos(-176) = -0.998, negative: TO
 *   reversed   heading 090 and course 070 are 20 apart, not more than 90: no
 *   signal     horizon 1.23 (sqrt 3500 + sqrt 22) = 78.5 NM; 1.8 degrees up, so no cone; open water
 *   volume     VL, 3,478 ft above the station: 40 NM
 * and NAV2, Haldrey from the same place: geographiclib azimuth 088.23, less 10 W is 098.23; 098 - 098.23 = -0.23.
 * Scene 12: 8,240 ft (1.356 NM) up at 1.20 NM is 48.5 degrees above the horizon, more than 40: overhead; DME 1.81.
 * Scene 14: over Corvane, 8.95 NM out, the ray is at 1240 + 2260 x 8.95 / 30 - 0.6623 x 8.95 x 21.05 = 1,790 ft; the peak 4,260.
 * Scene 15: 1.23 (sqrt 85 + sqrt 22) = 17.1 NM to Tamsel's horizon, and it is 50.08 NM away.
 * Scene 23: a test signal's radial is 000 plus the receiver's error, 003 and 354.
 */
const ANSWERS = `
  scene rx   stn crs radial  dist   dme    dev   dots side   flag rev signal        volume  ident
  01    NAV1 TXJ 070 246.00  18.00  18.01  -4.00 2.00 left   TO   no  good          inside  ident
  01    NAV2 HJL 098  98.23  36.18  36.18  -0.23 0.11 centre FROM no  good          inside  ident
  02    NAV1 HJL 256 256.00  24.00  24.00   0.00 0.00 centre FROM no  good          inside  ident
  02    NAV2 HJL 076 256.00  24.00  24.00   0.00 0.00 centre TO   no  good          inside  ident
  03    NAV1 BJQ 270  84.00  20.00  20.00  -6.00 3.00 left   TO   no  good          inside  ident
  04    NAV1 BJQ 270  84.00  20.00  20.00  -6.00 3.00 left   TO   no  good          inside  ident
  05    NAV1 HJL 088  88.00  26.00  26.00   0.00 0.00 centre FROM no  good          inside  ident
  05    NAV2 TXJ 087 266.89  26.42  26.43  -0.11 0.06 centre TO   no  good          inside  ident
  06    NAV1 OXK 351 355.00  30.00  -      -4.00 2.00 left   FROM no  good          inside  ident
  07    NAV1 TXJ 120 335.00  18.00  18.01  35.00 5.00 right  TO   no  good          inside  ident
  07    NAV2 TXJ 155 335.00  18.00  18.01   0.00 0.00 centre TO   no  good          inside  ident
  08    NAV1 HJL 131 127.00  25.00  25.00   4.00 2.00 right  FROM yes good          inside  ident
  08    NAV2 HJL 311 127.00  25.00  25.00  -4.00 2.00 left   TO   no  good          inside  ident
  09    NAV1 HJL 088  88.00  20.00  20.00   0.00 0.00 centre FROM no  good          inside  ident
  10    NAV1 HJL 256 256.00  32.00  32.00   0.00 0.00 centre FROM no  good          inside  ident
  11    NAV1 HJL 225  45.00   3.00   3.46   0.00 0.00 centre TO   no  good          inside  ident
  12    NAV1 SRX 131 -        1.20   1.81   -    -    -      OFF  no  overhead      inside  ident
  13    NAV1 SRX 131  41.00   6.00   6.04  90.00 5.00 right  OFF  no  good          inside  ident
  14    NAV1 HJL 043 -       30.00  -       -    -    -      OFF  no  terrain       inside  none
  14    NAV2 BJQ 108 107.88  31.20  31.21   0.12 0.06 centre FROM no  good          inside  ident
  15    NAV1 HJL 161 160.51  12.81  12.81   0.49 0.24 centre FROM no  good          outside ident
  15    NAV2 TXJ 072 -       50.08  -       -    -    -      OFF  no  below-horizon outside none
  16    NAV1 LJY 348 168.00  45.00  45.00   0.00 0.00 centre TO   no  good          outside ident
  17    NAV1 SRX 344 344.00  33.98  33.99   0.00 0.00 centre FROM no  good          inside  ident
  17    NAV2 TXJ 344 164.00  30.00  30.01   0.00 0.00 centre TO   no  good          inside  ident
  18    NAV1 TXJ 066 246.00  18.00  18.01   0.00 0.00 centre TO   no  good          inside  test
  18    NAV2 HJL 098  98.23  36.18  36.18  -0.23 0.11 centre FROM no  good          inside  ident
  19    NAV1 BJQ 264  84.00  20.00  20.00   0.00 0.00 centre TO   no  good          inside  dme-only
  20    NAV1 HJL 088 -       26.42  -       -    -    -      OFF  no  silent        inside  none
  20    NAV2 TXJ 087 267.00  26.00  26.01   0.00 0.00 centre TO   no  good          inside  ident
  21    NAV1 SRX 165 -       25.98  26.00   -    -    -      OFF  no  distance-only unknown dme-only
  21    NAV2 TXJ 164 164.00  38.00  38.02   0.00 0.00 centre FROM no  good          inside  ident
  22    NAV1 HJL 131 130.84  29.94  29.94   0.16 0.08 centre FROM no  good          inside  ident
  22    NAV2 TXJ 233 233.13  36.64  36.64  -0.13 0.06 centre FROM no  good          inside  ident
  23    NAV1 PJT 360   3.00   0.22  -      -3.00 1.50 left   FROM no  good          unknown test-signal
  23    NAV2 PJT 180 354.00   0.22  -      -6.00 3.00 left   TO   no  good          unknown test-signal
  24    NAV1 LJY 317 140.00  22.00  22.01   3.00 1.50 right  TO   no  good          inside  ident
  24    NAV2 LJY 317 140.00  22.00  22.01   3.00 1.50 right  TO   no  good          inside  ident
  24    NAV3 LJY 317 140.00  22.00  22.01   3.00 1.50 right  TO   no  good          inside  ident
  25    NAV1 LJY 317 140.00  22.00  22.01   3.00 1.50 right  TO   yes good          inside  ident
  25    NAV2 LJY 317 140.00  22.00  22.01   3.00 1.50 right  TO   yes good          inside  ident
  26    NAV1 SRX 311 311.00  46.00  46.01   0.00 0.00 centre FROM no  good          inside  ident
  26    NAV2 HJL 311 130.42  45.60  45.61  -0.58 0.29 left   TO   no  good          inside  ident
  27    NAV1 PJH 290 110.00  18.00  -       0.00 0.00 centre TO   no  good          inside  ident
  27    NAV2 HJL 312 132.27  27.89  27.89   0.27 0.13 centre TO   no  good          inside  ident
  28    NAV1 TXJ 246 246.00  18.00  18.01   0.00 0.00 centre FROM no  good          inside  ident
  29    NAV1 TXJ 246 246.00  18.00  18.01   0.00 0.00 centre FROM no  good          inside  ident
  30    NAV1 TXJ 246 246.00  18.00  18.01   0.00 0.00 centre FROM no  good          inside  ident
`;

/**
 * Scenes with a signal of their own: how far the receiver reads off the answer above, and how nearly the hand knows it.
 *   28  the hangar on 300 at 2 NM, by the formula of a bend in demo-by-hand.ts, which holds within a twentieth of its greatest, 4.9
 *   29  a Doppler station: off by less than 0.073 k radians, k at most 0.1: 0.42
 *   30  60.333 blades a second leave a line of 30.333 Hz beside the 30 Hz, 0.105 as strong: off by arcsin 0.105 at most
 */
export const OFF_BY_SIGNAL: ReadonlyMap<
  string,
  { readonly offDeg: () => number; readonly withinDeg: number }
> = new Map([
  ["28", { offDeg: hangarOffDeg, withinDeg: 0.05 * 4.9 }],
  ["29", { offDeg: () => 0, withinDeg: 0.42 }],
  ["30", { offDeg: () => 0, withinDeg: 6.03 }],
]);

function hangarOffDeg(): number {
  const tamsel = station("TXJ");
  const here = need(aircraftIn.get("28"), "scene 28");
  const hangar = alongEllipsoid(tamsel.at, 300 + tamsel.declinationDeg, 2);
  return echoOffDeg(tamsel, here, { at: hangar, amplitude: 0.1, frequencyMhz: 115.6 });
}

const words = (line: string): string[] => line.trim().split(/\s+/);
const lines = (table: string): string[][] => table.trim().split("\n").map(words);
const numberOrNull = (word: string): number | null => (word === "-" ? null : Number(word));

function need<T>(value: T | undefined, what: string): T {
  if (value === undefined) throw new Error(`the table lacks ${what}`);
  return value;
}

export const station = (ident: string): HandStation => need(STATIONS[ident], ident);

/** Scene number to aircraft; a place given by radial and miles is set out with geographiclib. */
export const aircraftIn: ReadonlyMap<string, HandAircraft> = new Map(
  lines(AIRCRAFT).map(([scene = "", from = "", first = "", second = "", heading, altitude]) => {
    const minutes = (text: string): number => {
      const [degrees, part] = text.split(",").map(Number);
      return dm(need(degrees, "degrees"), need(part, "minutes"));
    };
    const at: Place =
      from === "at"
        ? [minutes(first), minutes(second)]
        : alongEllipsoid(station(from).at, Number(first) + station(from).declinationDeg, Number(second));
    return [scene, { at, headingDeg: Number(heading), altitudeFt: Number(altitude) }];
  }),
);

export const ANSWER_ROWS: readonly Answer[] = lines(ANSWERS)
  .slice(1)
  .map((row) => {
    const word = (index: number): string => need(row[index], `column ${index}`);
    return {
      scene: word(0),
      receiver: word(1),
      station: word(2),
      courseDeg: Number(word(3)),
      radialDeg: numberOrNull(word(4)),
      distanceNm: Number(word(5)),
      dmeNm: numberOrNull(word(6)),
      deviationDeg: numberOrNull(word(7)),
      dots: numberOrNull(word(8)),
      side: word(9) === "-" ? null : word(9),
      flag: word(10),
      reversed: word(11) === "yes",
      signal: word(12),
      volume: word(13),
      ident: word(14),
    };
  });
