/** The dial is covered: which station sounds? And which channels are whose. */

import { geodesicDistanceNm } from "../../earth/index.ts";
import {
  dmeChannel,
  frequencyText,
  LOCALIZER_CHANNELS_MHZ,
  pairedDmeChannel,
  printedMorse,
  readDmeChannel,
  serviceOf,
  VOR_CHANNELS_MHZ,
} from "../../radio/index.ts";
import type { Chance } from "../chance.ts";
import type { Case, Form } from "../form.ts";
import { drawSpot, isReceived, type Stand, sceneAt, stand } from "../stand.ts";
import type { World } from "../world.ts";

const OPTIONS = 4;

export const identMatch = {
  id: "ident-match",
  title: "Which station is it?",
  skills: ["band-and-pairing", "tune-then-prove"],
  modes: ["choose", "tell"],
  answers: "word",
  leastSlipAnswers: 0,
  minutes: 0.6,
  draw(chance, world) {
    const kind = chance.odds(0.6) ? "ident" : chance.pick(["channel", "pair"] as const);
    const spot = drawSpot(chance, kind === "pair" ? world.beaconsWithDme : world.beacons, {
      distanceNm: [8, 40],
    });
    if (spot === null) return null;
    const at = stand(world, { ...spot, courseDeg: spot.radialDeg, headingDeg: chance.integer(1, 360) });
    if (kind === "channel") return lawfulChannel(chance, world, at);
    return kind === "pair" ? paired(chance, world, at) : heard(chance, world, at);
  },
} as const satisfies Form;

/** Which station sounds, among those nearby. */
function heard(chance: Chance, world: World, at: Stand): Case | null {
  const { station } = at;
  const others = world.beacons
    .filter(({ ident }) => ident !== station.ident)
    .sort(
      (one, other) =>
        geodesicDistanceNm(one.position, at.position) - geodesicDistanceNm(other.position, at.position),
    )
    .slice(0, OPTIONS - 1);
  const [nearest] = others;
  if (nearest === undefined) return null;
  // Most of the time another was wanted than is tuned.
  const wanted = chance.odds(0.7) ? chance.pick(others) : station;
  const health = {
    signalValid: true,
    identHeard: station.ident,
    identWanted: wanted.ident,
    needleDeg: 0,
  };
  return {
    scene: sceneAt(world, at, {
      title: "Which station is it?",
      ask: `You meant to tune ${wanted.name}. Listen to one whole ident: which station is it?`,
      // With the aircraft shown the sheet would close in on it, and might show the station tuned alone.
      covers: ["aircraft", "heading", "NAV1", "panel", "reasons", "signal"],
    }),
    views: ["chart"],
    given: [
      { label: "You want", value: `${wanted.name}, ${wanted.ident}` },
      { label: "You hear", value: printedMorse(station.ident) },
    ],
    tolerance: {},
    words: [station, ...others].map(({ ident }) => ident).sort(),
    listenTo: "NAV1",
    // Who takes a live needle for proof says the station he wanted.
    answer: (functions) => ({
      kind: "word",
      word: functions.usable(health) ? wanted.ident : station.ident,
    }),
    check: ({ receivers: [reading] }) =>
      isReceived(reading, station) && reading.ident.kind === "ident"
        ? { kind: "word", word: reading.ident.text }
        : null,
    steps: () => [
      `${printedMorse(station.ident)} is ${[...station.ident].join("-")}: ${station.name}.`,
      wanted.ident === station.ident
        ? "It is the one you wanted."
        : `It is not ${wanted.ident}, ${printedMorse(wanted.ident)}: the needle would live, and lead you by the wrong station.`,
    ],
    ghost: () => null,
  };
}

/** Which of these frequencies is a VOR's. */
function lawfulChannel(chance: Chance, world: World, at: Stand): Case {
  const used = world.beacons.map(({ frequencyMhz }) => frequencyMhz);
  const below112 = VOR_CHANNELS_MHZ.filter((mhz) => mhz < 112 && !used.includes(mhz));
  const right = chance.pick(chance.odds(0.7) ? below112 : VOR_CHANNELS_MHZ.filter((mhz) => mhz >= 112));
  const wrong = new Set<number>();
  while (wrong.size < OPTIONS - 2) wrong.add(chance.pick(LOCALIZER_CHANNELS_MHZ));
  wrong.add(118 + chance.integer(0, 9) / 10);
  const words = [...wrong, right].sort((one, other) => one - other).map(frequencyText);
  return {
    scene: sceneAt(world, at, {
      title: "Which station is it?",
      ask: "One of these frequencies belongs to a VOR. Which?",
      covers: ["chart", "NAV1", "reasons", "signal"],
    }),
    views: [],
    given: [{ label: "Frequencies, MHz", value: words.join(", ") }],
    tolerance: {},
    words,
    answer: () => ({ kind: "word", word: frequencyText(right) }),
    check: () => {
      const lawful = words.filter((word) => serviceOf(Number(word)) === "vor");
      return lawful.length === 1 && lawful[0] !== undefined ? { kind: "word", word: lawful[0] } : null;
    },
    steps: () => [
      "Up to 111.95 a VOR has an even first decimal, and a localizer an odd one; from 112.00 to 117.95 every channel is a VOR's; from 118.00 up they are for voice.",
      `So it is ${frequencyText(right)}.`,
    ],
    ghost: () => null,
  };
}

/** Which DME channel goes with the station's frequency. */
function paired(chance: Chance, world: World, at: Stand): Case | null {
  const { station } = at;
  const right = pairedDmeChannel(station.frequencyMhz);
  if (right === null) return null;
  const near = [right.number + 10, right.number - 10, right.number + chance.pick([-1, 1])];
  const words = [right.text, ...near.map((number) => `${Math.min(126, Math.max(17, number))}${right.mode}`)]
    .filter((text, index, all) => all.indexOf(text) === index)
    .sort();
  const frequency = frequencyText(station.frequencyMhz);
  return {
    scene: sceneAt(world, at, {
      title: "Which station is it?",
      ask: `You tune ${station.name}, ${frequency}. On which channel does your DME ask it?`,
      covers: ["chart", "NAV1", "panel", "reasons", "signal"],
    }),
    views: [],
    given: [
      { label: "Frequency", value: `${frequency} MHz` },
      { label: "The pairing begins", value: "108.00 is 17X, 108.10 is 18X; 112.30 is 70X" },
    ],
    tolerance: {},
    words,
    answer: () => ({ kind: "word", word: right.text }),
    // The table the other way: the channel whose frequency is the one tuned.
    check: ({ receivers: [reading] }) => {
      const tunedMhz = reading?.settings.frequencyMhz;
      const found = words.find((text) => {
        const read = readDmeChannel(text);
        return read.kind === "read" && dmeChannel(read.channel.number, read.channel.mode).vhfMhz === tunedMhz;
      });
      return found === undefined ? null : { kind: "word", word: found };
    },
    steps: () => [
      station.frequencyMhz < 112.3
        ? `Channel 17 begins at 108.00, one to each tenth: ${frequency} is ${right.number}.`
        : `Channel 70 begins at 112.30, one to each tenth: ${frequency} is ${right.number}.`,
      right.mode === "X" ? "A whole tenth is an X channel." : "The half tenth, .05, makes it a Y channel.",
    ],
    ghost: () => null,
  };
}
