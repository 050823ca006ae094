/**
 * The reference functions: what a pilot who has it right works out, each under the name of the thing. A slip replaces one or more of
 * them and nothing else. Functions call each other through `self`, so that a replaced one is met wherever it is used.
 *
 * Physics never lies: `physicalRadial` and `panelShown` stand outside and cannot be replaced; the drawn panel always comes from them.
 */

import {
  type MagneticDeg,
  magneticDeg,
  magneticFromTrue,
  reciprocal,
  type StationDeg,
  stationDeg,
  stationFromTrue,
  type TrueDeg,
  trueFromStation,
  turned,
  wrap180,
} from "../earth/index.ts";
import { deviationDeg, type Flag, FULL_SCALE_DEG, toFrom } from "../panel/index.ts";
import type { CheckPlace, Clearance, Facts, Health, Leg, Panel, Reach } from "./facts.ts";

export type Hand = "left" | "right";

export interface Functions {
  radial(facts: Facts): StationDeg;
  bearingTo(facts: Facts): StationDeg;
  flag(facts: Facts): Flag;
  /** Degrees, right positive, in [-90, 90]; what is shown stops at full scale. */
  needleDeg(facts: Facts): number;
  /** Of the course, facing along it, on which the aircraft is. */
  side(facts: Facts): Hand;
  /** Of the nose, on which the line lies. */
  lineHand(facts: Facts): Hand;
  /** Degrees read off the needle's dots. */
  readNeedleDeg(panel: Panel): number;
  readRadial(panel: Panel, facts: Facts): StationDeg;
  /** Of a centred panel. */
  lineOfPosition(panel: Panel, facts: Facts): StationDeg;
  plotTrue(radial: StationDeg, facts: Facts): TrueDeg;
  taskCourse(clearance: Clearance): StationDeg;
  /** What is dialled. */
  selector(clearance: Clearance, facts: Facts): StationDeg;
  /** Which way the cut leans from the course: +1 right. */
  cutSide(clearance: Clearance, facts: Facts): 1 | -1;
  cutHeading(clearance: Clearance, facts: Facts): MagneticDeg;
  windFrom(facts: Facts): TrueDeg;
  /** Into the wind along a track, degrees, right positive. */
  windCorrectionDeg(track: TrueDeg, facts: Facts): number;
  trackHeading(facts: Facts): MagneticDeg;
  groundspeedKt(track: TrueDeg, facts: Facts): number;
  nextCut(cut: { readonly side: 1 | -1; readonly deg: number }, facts: Facts): MagneticDeg;
  offNm(distanceNm: number, needleDeg: number): number;
  slantNm(distanceNm: number, heightNm: number): number;
  groundNm(slantNm: number, heightNm: number): number;
  minutesOut(given: {
    readonly minutes: number;
    readonly bearingChangeDeg: number;
    readonly relativeBearingDeg: number;
  }): number;
  hears(reach: Reach): boolean;
  usable(health: Health): boolean;
  onCourse(health: Health): "yes" | "no" | "cannot tell";
  isOverhead(given: { readonly flagChanged: boolean }, facts: Facts): boolean;
  /** Turn when the needle swings near the station, degrees, right positive. */
  nearTurnDeg(facts: Facts): number;
  courseAfter(course: StationDeg): StationDeg;
  dmeSpeedIsGroundspeed(track: TrueDeg, facts: Facts): boolean;
  checkLimitDeg(where: CheckPlace): number;
  /** The course that centres a test signal with this flag. */
  testSignalCourse(flag: "TO" | "FROM"): StationDeg;
  handOverNm(leg: Leg): number;
  planHeading(track: TrueDeg, facts: Facts): MagneticDeg;
  /** On an HSI, of the nose. */
  hsiHand(facts: Facts): Hand;
  rmiRadial(head: StationDeg, facts: Facts): StationDeg;
  rmiHead(facts: Facts): StationDeg;
  /** The lines of two receivers, in the order of their stations. */
  boxes<T>(first: T, second: T): readonly [T, T];
}

const RAD = Math.PI / 180;

/** Where the aircraft is by the station's own north, whatever anyone believes. */
export const physicalRadial = (facts: Facts): StationDeg =>
  stationFromTrue(facts.azimuth, facts.declinationDeg);

/** Deviation of the physical radial from a course, degrees, right positive, in [-90, 90]. */
export const physicalNeedleDeg = (facts: Facts): number => deviationDeg(physicalRadial(facts), facts.course);

/** The panel as it is drawn. */
export function panelShown(facts: Facts): Panel {
  const needle = physicalNeedleDeg(facts);
  return {
    course: facts.course,
    flag: toFrom(physicalRadial(facts), facts.course),
    needleDeg: Math.min(FULL_SCALE_DEG, Math.max(-FULL_SCALE_DEG, needle)),
  };
}

/** The selected course by the compass of today. */
export const courseMagnetic = (facts: Facts): MagneticDeg =>
  magneticFromTrue(trueFromStation(facts.course, facts.declinationDeg), facts.variationDeg);

/** The selected course over the ground. */
export const courseTrue = (facts: Facts): TrueDeg => trueFromStation(facts.course, facts.declinationDeg);

/** Whether the nose points more than 90 degrees away from the course. */
export const isOpposed = (facts: Facts): boolean =>
  Math.abs(wrap180(facts.heading - courseMagnetic(facts))) > 90;

