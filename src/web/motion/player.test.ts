import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { geodesicDistanceNm, magneticDeg, stationDeg, trueDeg } from "../../earth/index.ts";
import { flyOn, levelFlight } from "../../flight/index.ts";
import type { Station } from "../../radio/index.ts";
import { resolveScene, type Scene } from "../../scene/index.ts";
import { createBench } from "../state/bench.ts";
import { historyOf, shownBy, trailOf } from "./flight-log.ts";
import { secondsToGo } from "./frames.ts";
import { createPlayer } from "./player.ts";

const TXJ: Station = {
  ident: "TXJ",
  name: "Tamsel",
  kind: "VOR-DME",
  frequencyMhz: 115.6,
  dmeChannel: "103X",
  position: { latDeg: -10.15, lonDeg: 2 + 19 / 60 },
  elevationFt: 22,
  dmeSite: null,
  declinationDeg: -9,
  declinationEstimated: false,
  vorClass: "VL",
  dmeClass: "DL",
  status: "on-air",
  eirpW: 200,
};
const SCENE: Scene = {
  title: "In flight",
  about: "",
  date: "2026-07-01",
  stations: [TXJ],
  land: null,
  aircraft: {
    position: { latDeg: -10.3, lonDeg: 2.06 },
    heading: magneticDeg(70),
    altitudeFt: 3500,
    tasKt: 120,
  },
  wind: { from: trueDeg(140), speedKt: 18 },
  receivers: [
    { name: "NAV1", frequencyMhz: 115.6, course: stationDeg(70), face: "cdi", bearingErrorDeg: 0 },
    { name: "NAV2", frequencyMhz: 113.9, course: stationDeg(94), face: "cdi", bearingErrorDeg: 0 },
  ],
  signal: null,
  covers: ["NAV2.needle"],
  ask: "",
};

const onBench = (scene = SCENE) => {
  const bench = createBench({ name: "in-flight", origin: "file" }, scene);
  return { bench, player: createPlayer(bench) };
};
type Motion = ReturnType<typeof onBench>;

/** Plays for so many seconds, in frames of so many. */
function fly({ player }: Motion, seconds: number, frameS = 0.4): void {
  player.play();
  for (let leftS = seconds; leftS > 1e-9; leftS -= frameS) player.goOn(Math.min(frameS, leftS));
}
const flown = (seconds: number, scene = SCENE) => flyOn(levelFlight(scene.aircraft), scene, seconds).aircraft;
const metresBetween = (one: Scene["aircraft"], other: Scene["aircraft"]): number =>
  geodesicDistanceNm(one.position, other.position) * 1852;
const expectAt = ({ bench, player }: Motion, timeS: number, scene = SCENE) => {
  expect(player.nowS.value).toBeCloseTo(timeS, 6);
  expect(metresBetween(bench.scene.value.aircraft, flown(timeS, scene))).toBeLessThan(0.5);
};

