/** A line of the nav log is covered: radials out and in, distance, heading, groundspeed, time. */

import { inverse, legTimeMin, magneticFromTrue, reciprocal, threeDigits } from "../../earth/index.ts";
import { eastWest, feet, miles } from "../../reason/index.ts";
import type { Form } from "../form.ts";
import { TRUTH } from "../functions.ts";
import { sceneAt, tunedTo } from "../stand.ts";
import { drawLeg } from "./leg.ts";
import { headingThatTracks } from "./second-way.ts";
import { airspeedGiven, drawWind, truePhrase, windGiven } from "./winds.ts";

const FIGURES = [
  { name: "outDeg", label: "Radial out", unit: "" },
  { name: "inDeg", label: "Radial in", unit: "" },
  { name: "distanceNm", label: "Distance", unit: "NM" },
  { name: "headingDeg", label: "Heading", unit: "magnetic" },
  { name: "groundspeedKt", label: "Groundspeed", unit: "kt" },
  { name: "minutes", label: "Time", unit: "min" },
] as const;

export const legLog = {
  id: "leg-log",
  title: "Fill the line of the nav log",
  skills: ["plan-a-radio-leg"],
  modes: ["choose", "tell"],
  answers: "row",
  leastSlipAnswers: 2,
  minutes: 5,
  draw(chance, world) {
    const drawn = drawLeg(chance, world, {
      lengthNm: [30, 100],
      altitudeFt: [3_500, 9_500],
      wind: drawWind(chance),
    });
    if (drawn === null) return null;
    const { from, to, lengthNm, track, at } = drawn;
    const { facts } = at;
    const back = inverse(to.position, from.position);
    if (back.kind !== "line") return null;
    const arriving = { ...facts, azimuth: back.azimuth, declinationDeg: to.declinationDeg };
    return {
      scene: sceneAt(world, at, {
        title: "Fill the line of the nav log",
        ask: `Plan the leg from ${from.name} to ${to.name}: radial out, radial in, distance, magnetic heading, groundspeed and minutes.`,
        covers: ["aircraft", "heading", "panel", "NAV1.course", "NAV2.course", "reasons", "signal"],
        receivers: [tunedTo("NAV1", from, facts.course), tunedTo("NAV2", to, facts.course)],
      }),
      views: ["chart"],
      given: [
        { label: "Leg", value: `${from.ident} to ${to.ident} at ${feet(at.altitudeFt)}` },
        { label: "Track on the chart", value: truePhrase(track) },
        windGiven(facts),
        airspeedGiven(facts),
        { label: "Variation today", value: eastWest(facts.variationDeg) },
        {
          label: "Radials count from",
          value: `${from.ident} ${eastWest(from.declinationDeg)}, ${to.ident} ${eastWest(to.declinationDeg)} of true`,
        },
      ],
      figures: FIGURES,
      tolerance: {
        figures: {
          outDeg: 3,
          inDeg: 3,
          distanceNm: 1,
          headingDeg: 3,
          groundspeedKt: 5,
          minutes: 2,
        },
      },
      answer: (functions) => {
        const groundspeedKt = functions.groundspeedKt(track, facts);
        return {
          kind: "row",
          figures: {
            outDeg: functions.radial(facts),
            inDeg: functions.radial(arriving),
            distanceNm: lengthNm,
            headingDeg: functions.planHeading(track, facts),
            groundspeedKt,
            minutes: (60 * lengthNm) / groundspeedKt,
          },
        };
      },
      // The receivers' own radials and distances from a place on the leg, and the way on from there.
      check: ({ scene, variationDeg, receivers: [first, second] }) => {
        if (!first?.geometry || !second?.geometry) return null;
        if (first.station?.ident !== from.ident || second.station?.ident !== to.ident) return null;
        const onward = inverse(scene.aircraft.position, to.position);
        if (onward.kind !== "line") return null;
        const held = headingThatTracks(onward.azimuth, scene.aircraft.tasKt, scene.wind);
        if (held === null) return null;
        const distanceNm = first.geometry.distanceNm + second.geometry.distanceNm;
        return {
          kind: "row",
          figures: {
            outDeg: first.geometry.trueRadial,
            inDeg: second.geometry.trueRadial,
            distanceNm,
            headingDeg: magneticFromTrue(held.heading, variationDeg),
            groundspeedKt: held.groundspeedKt,
            minutes: legTimeMin({ distanceNm, groundspeedKt: held.groundspeedKt }),
          },
        };
      },
      steps: () => {
        const speed = TRUTH.groundspeedKt(track, facts);
        return [
          `Out: ${truePhrase(track)} counted from ${from.ident}'s north, ${eastWest(from.declinationDeg)}, is radial ${threeDigits(TRUTH.radial(facts))}.`,
          `In: seen from ${to.name} you come from ${truePhrase(reciprocal(track))}, on its radial ${threeDigits(TRUTH.radial(arriving))}.`,
          `${miles(lengthNm)} by the chart's scale.`,
          `Into the wind, and by today's variation of ${eastWest(facts.variationDeg)}: heading ${threeDigits(TRUTH.planHeading(track, facts))}.`,
          `${Math.round(speed)} kt over the ground: ${Math.round((60 * lengthNm) / speed)} minutes.`,
        ];
      },
      ghost: () => null,
    };
  },
} as const satisfies Form;
