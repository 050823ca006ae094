/** Past the station: which course is selected then? */

import { direct, stationDeg, threeDigits, trueFromStation } from "../../earth/index.ts";
import type { Clearance } from "../facts.ts";
import type { Form } from "../form.ts";
import { drawSpot, isReceived, sceneAt, stand, tunedTo } from "../stand.ts";
import { ghostAt } from "./ghosts.ts";

/** Beyond the station, well out of the cone, NM. */
const BEYOND_NM = 8;

export const courseAfter = {
  id: "course-after",
  title: "Which course past the station?",
  skills: ["through-and-out"],
  modes: ["choose", "tell"],
  answers: "direction",
  leastSlipAnswers: 1,
  minutes: 0.6,
  draw(chance, world) {
    const spot = drawSpot(chance, world.beacons, { distanceNm: [6, 12], heightFt: [1_500, 4_500] });
    if (spot === null) return null;
    const crabDeg = chance.integer(4, 14) * chance.pick([-1, 1]);
    const at = stand(world, {
      ...spot,
      courseDeg: spot.radialDeg + 180,
      headingDeg: spot.radialDeg + 180 + crabDeg,
    });
    const { facts, station } = at;
    const inbound = facts.course;
    const straightOn = chance.odds(0.65);
    const turnDeg = chance.integer(25, 80) * chance.pick([-1, 1]);
    const outbound = straightOn ? inbound : stationDeg(inbound + turnDeg);
    const clearance: Clearance = { way: "outbound", radial: outbound, cutDeg: 45 };
    const task = straightOn
      ? "straight on along the same line"
      : `outbound on the ${threeDigits(outbound)} radial`;
    return {
      scene: sceneAt(world, at, {
        title: "Which course past the station?",
        ask: `You fly to ${station.name} on course ${threeDigits(inbound)} and go on, ${task}. Which course is selected past the station?`,
        covers: ["reasons", "signal"],
      }),
      views: ["chart", "panel"],
      given: [{ label: "Past the station", value: task }],
      tolerance: { deg: 2 },
      also: (straightOn ? [facts.heading, facts.heading + 180] : [inbound, inbound + 180]).map((deg) => ({
        kind: "direction",
        deg: stationDeg(deg),
      })),
      answer: (functions) => ({
        kind: "direction",
        deg: straightOn ? functions.courseAfter(inbound) : functions.taskCourse(clearance),
      }),
      check: ({ scene }) => {
        // Fly on: past the station, on the line meant, the course in question must centre the needle with FROM.
        const position = direct(
          station.position,
          trueFromStation(outbound, station.declinationDeg),
          BEYOND_NM,
        );
        const aircraft = { ...scene.aircraft, position };
        const receivers = [tunedTo("NAV1", station, outbound)];
        const [reading] = world.resolve({ ...scene, aircraft, receivers }).receivers;
        if (!isReceived(reading, station) || reading.flag !== "FROM" || reading.radial === null) return null;
        return { kind: "direction", deg: reading.radial };
      },
      steps: () =>
        straightOn
          ? [
              `Straight through, you stay on one line: ${threeDigits(inbound)} leads to the station, and past it leads away.`,
              "The selector is left alone; the flag changes from TO to FROM, and the needle reads on as before.",
            ]
          : [
              `Outbound you fly along the radial as it is numbered: select ${threeDigits(outbound)} past the station, and the flag says FROM.`,
            ],
      ghost: (answer) => {
        if (answer.kind !== "direction") return null;
        const line = trueFromStation(outbound, station.declinationDeg);
        const ghost = ghostAt(world, at, direct(station.position, line, BEYOND_NM), "");
        return {
          ...ghost,
          scene: { ...ghost.scene, receivers: [tunedTo("NAV1", station, stationDeg(answer.deg))] },
          says: `By this answer the selector would stand at ${threeDigits(answer.deg)}: past the station, this is what the panel would show.`,
        };
      },
    };
  },
} as const satisfies Form;
