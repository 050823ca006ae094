/** The needle lives; the ident says whether the station may be used. */

import { geodesicDistanceNm } from "../../earth/index.ts";
import { printedMorse, type Station, TEST_IDENT } from "../../radio/index.ts";
import type { Chance } from "../chance.ts";
import type { Health } from "../facts.ts";
import type { Form } from "../form.ts";
import { physicalNeedleDeg } from "../functions.ts";
import { drawCourse, drawSpot, isClearCut, sceneAt, stand, tunedTo } from "../stand.ts";
import type { World } from "../world.ts";
import { withStatus } from "./altered.ts";

/** Farther off, another station is hardly received. */
const OTHER_WITHIN_NM = 40;
const SOUNDS = ["right", "wrong", "test", "absent"] as const;

export const canUse = {
  id: "can-use",
  title: "May you use the station?",
  skills: ["tune-then-prove", "signal-health"],
  modes: ["choose", "tell"],
  answers: "word",
  leastSlipAnswers: 0,
  minutes: 0.6,
  draw(chance, world) {
    const spot = drawSpot(chance, world.beacons, { distanceNm: [8, 40] });
    if (spot === null) return null;
    const wanted = spot.station;
    const sound = chance.odds(0.36) ? "right" : chance.pick(SOUNDS.slice(1));
    const at = stand(world, {
      ...spot,
      courseDeg: drawCourse(chance, spot.radialDeg),
      headingDeg: chance.integer(1, 360),
    });
    if (!isClearCut(at.facts)) return null;
    const tuned = sound === "wrong" ? otherStation(chance, world, wanted, at.position) : wanted;
    if (tuned === null) return null;
    const heard = sound === "right" || sound === "wrong" ? tuned.ident : null;
    const health: Health = {
      signalValid: true,
      identHeard: sound === "test" ? TEST_IDENT : heard,
      identWanted: wanted.ident,
      needleDeg: physicalNeedleDeg(at.facts),
    };
    const scene = sceneAt(world, at, {
      title: "May you use the station?",
      ask: `You want ${wanted.name}, ident ${wanted.ident}. You have tuned, the needle is alive, and you listen. May you use what the needle says?`,
      covers: ["chart", "NAV1.frequency", "NAV1.ident", "NAV1.dme", "reasons", "signal"],
      receivers: [tunedTo("NAV1", tuned, at.facts.course)],
    });
    return {
      scene:
        sound === "test" || sound === "absent"
          ? {
              ...scene,
              stations: withStatus(world, wanted.ident, sound === "test" ? "test" : "no-ident"),
            }
          : scene,
      views: ["panel"],
      given: [
        { label: "You want", value: `${wanted.ident}  ${printedMorse(wanted.ident)}` },
        {
          label: "You hear",
          value:
            health.identHeard !== null
              ? printedMorse(health.identHeard)
              : tuned.dmeChannel === null
                ? "no ident, for a whole minute"
                : `${printedMorse(wanted.ident)}, high, once in half a minute`,
        },
      ],
      tolerance: {},
      words: ["yes", "no"],
      listenTo: "NAV1",
      answer: (functions) => ({ kind: "word", word: functions.usable(health) ? "yes" : "no" }),
      check: ({ receivers: [reading] }) => {
        // The needle is alive by the task's own words.
        if (reading?.radial == null || reading.flag === "OFF") return null;
        const { ident } = reading;
        return {
          kind: "word",
          word: ident.kind === "ident" && ident.text === wanted.ident ? "yes" : "no",
        };
      },
      steps: () => {
        if (sound === "right")
          return [
            `${printedMorse(wanted.ident)} is ${wanted.ident}, the whole ident of the station wanted: use it.`,
          ];
        if (sound === "wrong")
          return [
            `What sounds is ${tuned.ident}, ${tuned.name}: the needle lives, and follows another station. Tune again.`,
          ];
        if (sound === "test")
          return [
            "T-E-S-T says that the station is being worked on: whatever the needle shows, do not use it.",
          ];
        return [
          tuned.dmeChannel === null
            ? "Without its ident a station is out of order or being worked on: do not use it."
            : "The lone high ident every half minute is the DME's: the VOR's own is off, so do not use its needle.",
        ];
      },
      ghost: () => null,
    };
  },
} as const satisfies Form;

/** Another station that may be heard here; one whose frequency has the same digits before any. */
function otherStation(
  chance: Chance,
  world: World,
  wanted: Station,
  position: Station["position"],
): Station | null {
  const near = world.beacons.filter(
    (station) =>
      station.ident !== wanted.ident && geodesicDistanceNm(station.position, position) < OTHER_WITHIN_NM,
  );
  const swapped = near.filter((station) => digits(station) === digits(wanted));
  const among = swapped.length > 0 ? swapped : near;
  return among.length === 0 ? null : chance.pick(among);
}

const digits = ({ frequencyMhz }: Station): string => [...frequencyMhz.toFixed(2)].sort().join("");