describe("playing", () => {
  it("flies the scene's aircraft in its wind, and leaves the rest of the scene alone", () => {
    const motion = onBench();
    fly(motion, 100);
    expectAt(motion, 100);
    expect({ ...motion.bench.scene.value, aircraft: SCENE.aircraft }).toEqual(SCENE);
    motion.player.pause();
    motion.player.goOn(5);
    expectAt(motion, 100);
  });

  it("remembers every second of it as the engine computes it", () => {
    const motion = onBench();
    fly(motion, 60, 7.3);
    motion.player.pause();
    const history = historyOf(motion.player.log.value, "NAV1");
    expect(history.map(({ timeS }) => timeS)).toEqual(Array.from({ length: 61 }, (_, second) => second));
    for (const point of [history[0]!, history[17]!, history[60]!]) {
      const there = resolveScene({ ...SCENE, aircraft: flown(point.timeS) }).receivers[0]!;
      const { needleDots, flag, dmeNm } = shownBy(there);
      expect(point).toEqual({
        timeS: point.timeS,
        needleDots: expect.closeTo(needleDots!, 3),
        flag,
        dmeNm: expect.closeTo(dmeNm!, 3),
      });
    }
  });

  it("turns and climbs as told, and then flies straight on", () => {
    const motion = onBench();
    motion.player.turnTo(magneticDeg(100));
    motion.player.climbTo(4000);
    fly(motion, 5);
    expect(motion.bench.scene.value.aircraft.heading).toBeCloseTo(85, 6);
    expect(motion.player.turningTo.value).toBe(100);
    fly(motion, 55);
    expect(motion.bench.scene.value.aircraft).toMatchObject({ heading: 100, altitudeFt: 4000 });
    expect([motion.player.turningTo.value, motion.player.climbingToFt.value]).toEqual([null, null]);
  });

  it("is told nothing by the heading it flies already", () => {
    const { player } = onBench();
    player.turnTo(magneticDeg(70));
    player.climbTo(3500);
    expect([player.turningTo.value, player.climbingToFt.value]).toEqual([null, null]);
  });

  it("lets a hand on the heading or the altitude overrule what was told", () => {
    const motion = onBench();
    motion.player.turnTo(magneticDeg(250));
    motion.player.climbTo(9000);
    fly(motion, 4);
    motion.bench.act({ kind: "set-heading", heading: magneticDeg(30) });
    expect([motion.player.turningTo.value, motion.player.climbingToFt.value]).toEqual([null, 9000]);
    motion.bench.act({ kind: "set-altitude", altitudeFt: 5000 });
    expect(motion.player.climbingToFt.value).toBeNull();
    const then = motion.bench.scene.value;
    fly(motion, 30);
    expect(metresBetween(motion.bench.scene.value.aircraft, flown(30, then))).toBeLessThan(0.5);
    expect(motion.bench.scene.value.aircraft.heading).toBe(30);
    // What was flown to and after the hand is exact, between the seconds too.
    const end = motion.bench.scene.value.aircraft;
    motion.player.scrubTo(10.25);
    motion.player.scrubTo(34);
    expect(metresBetween(motion.bench.scene.value.aircraft, end)).toBeLessThan(0.5);
  });
});

describe("scrubbing", () => {
  it("shows the scene of the time, with its courses, and keeps the covers of now", () => {
    const motion = onBench();
    fly(motion, 30.5);
    motion.bench.act({ kind: "set-course", receiver: "NAV1", course: stationDeg(200) });
    fly(motion, 29.5);
    motion.player.pause();
    motion.bench.act({ kind: "lift-covers" });
    motion.player.scrubTo(20.5);
    expectAt(motion, 20.5);
    expect(motion.bench.scene.value.receivers[0]!.course).toBe(70);
    expect(motion.bench.scene.value.covers).toEqual([]);
    motion.player.scrubTo(50);
    expectAt(motion, 50);
    expect(motion.bench.scene.value.receivers[0]!.course).toBe(200);
  });

  it("goes no farther than what was flown, either way", () => {
    const motion = onBench();
    motion.player.scrubTo(10);
    expect(motion.bench.scene.value).toBe(SCENE);
    fly(motion, 20);
    motion.player.scrubTo(500);
    expectAt(motion, 20);
    motion.player.scrubTo(-5);
    expectAt(motion, 0);
    expect(motion.player.endS.value).toBe(20);
  });

  it("back, and then playing on, drops what came later", () => {
    const motion = onBench();
    fly(motion, 60);
    motion.player.scrubTo(20.5);
    motion.bench.act({ kind: "set-heading", heading: magneticDeg(200) });
    fly(motion, 10);
    motion.player.pause();
    expect(motion.player.endS.value).toBeCloseTo(30.5, 6);
    expect(motion.player.log.value.map(({ timeS }) => timeS).filter((timeS) => timeS > 19)).toEqual([
      20,
      20.5,
      ...[21, 22, 23, 24, 25, 26, 27, 28, 29, 30],
      expect.closeTo(30.5, 6),
    ]);
    const end = motion.bench.scene.value.aircraft;
    const branch = { ...SCENE, aircraft: { ...flown(20.5), heading: magneticDeg(200) } };
    expect(metresBetween(end, flown(10, branch))).toBeLessThan(0.5);
    motion.player.scrubTo(25.75);
    expect(metresBetween(motion.bench.scene.value.aircraft, flown(5.25, branch))).toBeLessThan(0.5);
  });

  it("belongs to one run that is taken back at once", () => {
    const motion = onBench();
    fly(motion, 60);
    motion.player.pause();
    const end = motion.bench.scene.value;
    for (const timeS of [50, 40, 30, 20]) motion.player.scrubTo(timeS);
    motion.bench.undo();
    expect(motion.bench.scene.value).toBe(end);
    expect(motion.player.nowS.value).toBe(60);
  });
});