export const handOf = (signed: number): Hand => (signed > 0 ? "right" : "left");
export const otherHand = (hand: Hand): Hand => (hand === "left" ? "right" : "left");

/** The functions with nothing replaced, calling each other through `self`. */
export function referenceFunctions(self: () => Functions): Functions {
  return {
    radial: physicalRadial,
    bearingTo: (facts) => reciprocal(self().radial(facts)),
    flag: (facts) => panelShown(facts).flag,
    needleDeg: physicalNeedleDeg,
    side: (facts) => (self().needleDeg(facts) > 0 ? "left" : "right"),
    lineHand: (facts) => {
      const hand = handOf(physicalNeedleDeg(facts));
      return isOpposed(facts) ? otherHand(hand) : hand;
    },
    readNeedleDeg: (panel) => panel.needleDeg,
    readRadial: (panel) => {
      const needle = self().readNeedleDeg(panel);
      return panel.flag === "TO" ? turned(reciprocal(panel.course), needle) : turned(panel.course, -needle);
    },
    lineOfPosition: (panel) => (panel.flag === "TO" ? reciprocal(panel.course) : panel.course),
    plotTrue: (radial, facts) => trueFromStation(radial, facts.declinationDeg),
    taskCourse: ({ way, radial }) => (way === "inbound" ? reciprocal(radial) : radial),
    selector: (clearance) => self().taskCourse(clearance),
    cutSide: (clearance, facts) =>
      deviationDeg(physicalRadial(facts), self().taskCourse(clearance)) >= 0 ? 1 : -1,
    cutHeading: (clearance, facts) =>
      magneticDeg(self().taskCourse(clearance) + self().cutSide(clearance, facts) * clearance.cutDeg),
    windFrom: (facts) => facts.wind.from,
    windCorrectionDeg: (track, facts) => {
      const across = facts.wind.speedKt * Math.sin(wrap180(self().windFrom(facts) - track) * RAD);
      return Math.asin(Math.max(-1, Math.min(1, across / facts.tasKt))) / RAD;
    },
    trackHeading: (facts) => {
      const track = courseTrue(facts);
      return magneticFromTrue(turned(track, self().windCorrectionDeg(track, facts)), facts.variationDeg);
    },
    groundspeedKt: (track, facts) =>
      facts.tasKt * Math.cos(self().windCorrectionDeg(track, facts) * RAD) -
      facts.wind.speedKt * Math.cos(wrap180(self().windFrom(facts) - track) * RAD),
    nextCut: ({ side, deg }, facts) => magneticDeg(facts.course + (side * deg) / 2),
    offNm: (distanceNm, needleDeg) => (distanceNm * Math.abs(needleDeg)) / 60,
    slantNm: Math.hypot,
    groundNm: (slantNm, heightNm) => Math.sqrt(Math.max(0, slantNm ** 2 - heightNm ** 2)),
    minutesOut: ({ minutes, bearingChangeDeg, relativeBearingDeg }) =>
      (60 * minutes * Math.abs(Math.sin(relativeBearingDeg * RAD))) / bearingChangeDeg,
    hears: ({ distanceNm, classRadiusNm, lineOfSightNm, terrainClear }) =>
      distanceNm <= classRadiusNm && distanceNm <= lineOfSightNm && terrainClear,
    usable: ({ signalValid, identHeard, identWanted }) => signalValid && identHeard === identWanted,
    onCourse: ({ signalValid, needleDeg }) =>
      signalValid ? (Math.abs(needleDeg) < 1 ? "yes" : "no") : "cannot tell",
    // The cone of ambiguity reaches 50 degrees from straight up (ICAO Doc 8168, from memory).
    isOverhead: (_, { distanceNm, heightNm }) => distanceNm < heightNm * Math.tan(50 * RAD),
    nearTurnDeg: () => 0,
    courseAfter: (course) => course,
    dmeSpeedIsGroundspeed: (track, { azimuth, distanceNm, heightNm }) => {
      const offRadialDeg = Math.abs(wrap180(track - azimuth));
      return Math.min(offRadialDeg, 180 - offRadialDeg) <= 10 && distanceNm > 3 * heightNm;
    },
    checkLimitDeg: (where) => (where === "airborne" ? 6 : 4),
    testSignalCourse: (flag) => stationDeg(flag === "FROM" ? 0 : 180),
    handOverNm: ({ lengthNm, changeAtNm }) => changeAtNm ?? lengthNm / 2,
    planHeading: (track, facts) =>
      magneticFromTrue(turned(track, self().windCorrectionDeg(track, facts)), facts.variationDeg),
    hsiHand: (facts) => self().lineHand(facts),
    rmiRadial: reciprocal,
    rmiHead: (facts) => reciprocal(physicalRadial(facts)),
    boxes: (first, second) => [first, second],
  };
}

/** What a slip replaces, given the functions as they stood and, through `self`, as they end up. */
export type Patch = (before: Functions, self: () => Functions) => Partial<Functions>;

/** The functions of someone who holds these ideas: the patches applied in the order given. */
export function functionsWith(patches: readonly Patch[]): Functions {
  const self = (): Functions => functions;
  let functions = referenceFunctions(self);
  for (const patch of patches) functions = { ...functions, ...patch(functions, self) };
  return functions;
}

/** The functions of a pilot who has it right. */
export const TRUTH: Functions = functionsWith([]);
