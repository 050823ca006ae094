import { expect, test } from "vitest";
import { CORVANE, HJL, OXK, onRadial, readingOf, TXJ } from "../../test/isles.ts";

const signal = (setup: Parameters<typeof readingOf>[0]) => {
  const { signal } = readingOf(setup);
  return signal.kind === "none" ? signal.why.kind : signal.kind;
};

test("a station in sight gives radial, bearing and distance", () => {
  const reading = readingOf({ at: onRadial(TXJ, 246, 18), courseDeg: 70 });
  expect(reading.signal.kind).toBe("good");
  expect(reading.radial).toBeCloseTo(246, 4);
  expect(reading.bearingTo).toBeCloseTo(66, 4);
  expect(reading.geometry?.distanceNm).toBeCloseTo(18, 4);
  // 3,478 ft above the antenna is 0.572 NM: √(18² + 0.572²) = 18.009.
  expect(reading.dme?.distanceNm).toBeCloseTo(18.009, 3);
  expect(reading).toMatchObject({ flag: "TO", needleSide: "left", fullScale: false, reversed: false });
  expect(reading.needleDots).toBeCloseTo(2, 4);
});

test("every way of receiving nothing has its reason", () => {
  const at = onRadial(TXJ, 246, 18);
  expect(signal({ at, tune: 108.2 })).toBe("no-station");
  expect(signal({ at, tune: 108.1 })).toBe("localizer-channel");
  expect(signal({ at, stations: [{ ...TXJ, status: "silent" }] })).toBe("silent");
  expect(signal({ at: onRadial(TXJ, 246, 45), altitudeFt: 300 })).toBe("below-horizon");
  expect(signal({ at: onRadial(HJL, 223, 30), tune: 113.9, land: CORVANE })).toBe("terrain");
  expect(signal({ at: onRadial(HJL, 223, 30), tune: 113.9, land: CORVANE, altitudeFt: 12_000 })).toBe("good");
  expect(signal({ at, stations: [{ ...TXJ, kind: "TACAN" }] })).toBe("distance-only");
  expect(signal({ at, stations: [{ ...TXJ, eirpW: 0.0001 }] })).toBe("too-weak");
});

test("below the published least field the signal is weak, and its needle still shows", () => {
  // √(30·0.05)/33 336 m = 36.7 µV/m: under 90, over 28.5.
  const reading = readingOf({ at: onRadial(TXJ, 246, 18), stations: [{ ...TXJ, eirpW: 0.05 }] });
  expect(reading.signal.kind).toBe("weak");
  expect(reading.geometry?.fieldMicrovoltPerM).toBeCloseTo(36.7, 1);
  expect(reading.deviationDeg).not.toBeNull();
});

test("nothing received leaves the needle parked and the flag OFF", () => {
  const reading = readingOf({ at: onRadial(TXJ, 246, 18), stations: [{ ...TXJ, status: "silent" }] });
  expect(reading).toMatchObject({
    radial: null,
    bearingTo: null,
    deviationDeg: null,
    needleDots: null,
    needleSide: null,
    flag: "OFF",
    reversed: false,
    dme: null,
    ident: { kind: "none" },
  });
});

test("in the cone the flag is OFF and the DME still reads", () => {
  const reading = readingOf({ at: onRadial(TXJ, 90, 1), altitudeFt: 8000, courseDeg: 90 });
  expect(reading.signal.kind).toBe("overhead");
  expect(reading.flag).toBe("OFF");
  expect(reading.dme?.distanceNm).toBeCloseTo(Math.hypot(1, 7978 / 6076.12), 3);
});

test("exactly overhead is overhead, not a division by zero", () => {
  const reading = readingOf({ at: TXJ.position, altitudeFt: 3500 });
  expect(reading.signal.kind).toBe("overhead");
  expect(reading.dme?.groundspeedKt).toBe(0);
});

