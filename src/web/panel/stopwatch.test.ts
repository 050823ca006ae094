import { describe, expect, it } from "vitest";
import {
  AT_REST,
  counted,
  minutesSeconds,
  minutesSecondsSpoken,
  reset,
  type Stopwatch,
  started,
  stopped,
} from "./stopwatch.ts";

const real = (watch: Stopwatch, realS: number) => counted(watch, { realS, flightS: 0, playing: false });
const flown = (watch: Stopwatch, flightS: number, playing = true) =>
  counted(watch, { realS: 0.1, flightS, playing });

describe("the stopwatch", () => {
  it("counts real time while nothing flies, and only while it runs", () => {
    expect(real(AT_REST, 5)).toBe(AT_REST);
    const watch = real(real(started(AT_REST), 5), 2.5);
    expect(watch.countedS).toBe(7.5);
    expect(real(stopped(watch), 9).countedS).toBe(7.5);
    expect(real(started(stopped(watch)), 1).countedS).toBe(8.5);
  });

  it("counts the flight's time once it plays, waits while it is halted, and goes back with it", () => {
    const watch = flown(started(AT_REST), 20);
    expect(watch.countedS).toBe(20);
    expect(flown(watch, 0, false).countedS).toBe(20);
    expect(flown(watch, -15, false).countedS).toBe(5);
    expect(flown(watch, -50, false).countedS).toBe(0);
  });

  it("counts real time again when started anew while the flight is halted", () => {
    const again = started(stopped(flown(started(AT_REST), 20)));
    expect(real(again, 3).countedS).toBe(23);
  });

  it("is reset, running or not", () => {
    const watch = real(started(AT_REST), 61);
    expect(reset(watch)).toEqual({ ...watch, countedS: 0 });
    expect(reset(stopped(watch)).running).toBe(false);
  });

  it("is written in minutes and seconds, and spoken", () => {
    expect([0, 59.99, 60, 605, 6000].map(minutesSeconds)).toEqual([
      "00:00",
      "00:59",
      "01:00",
      "10:05",
      "100:00",
    ]);
    expect([1, 60, 125].map(minutesSecondsSpoken)).toEqual(["1 second", "1 minute", "2 minutes 5 seconds"]);
  });
});