describe("stepping", () => {
  it("flies on by so much, and back and forth along what was flown", () => {
    const motion = onBench();
    motion.player.stepBy(10);
    expectAt(motion, 10);
    motion.player.stepBy(1);
    expectAt(motion, 11);
    motion.player.stepBy(-10);
    expectAt(motion, 1);
    expect(motion.player.endS.value).toBe(11);
    motion.player.stepBy(10);
    motion.player.stepBy(10);
    expectAt(motion, 21);
    expect(motion.player.playing.value).toBe(false);
  });

  it("halts the flight", () => {
    const motion = onBench();
    fly(motion, 3);
    motion.player.stepBy(1);
    expect(motion.player.playing.value).toBe(false);
    expectAt(motion, 4);
  });
});

describe("undo", () => {
  it("takes back a flight from play to pause at once, and brings it again", () => {
    const motion = onBench();
    fly(motion, 60);
    motion.player.pause();
    const end = motion.bench.scene.value;
    motion.bench.undo();
    expect(motion.bench.scene.value).toBe(SCENE);
    expect(motion.player.nowS.value).toBe(0);
    expect(motion.player.endS.value).toBe(60);
    motion.bench.redo();
    expect(motion.bench.scene.value).toBe(end);
    expect(motion.player.nowS.value).toBe(60);
  });

  it("keeps two flights apart", () => {
    const motion = onBench();
    fly(motion, 30);
    motion.player.pause();
    fly(motion, 30);
    motion.player.pause();
    motion.bench.undo();
    expectAt(motion, 30);
    motion.bench.undo();
    expect(motion.bench.scene.value).toBe(SCENE);
  });

  it("of a turn of the course made in flight goes back to when it was made, and halts", () => {
    const motion = onBench();
    fly(motion, 30.3);
    for (let deg = 71; deg <= 90; deg++) {
      motion.bench.act({ kind: "set-course", receiver: "NAV1", course: stationDeg(deg) }, "turn");
      motion.player.goOn(0.1);
    }
    fly(motion, 10);
    motion.bench.undo();
    expect(motion.player.playing.value).toBe(false);
    expectAt(motion, 30.3);
    expect(motion.bench.scene.value.receivers[0]!.course).toBe(70);
    motion.bench.redo();
    expect(motion.bench.scene.value.receivers[0]!.course).toBe(90);
    expectAt(motion, 42.3);
  });
});

