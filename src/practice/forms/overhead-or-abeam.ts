/** The flag has just changed; DME and altitude are shown: is the station under you or beside you? */

import { threeDigits } from "../../earth/index.ts";
import { coneRadiusNm } from "../../radio/index.ts";
import type { Form } from "../form.ts";
import { sceneAt, stand } from "../stand.ts";

const WORDS = ["overhead", "abeam"] as const;
const HIGHEST_ALTITUDE_FT = 18_000;

export const overheadOrAbeam = {
  id: "overhead-or-abeam",
  title: "Overhead or abeam?",
  skills: ["overhead-or-abeam", "to-from-halves"],
  modes: ["choose"],
  answers: "word",
  // Overhead, the idea that every change of the flag is a passage comes out right: both must occur, or the answer is known.
  leastSlipAnswers: 0,
  minutes: 0.6,
  draw(chance, world) {
    if (world.beaconsWithDme.length === 0) return null;
    const station = chance.pick(world.beaconsWithDme);
    const heightFt = chance.integer(45, 85) * 100;
    const altitudeFt = Math.ceil((station.elevationFt + heightFt) / 100) * 100;
    if (altitudeFt > HIGHEST_ALTITUDE_FT) return null;
    const coneNm = coneRadiusNm(altitudeFt - station.elevationFt);
    const isOver = chance.odds(0.45);
    const distanceNm = isOver ? chance.integer(1, Math.floor(coneNm * 6)) / 10 : chance.integer(25, 90) / 10;
    // Just past the line square to the course: overhead anywhere, beside the station square to the course.
    const courseDeg = chance.integer(1, 360);
    const radialDeg = courseDeg + 84 * chance.pick([-1, 1]);
    const headingDeg = courseDeg + chance.integer(-12, 12);
    const at = stand(world, { station, radialDeg, distanceNm, altitudeFt, courseDeg, headingDeg });
    const { facts } = at;
    return {
      scene: sceneAt(world, at, {
        title: "Overhead or abeam?",
        ask: `You fly heading ${threeDigits(facts.heading)} with course ${threeDigits(facts.course)} selected, and the flag of NAV1 has just changed from TO to FROM. Is ${station.name} under you or beside you?`,
        covers: ["chart", "NAV1.needle", "NAV1.flag", "reasons", "signal"],
      }),
      views: ["panel"],
      given: [
        { label: "Flag", value: "has just changed from TO to FROM" },
        { label: `${station.ident} stands at`, value: `${station.elevationFt.toLocaleString("en-US")} ft` },
      ],
      tolerance: {},
      words: WORDS,
      answer: (functions) => ({
        kind: "word",
        word: functions.isOverhead({ flagChanged: true }, facts) ? "overhead" : "abeam",
      }),
      check: ({ receivers: [reading] }) => {
        if (reading?.dme == null || reading.station?.ident !== station.ident) return null;
        switch (reading.signal.kind) {
          case "overhead":
            return { kind: "word", word: "overhead" };
          case "good":
          case "weak":
            return reading.fullScale ? { kind: "word", word: "abeam" } : null;
          default:
            return null;
        }
      },
      steps: () => {
        const slantNm = Math.hypot(facts.distanceNm, facts.heightNm);
        return [
          "The flag changes wherever you cross the line through the station square to the course, near it or far from it.",
          `You are ${facts.heightNm.toFixed(1)} NM above the station, and DME reads ${slantNm.toFixed(1)} NM: ${
            isOver
              ? "little more than your height, so the station is under you."
              : `far more than your height, so the station is beside you, about ${facts.distanceNm.toFixed(1)} NM away.`
          }`,
        ];
      },
      ghost: (answer) => {
        if (answer.kind !== "word") return null;
        const over = answer.word === "overhead";
        const there = stand(world, {
          station,
          radialDeg,
          distanceNm: over ? 0.1 : 2 * coneNm,
          altitudeFt,
          courseDeg,
          headingDeg,
        });
        return {
          scene: sceneAt(world, there, { title: "", ask: "", covers: [] }),
          panel: null,
          says: over
            ? "Overhead you would be here, and DME would read your height."
            : "Abeam you would be here, with the needle hard over to one side.",
        };
      },
    };
  },
} as const satisfies Form;
