/** Close to the station: the needle swings, or a hold begins. What do you do? */

import { FT_PER_NM, threeDigits } from "../../earth/index.ts";
import { coneRadiusNm } from "../../radio/index.ts";
import type { Form } from "../form.ts";
import { handOf, physicalNeedleDeg } from "../functions.ts";
import { drawSpot, isReceived, sceneAt, stand } from "../stand.ts";
import { ghostTurned } from "./beside-line.ts";
import { toCourseLineNm } from "./geometry.ts";
import { drawHold } from "./hold.ts";
import { dotsPhrase } from "./phrases.ts";

/** Share of cases that are about a hold. */
const HOLDS = 0.35;
const HOLD = "hold the heading";
const WORDS = ["turn left", HOLD, "turn right"] as const;
/** Nearer the line than this, an aircraft that has tracked it needs no correction, NM. */
const NEAR_ENOUGH_NM = 0.2;

export const nearStationAct = {
  id: "near-station-act",
  title: "At the station: what do you do?",
  skills: ["overhead-or-abeam", "racetrack"],
  modes: ["choose"],
  answers: "word",
  leastSlipAnswers: 1,
  minutes: 0.5,
  draw(chance, world) {
    if (chance.odds(HOLDS)) return drawHold(chance, world);
    const spot = drawSpot(chance, world.beacons, { distanceNm: [1, 1], heightFt: [1_500, 3_000] });
    if (spot === null) return null;
    const distanceNm = chance.integer(6, 10) / 10;
    // Out of the cone, where the needle still says something.
    if (distanceNm < 1.2 * coneRadiusNm(spot.altitudeFt - spot.station.elevationFt)) return null;
    const needleDeg = chance.integer(4, 9) * chance.pick([-1, 1]);
    const courseDeg = spot.radialDeg + 180 - needleDeg;
    const at = stand(world, {
      ...spot,
      distanceNm,
      courseDeg,
      headingDeg: courseDeg + chance.integer(-12, 12),
    });
    const { facts, station } = at;
    const offFt =
      Math.round((distanceNm * Math.sin((Math.abs(needleDeg) * Math.PI) / 180) * FT_PER_NM) / 10) * 10;
    const shownDeg = Math.round(physicalNeedleDeg(facts));
    return {
      scene: sceneAt(world, at, {
        title: "At the station: what do you do?",
        ask: `You have tracked ${threeDigits(facts.course)} to ${station.name} with the needle centred, and heading ${threeDigits(facts.heading)} has held it there. Now, ${distanceNm.toFixed(1)} NM before the station, the needle moves off. What do you do?`,
        covers: ["chart", "reasons", "signal"],
      }),
      views: ["panel"],
      given: [
        { label: `Distance from ${station.ident}`, value: `${distanceNm.toFixed(1)} NM` },
        { label: "Heading that held the line", value: threeDigits(facts.heading) },
      ],
      tolerance: {},
      skills: ["overhead-or-abeam"],
      words: WORDS,
      answer: (functions) => {
        const turnDeg = functions.nearTurnDeg(facts);
        return { kind: "word", word: turnDeg === 0 ? HOLD : `turn ${handOf(turnDeg)}` };
      },
      check: ({ receivers: [reading], scene }) => {
        if (!isReceived(reading, station) || reading.flag !== "TO") return null;
        const offNm = toCourseLineNm(reading, scene.aircraft.position);
        return offNm !== null && offNm < NEAR_ENOUGH_NM ? { kind: "word", word: HOLD } : null;
      },
      steps: () => [
        `The needle stands ${dotsPhrase(shownDeg)}, but at ${distanceNm.toFixed(1)} NM that is only about ${offFt} feet.`,
        "A turn now would carry you through the line and past the station to one side: hold the heading that has held the line, and wait for the flag to change and settle.",
      ],
      ghost: (answer) =>
        answer.kind === "word" && answer.word !== HOLD ? ghostTurned(world, at, answer.word) : null,
    };
  },
} as const satisfies Form;
