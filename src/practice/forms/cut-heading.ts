/** A clearance and a planned cut: which heading meets the line? */

import {
  direct,
  inverse,
  magneticDeg,
  stationDeg,
  stationFromTrue,
  threeDigits,
  trueFromStation,
  turnBetween,
  turned,
} from "../../earth/index.ts";
import { courseForRadial } from "../../panel/index.ts";
import type { Clearance } from "../facts.ts";
import type { Form } from "../form.ts";
import { TRUTH } from "../functions.ts";
import { drawSpot, isReceived, sceneAt, stand } from "../stand.ts";
import { ghostFlown } from "./ghosts-flown.ts";
import { northsAgree } from "./winds.ts";

export const cutHeading = {
  id: "cut-heading",
  title: "Which heading meets the line?",
  skills: ["cut-the-line"],
  modes: ["choose", "tell"],
  answers: "direction",
  leastSlipAnswers: 2,
  minutes: 1,
  draw(chance, world) {
    const spot = drawSpot(chance, world.beacons, { distanceNm: [10, 45] });
    if (spot === null) return null;
    const offDeg = chance.integer(12, 35);
    const clearance: Clearance = {
      way: chance.odds(0.7) ? "inbound" : "outbound",
      radial: stationDeg(spot.radialDeg + offDeg * chance.pick([-1, 1])),
      cutDeg: chance.pick([30, 45, 60].filter((cutDeg) => cutDeg > offDeg)),
    };
    const { way, radial: wanted, cutDeg } = clearance;
    const at = stand(world, {
      ...spot,
      courseDeg: chance.integer(1, 360),
      headingDeg: chance.integer(1, 360),
    });
    const { facts, station } = at;
    if (!northsAgree(facts)) return null;
    return {
      scene: sceneAt(world, at, {
        title: "Which heading meets the line?",
        ask: `You are cleared ${way} on the ${threeDigits(wanted)} radial of ${station.name} and will cut it at ${cutDeg} degrees. Which heading do you fly?`,
        covers: ["panel", "NAV1.course", "NAV1.needle", "NAV1.flag", "reasons", "signal"],
      }),
      views: ["chart"],
      given: [
        { label: "Cleared", value: `${way} on the ${threeDigits(wanted)} radial of ${station.ident}` },
        { label: "You are on radial", value: threeDigits(spot.radialDeg) },
        { label: "Planned cut", value: `${cutDeg} degrees` },
      ],
      tolerance: { deg: 10 },
      answer: (functions) => ({ kind: "direction", deg: functions.cutHeading(clearance, facts) }),
      // Laid out on the ground: from here to the line as far out, and which way that leads for one who faces along it.
      check: ({ scene: { aircraft }, receivers: [reading] }) => {
        if (!isReceived(reading, station)) return null;
        const { declinationDeg, position } = station;
        const along = trueFromStation(courseForRadial(wanted, way), declinationDeg);
        const { distanceNm } = inverse(position, aircraft.position);
        const onLine = direct(position, trueFromStation(wanted, declinationDeg), distanceNm);
        const toLine = inverse(aircraft.position, onLine);
        if (toLine.kind !== "line") return null;
        const toRight = turnBetween(along, toLine.azimuth) > 0;
        return {
          kind: "direction",
          deg: stationFromTrue(turned(along, toRight ? cutDeg : -cutDeg), declinationDeg),
        };
      },
      steps: () => {
        const course = TRUTH.taskCourse(clearance);
        const right = TRUTH.cutSide(clearance, facts) === 1;
        return [
          `${way === "inbound" ? "Inbound on" : "Outbound on"} the ${threeDigits(wanted)} radial the course is ${threeDigits(course)}.`,
          `You are on the ${threeDigits(spot.radialDeg)} radial: facing along ${threeDigits(course)}, the line lies to the ${right ? "right" : "left"}.`,
          `The cut leans toward the line: ${threeDigits(course)} ${right ? "plus" : "less"} ${cutDeg} is heading ${threeDigits(TRUTH.cutHeading(clearance, facts))}.`,
        ];
      },
      ghost: (answer) =>
        answer.kind === "direction" ? ghostFlown(world, at, magneticDeg(answer.deg)) : null,
    };
  },
} as const satisfies Form;