describe("another hand on the bench", () => {
  it("that puts the aircraft elsewhere begins another flight there", () => {
    const motion = onBench();
    fly(motion, 30);
    motion.bench.act({ kind: "move-aircraft", to: { latDeg: -10.2, lonDeg: 2.5 } });
    expect([motion.player.nowS.value, motion.player.log.value.length]).toEqual([0, 0]);
    expect(motion.player.playing.value).toBe(true);
    const there = motion.bench.scene.value;
    motion.player.goOn(5);
    expectAt(motion, 5, there);
  });

  it("that opens another scene ends the flight", () => {
    const motion = onBench();
    motion.player.turnTo(magneticDeg(200));
    fly(motion, 30);
    motion.bench.open({ name: "other", origin: "file" }, { ...SCENE, title: "Other" });
    expect(motion.player.playing.value).toBe(false);
    expect(motion.player.nowS.value).toBe(0);
    expect(motion.player.turningTo.value).toBeNull();
    expect(motion.player.log.value).toEqual([]);
  });
});

describe("the trail", () => {
  it("ends at the aircraft, bends with its turns and has every whole minute", () => {
    const motion = onBench();
    fly(motion, 130.5);
    motion.player.turnTo(magneticDeg(160));
    fly(motion, 60);
    const { trail, log } = motion.player;
    expect(trail.value.at(-1)!.position).toBe(motion.bench.scene.value.aircraft.position);
    const times = trail.value.map(({ timeS }) => timeS);
    expect(times).toEqual(expect.arrayContaining([0, 60, 120, 180]));
    expect(times.length).toBeLessThan(log.value.length / 2);
    const all = trailOf(log.value);
    for (const { timeS, aircraft } of log.value) {
      const next = all.findIndex((point) => point.timeS >= timeS);
      const [before, after] = [all[Math.max(0, next - 1)]!, all[next]!];
      const span = Math.max(1e-9, after.timeS - before.timeS);
      const share = (timeS - before.timeS) / span;
      const onLine = {
        latDeg: before.position.latDeg + share * (after.position.latDeg - before.position.latDeg),
        lonDeg: before.position.lonDeg + share * (after.position.lonDeg - before.position.lonDeg),
      };
      expect(geodesicDistanceNm(onLine, aircraft.position) * 1852).toBeLessThan(3);
    }
    motion.player.scrubTo(60);
    expect(motion.player.trail.value.at(-1)!.timeS).toBe(60);
  });
});

describe("the clock", () => {
  it("lets a late frame bring no more than a quarter of a second", () => {
    const given = { waitingS: 0, speed: 20, inWholeSeconds: false };
    expect(secondsToGo({ ...given, frameS: 1 / 60 }).goS).toBeCloseTo(1 / 3, 9);
    expect(secondsToGo({ ...given, frameS: 30 }).goS).toBe(5);
  });

  it("goes by whole seconds where reduced motion is wished, and loses none of them", () => {
    let waitingS = 0;
    const gone: number[] = [];
    for (let frame = 0; frame < 16; frame++) {
      const step = secondsToGo({ frameS: 0.125, waitingS, speed: 5, inWholeSeconds: true });
      waitingS = step.waitingS;
      gone.push(step.goS);
    }
    expect(gone.filter((goS) => goS > 0)).toEqual([5, 5]);
    expect([gone[7], gone[15]]).toEqual([5, 5]);
  });
});

