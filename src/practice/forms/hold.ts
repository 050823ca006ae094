/** Holding over a station: which entry, which heading out, and how much into the wind? */

import {
  type MagneticDeg,
  magneticDeg,
  reciprocal,
  threeDigits,
  turned,
  wrap360,
} from "../../earth/index.ts";
import type { Situation } from "../../scene/index.ts";
import type { Chance } from "../chance.ts";
import type { Case } from "../form.ts";
import { handOf, otherHand } from "../functions.ts";
import {
  fromSectorEdgeDeg,
  HOLDING_ENTRIES,
  type Hold,
  type HoldingEntry,
  holdingEntry,
  outboundCorrectionDeg,
  teardropHeading,
} from "../holding.ts";
import { drawSpot, isReceived, type Stand, sceneAt, stand } from "../stand.ts";
import type { World } from "../world.ts";

/** Nearer an edge than this two entries are both right, or nearly: not asked. The AIM allows 5 degrees. */
const CLEAR_OF_EDGE_DEG = 10;

/** A case of it, the aircraft on its way to the station; null when the draw came out unfit. */
export function drawHold(chance: Chance, world: World): Case | null {
  const spot = drawSpot(chance, world.beacons, { distanceNm: [3, 6], heightFt: [1_500, 6_000] });
  if (spot === null) return null;
  const courseDeg = chance.integer(1, 36) * 10;
  const hold: Hold = { inboundCourse: magneticDeg(courseDeg), turns: chance.pick(["right", "left"]) };
  const headingDeg = spot.radialDeg + 180;
  const at = stand(world, { ...spot, courseDeg, headingDeg });
  if (fromSectorEdgeDeg(at.facts.heading, hold) < CLEAR_OF_EDGE_DEG) return null;
  if (chance.odds(0.5)) return entryCase(world, at, hold);
  return holdingEntry(at.facts.heading, hold) === "teardrop"
    ? teardropCase(world, at, hold)
    : correctionCase(world, at, hold, chance.integer(3, 10) * chance.pick([-1, 1]));
}

function holdCase(
  world: World,
  at: Stand,
  hold: Hold,
  given: {
    readonly asks: string;
    readonly words: readonly string[];
    readonly word: string;
    readonly check: (situation: Situation) => string;
    readonly steps: readonly string[];
  },
): Case {
  const { station } = at;
  const radial = reciprocal(hold.inboundCourse);
  return {
    scene: sceneAt(world, at, {
      title: "At the station: what do you do?",
      ask: `You are to hold at ${station.name} on the ${threeDigits(radial)} radial, ${hold.turns} turns. ${given.asks}`,
      covers: ["reasons", "signal"],
    }),
    views: ["chart", "panel"],
    given: [
      { label: "Hold", value: `${station.ident}, ${threeDigits(radial)} radial, ${hold.turns} turns` },
      { label: "Inbound course", value: threeDigits(hold.inboundCourse) },
    ],
    tolerance: {},
    skills: ["racetrack"],
    leastSlipAnswers: 0,
    words: given.words,
    answer: () => ({ kind: "word", word: given.word }),
    check: (situation) =>
      isReceived(situation.receivers[0], station) ? { kind: "word", word: given.check(situation) } : null,
    steps: () => given.steps,
    ghost: () => null,
  };
}

function entryCase(world: World, at: Stand, hold: Hold): Case {
  const { heading } = at.facts;
  const word = holdingEntry(heading, hold);
  const outbound = threeDigits(reciprocal(hold.inboundCourse));
  return holdCase(world, at, hold, {
    asks: `You arrive heading ${threeDigits(heading)}. Which entry?`,
    words: HOLDING_ENTRIES,
    word,
    check: ({ scene, receivers: [reading] }) =>
      entryByInboundCourse(scene.aircraft.heading, reading?.settings.course ?? 0, hold.turns),
    steps: [
      `Outbound is ${outbound}. Seen from heading ${threeDigits(heading)}, look where ${outbound} lies on the card.`,
      `With ${hold.turns} turns: up to 70 degrees to the ${hold.turns} of the nose is a teardrop, up to 110 to the ${otherHand(hold.turns)} a parallel entry, and anywhere else direct. This one is ${word}.`,
    ],
  });
}

/** The sectors counted the other way, from the inbound course to the heading: AIM figure 5-3-4 read round the fix. */
function entryByInboundCourse(
  heading: MagneticDeg,
  inboundDeg: number,
  turns: "left" | "right",
): HoldingEntry {
  const pastInboundDeg = wrap360((heading - inboundDeg) * (turns === "right" ? 1 : -1));
  if (pastInboundDeg >= 110 && pastInboundDeg <= 180) return "teardrop";
  return pastInboundDeg > 180 && pastInboundDeg <= 290 ? "parallel" : "direct";
}

function teardropCase(world: World, at: Stand, hold: Hold): Case {
  const outbound = reciprocal(hold.inboundCourse);
  const words = [-60, -30, 0, 30].map((byDeg) => threeDigits(turned(outbound, byDeg)));
  return holdCase(world, at, hold, {
    asks: "A teardrop entry is right. Which heading do you fly for a minute after the station, in still air?",
    words: [...words].sort(),
    word: threeDigits(teardropHeading(hold)),
    // Outbound of a right-hand hold lies to the right of the line: the teardrop leads into the side of the hold.
    check: () => threeDigits(hold.inboundCourse + (hold.turns === "right" ? 150 : 210)),
    steps: [
      `Outbound is ${threeDigits(outbound)}, and the hold lies to the ${hold.turns} of the inbound course: to the ${otherHand(hold.turns)} of one who flies outbound.`,
      `Thirty degrees from outbound toward that side is ${threeDigits(teardropHeading(hold))}.`,
    ],
  });
}

function correctionCase(world: World, at: Stand, hold: Hold, inboundDeg: number): Case {
  const size = Math.abs(inboundDeg);
  const hand = handOf(inboundDeg);
  const phrase = (deg: number, side: string): string => `${deg} degrees ${side}`;
  const outboundDeg = outboundCorrectionDeg(inboundDeg);
  return holdCase(world, at, hold, {
    asks: `Inbound, ${size} degrees ${hand} of the course hold the line. How much do you correct outbound?`,
    words: [phrase(3 * size, "left"), phrase(size, "left"), phrase(size, "right"), phrase(3 * size, "right")],
    word: phrase(Math.abs(outboundDeg), handOf(outboundDeg)),
    check: () => phrase(size + 2 * size, otherHand(hand)),
    steps: [
      `The same wind comes from the other hand on the way out: to the ${otherHand(hand)}.`,
      `The turns drift too and nothing corrects them: outbound takes three times as much, ${3 * size} degrees.`,
    ],
  });
}