test("two stations on a channel mix unless one is twenty decibels stronger", () => {
  const other = { ...OXK, frequencyMhz: 115.6 };
  const between = onRadial(TXJ, 205, 40);
  const mixed = readingOf({ at: between, altitudeFt: 9000, stations: [TXJ, other] });
  expect(mixed.signal.kind).toBe("two-at-once");
  expect(mixed.ident.kind).toBe("mixed");
  expect(mixed.radial).toBeNull();
  // At 5 NM against 75 NM the nearer is 23.5 dB stronger.
  const near = readingOf({ at: onRadial(TXJ, 20, 5), altitudeFt: 9000, stations: [TXJ, other] });
  expect(near.signal.kind).toBe("good");
  expect(near.station?.ident).toBe("TXJ");
});

test("what is heard tells the state of the station", () => {
  const at = onRadial(TXJ, 246, 18);
  expect(readingOf({ at }).ident).toEqual({ kind: "ident", text: "TXJ" });
  expect(readingOf({ at, stations: [{ ...TXJ, status: "test" }] }).ident).toEqual({ kind: "test" });
  expect(readingOf({ at, stations: [{ ...TXJ, status: "no-ident" }] }).ident).toEqual({
    kind: "dme-only",
    text: "TXJ",
  });
  expect(
    readingOf({ at: onRadial(OXK, 10, 20), tune: 117.3, stations: [{ ...OXK, status: "no-ident" }] }).ident,
  ).toEqual({ kind: "none" });
});

test("a receiver's error moves its radial and its needle, not the truth", () => {
  const reading = readingOf({ at: onRadial(TXJ, 246, 18), courseDeg: 70, errorDeg: 3 });
  expect(reading.radial).toBeCloseTo(249, 4);
  expect(reading.geometry?.trueRadial).toBeCloseTo(246, 4);
  expect(reading.deviationDeg).toBeCloseTo(-1, 4);
});

test("a test signal reads 000 FROM and 180 TO wherever the aircraft stands", () => {
  const vot = { ...TXJ, kind: "VOT", dmeChannel: null } as const;
  for (const bearing of [10, 100, 190, 280]) {
    const at = onRadial(TXJ, bearing, 0.5);
    expect(readingOf({ at, altitudeFt: 30, stations: [vot] }).ident.kind).toBe("test-signal");
    expect(readingOf({ at, altitudeFt: 30, stations: [vot], courseDeg: 0 })).toMatchObject({
      flag: "FROM",
      needleSide: "centre",
    });
    expect(readingOf({ at, altitudeFt: 30, stations: [vot], courseDeg: 180 })).toMatchObject({
      flag: "TO",
      needleSide: "centre",
    });
  }
});

test("DME speed is groundspeed straight in, nought abeam, and the time follows", () => {
  // Calm air, TAS 100. TXJ radial 246 is true 237; flying 066 by the station's north is straight in.
  const at = onRadial(TXJ, 246, 18);
  const inbound = readingOf({ at, headingDeg: 66 - 9 + 7.35 }).dme;
  expect(inbound?.closingKt).toBeGreaterThan(99.5);
  expect(inbound?.minutesToStation).toBeCloseTo((18.009 / 100) * 60, 1);
  const across = readingOf({ at, headingDeg: 156 - 9 + 7.35 }).dme;
  expect(across?.groundspeedKt).toBeLessThan(1);
  const outbound = readingOf({ at, headingDeg: 246 - 9 + 7.35 }).dme;
  expect(outbound?.closingKt).toBeLessThan(-99.5);
  expect(outbound?.minutesToStation).toBeNull();
});

test("the RMI's head points to the station from the nose, whatever course is selected", () => {
  const at = onRadial(TXJ, 246, 18);
  for (const courseDeg of [0, 70, 245]) {
    const reading = readingOf({ at, courseDeg, headingDeg: 36, face: "rmi" });
    expect(reading.rmiPointerRelativeDeg).toBeCloseTo(30, 4);
  }
});

test("a DME with a site of its own measures from there", () => {
  const aside = { ...TXJ, dmeSite: { position: onRadial(TXJ, 66, 2), elevationFt: 22 } };
  expect(readingOf({ at: onRadial(TXJ, 246, 18), stations: [aside] }).dme?.distanceNm).toBeCloseTo(20.008, 2);
});