describe("any handling", () => {
  const step = fc.oneof(
    fc.record({ kind: fc.constant("fly" as const), by: fc.double({ min: 0.05, max: 30, noNaN: true }) }),
    fc.record({ kind: fc.constant("pause" as const), by: fc.constant(0) }),
    fc.record({ kind: fc.constant("step" as const), by: fc.constantFrom(-10, -1, 1, 10) }),
    fc.record({ kind: fc.constant("scrub" as const), by: fc.double({ min: -5, max: 120, noNaN: true }) }),
    fc.record({ kind: fc.constant("turn" as const), by: fc.integer({ min: 0, max: 359 }) }),
    fc.record({ kind: fc.constant("heading" as const), by: fc.integer({ min: 0, max: 359 }) }),
    fc.record({ kind: fc.constant("course" as const), by: fc.integer({ min: 0, max: 359 }) }),
    fc.record({ kind: fc.constant("undo" as const), by: fc.constant(0) }),
    fc.record({ kind: fc.constant("redo" as const), by: fc.constant(0) }),
  );

  it("leaves time, log and scene agreeing with each other and with the engine", () => {
    fc.assert(
      fc.property(fc.array(step, { maxLength: 25 }), (steps) => {
        const motion = onBench();
        const { bench, player } = motion;
        for (const { kind, by } of steps) {
          if (kind === "fly") fly(motion, by, 1.7);
          else if (kind === "pause") player.pause();
          else if (kind === "step") player.stepBy(by);
          else if (kind === "scrub") player.scrubTo(by);
          else if (kind === "turn") player.turnTo(magneticDeg(by));
          else if (kind === "heading") bench.act({ kind: "set-heading", heading: magneticDeg(by) });
          else if (kind === "course")
            bench.act({ kind: "set-course", receiver: "NAV1", course: stationDeg(by) });
          else bench[kind]();
          const log = player.log.value;
          const times = log.map(({ timeS }) => timeS);
          expect(times).toEqual([...new Set(times)].sort((one, other) => one - other));
          expect(player.nowS.value).toBeGreaterThanOrEqual(0);
          expect(player.endS.value).toBeGreaterThanOrEqual(player.nowS.value);
          // Every second of the log leads to the next.
          log.slice(1).forEach((moment, index) => {
            const before = log[index]!;
            const led = flyOn(before, before, moment.timeS - before.timeS).aircraft;
            expect(metresBetween(led, moment.aircraft)).toBeLessThan(0.5);
          });
          const at = log.findLast(({ timeS }) => timeS <= player.nowS.value);
          if (at !== undefined && !player.playing.value) {
            const there = flyOn(at, at, player.nowS.value - at.timeS).aircraft;
            expect(metresBetween(there, bench.scene.value.aircraft)).toBeLessThan(1.5);
          }
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe("a signal of the scene's own", () => {
  const NOISY: Scene = {
    ...SCENE,
    signal: { kind: "conventional", noiseDb: 55, reflectors: [], propeller: null },
  };
  const radialOf = ({ bench }: Motion) => bench.situation.value.receivers[0]?.radial;
  /** What the engine makes of the scene on the bench at a time. */
  const resolvedAt = ({ bench }: Motion, atS: number) =>
    resolveScene(bench.scene.value, atS).receivers[0]?.radial;

  it("goes on with the flight's clock, and stands still while it is paused", () => {
    const motion = onBench(NOISY);
    const { bench, player } = motion;
    fly(motion, 10);
    player.pause();
    const halted = bench.situation.value;
    expect(radialOf(motion)).toBe(resolvedAt(motion, 10));
    expect(radialOf(motion)).not.toBe(resolvedAt(motion, 0));
    player.goOn(5);
    expect(bench.situation.value).toBe(halted);
    bench.act({ kind: "turn-course", receiver: "NAV1", byDeg: 5 });
    expect(bench.situation.value.receivers[0]?.measured).toBe(halted.receivers[0]?.measured);
  });

  it("is heard again as it was when a time is gone back to or the flight is taken back", () => {
    const motion = onBench(NOISY);
    const { bench, player } = motion;
    const first = radialOf(motion);
    fly(motion, 10);
    player.pause();
    const then = player.log.value.find(({ timeS }) => timeS === 4);
    player.scrubTo(4);
    expect(radialOf(motion)).toBe(resolvedAt(motion, 4));
    expect(then?.shown.NAV1).toEqual(shownBy(bench.situation.value.receivers[0]!));
    bench.undo();
    bench.undo();
    expect(player.nowS.value).toBe(0);
    expect(radialOf(motion)).toBe(first);
  });

  it("leaves a scene without one deaf to the clock", () => {
    const { bench, player } = onBench();
    const before = bench.situation.value;
    bench.clockS.value = 5;
    expect(bench.situation.value).toBe(before);
    expect(player.nowS.value).toBe(5);
  });
});
