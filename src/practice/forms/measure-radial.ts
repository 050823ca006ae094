/** The panel is covered; the chart with its true grid is shown: on which radial are you? */

import { stationDeg, threeDigits } from "../../earth/index.ts";
import type { Form } from "../form.ts";
import { drawSpot, isReceived, sceneAt, stand, tunedTo } from "../stand.ts";
import { ghostOnRadial } from "./ghosts.ts";
import { degreesEastWest, radialTolerance } from "./norths.ts";

export const measureRadial = {
  id: "measure-radial",
  title: "Measure the radial",
  skills: ["four-directions", "north-to-north", "station-north"],
  modes: ["choose", "tell"],
  answers: "direction",
  leastSlipAnswers: 2,
  minutes: 1,
  draw(chance, world) {
    const spot = drawSpot(chance, world.beacons);
    if (spot === null) return null;
    const at = stand(world, {
      ...spot,
      courseDeg: chance.integer(1, 360),
      headingDeg: chance.integer(1, 360),
    });
    const { facts, station } = at;
    const tolerance = radialTolerance(facts);
    // Where today's variation is as good as the station's own north, the problem asks less: such places are taken less often.
    if (tolerance.deg > 1 && chance.odds(0.4)) return null;
    const azimuth = threeDigits(facts.azimuth);
    return {
      scene: sceneAt(world, at, {
        title: "Measure the radial",
        ask: `A protractor on the chart's true grid says that you are ${azimuth} true from ${station.name}. On which of its radials are you?`,
        // A covered pointer takes the radial off the chart as well.
        covers: ["panel", "NAV1.needle", "NAV1.course", "reasons", "signal"],
        receivers: [tunedTo("NAV1", station, facts.course, "rmi")],
      }),
      views: ["chart"],
      given: [
        { label: `From ${station.ident}, measured`, value: `${azimuth} true` },
        { label: "Station aligned with declination", value: degreesEastWest(facts.declinationDeg) },
        { label: "Variation where you are, today", value: degreesEastWest(facts.variationDeg) },
        { label: "Heading", value: threeDigits(facts.heading) },
      ],
      tolerance,
      answer: (functions) => ({ kind: "direction", deg: functions.radial(facts) }),
      check: ({ receivers: [reading] }) =>
        isReceived(reading, station) && reading.radial !== null
          ? { kind: "direction", deg: reading.radial }
          : null,
      steps: () => [
        `A radial is counted from the station's own north, which was set to ${degreesEastWest(facts.declinationDeg)} and does not move with today's variation.`,
        `West is added and east taken away: ${azimuth} true is radial ${threeDigits(facts.azimuth - facts.declinationDeg)}.`,
      ],
      ghost: (answer) =>
        answer.kind === "direction" ? ghostOnRadial(world, at, stationDeg(answer.deg)) : null,
    };
  },
} as const satisfies Form;
