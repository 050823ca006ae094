/** Unsure of the position: what comes first? Letters are put in order. */

import { feet } from "../../reason/index.ts";
import type { Form } from "../form.ts";
import { drawSpot, sceneAt, stand } from "../stand.ts";

/** FAA Private Pilot ACS (FAA-S-ACS-6C), area VI task D, lost procedures; the wording and the order within it are ours. */
const ACTIONS = [
  { rank: 1, text: "Hold a safe heading, and climb: you see, hear and are heard farther" },
  { rank: 2, text: "Admit that you are lost: note the time and the fuel that is left" },
  { rank: 3, text: "Fix the position: tune and identify two stations, or one with DME" },
  { rank: 4, text: "Call: tell a controller, or anyone on 121.5, and ask for help" },
  {
    rank: 5,
    text: "Choose: on to where you were going, back, or to the nearest field, by fuel and daylight",
  },
] as const;
const LETTERS = ["A", "B", "C", "D", "E"] as const;

export const lostOrder = {
  id: "lost-order",
  title: "What comes first?",
  skills: ["lost-and-found"],
  modes: ["tell"],
  answers: "order",
  leastSlipAnswers: 0,
  minutes: 1,
  draw(chance, world) {
    const spot = drawSpot(chance, world.beacons, { distanceNm: [15, 40] });
    if (spot === null) return null;
    const at = stand(world, {
      ...spot,
      courseDeg: chance.integer(1, 360),
      headingDeg: chance.integer(1, 360),
    });
    const rest: (typeof ACTIONS)[number][] = [...ACTIONS];
    const items = LETTERS.flatMap((letter) => {
      const [action] = rest.splice(chance.integer(0, rest.length - 1), 1);
      return action === undefined ? [] : [{ letter, text: action.text, rank: action.rank }];
    });
    // As they stand is no puzzle.
    if (items.every(({ rank }, index) => rank === index + 1)) return null;
    return {
      scene: sceneAt(world, at, {
        title: "What comes first?",
        ask: `Haze, no satellites, ${feet(at.altitudeFt)}, and nothing below fits the chart. In which order do you act?`,
        covers: ["aircraft", "heading", "NAV1", "panel", "reasons", "signal"],
      }),
      views: ["chart"],
      given: [],
      tolerance: { first: 3 },
      items: items.map(({ letter, text }) => ({ letter, text })),
      answer: () => ({
        kind: "order",
        items: [...items].sort((one, other) => one.rank - other.rank).map(({ letter }) => letter),
      }),
      // From the words as they are shown, each looked up in the list.
      check: ({ scene }) =>
        scene.covers.includes("aircraft")
          ? {
              kind: "order",
              items: ACTIONS.flatMap(({ text }) =>
                items.filter((item) => item.text === text).map(({ letter }) => letter),
              ),
            }
          : null,
      steps: () => [
        "First fly: a safe heading and height.",
        "Then say to yourself that you are lost, and count time and fuel.",
        "Then fix the position, with what you have. Whoever still cannot calls, and chooses a field by the fuel that is left.",
      ],
      ghost: () => null,
    };
  },
} as const satisfies Form;
