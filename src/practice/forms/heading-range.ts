/** The heading is covered; the panel is shown and four headings are named: on which of them could you be? */

import { magneticDeg, threeDigits, wrap180 } from "../../earth/index.ts";
import type { Answer } from "../answer.ts";
import type { Form } from "../form.ts";
import { type Functions, panelShown, physicalRadial } from "../functions.ts";
import { drawSpot, isReceived, sceneAt, stand } from "../stand.ts";
import { ghostOnHeading } from "./ghosts.ts";
import { needleOf, panelRead } from "./panel-answer.ts";

/** Two radials this near are one to a reader of dials, degrees. */
const SAME_RADIAL_DEG = 2;
const ANY = "any of the four";

export const headingRange = {
  id: "heading-range",
  title: "Which headings are possible?",
  skills: ["station-sends-bearing", "four-directions", "heading-does-not-matter"],
  modes: ["choose"],
  answers: "word",
  leastSlipAnswers: 2,
  minutes: 0.7,
  draw(chance, world) {
    const spot = drawSpot(chance, world.beacons);
    if (spot === null) return null;
    const needleDeg = chance.integer(4, 8) * chance.pick([-1, 1]);
    const courseDeg = chance.odds(0.5) ? spot.radialDeg + needleDeg : spot.radialDeg + 180 - needleDeg;
    // Straight along the radial; with the station ahead where an arrow would point; and one more on either side of the wingtips.
    const headingsDeg = [
      spot.radialDeg,
      spot.radialDeg + 180 - needleDeg,
      spot.radialDeg + 180 + Math.sign(needleDeg) * chance.integer(25, 70),
      spot.radialDeg + chance.integer(20, 70) * chance.pick([-1, 1]),
    ];
    const at = stand(world, { ...spot, courseDeg, headingDeg: chance.pick(headingsDeg) });
    const only = (...which: readonly number[]): string => onlyWord(which.map((one) => headingsDeg[one] ?? 0));
    const { facts, station } = at;
    const headings = headingsDeg.map(magneticDeg).sort((one, other) => one - other);
    const listed = headings.map(threeDigits).join(", ");
    const panel = panelShown(facts);
    const radial = physicalRadial(facts);
    const couldBe = (functions: Functions) =>
      headings.filter((heading) => {
        const pointed = { ...facts, heading };
        return (
          functions.flag(pointed) === panel.flag &&
          needleOf(functions.needleDeg(pointed)) === needleOf(panel.needleDeg) &&
          Math.abs(wrap180(functions.readRadial(panel, pointed) - radial)) <= SAME_RADIAL_DEG
        );
      });
    return {
      scene: sceneAt(world, at, {
        title: "Which headings are possible?",
        ask: `Your heading is covered. With this panel, on which of the headings ${listed} could you be?`,
        // The DME's speed would tell of the heading.
        covers: ["chart", "heading", "NAV1.dme", "reasons", "signal"],
      }),
      views: ["panel"],
      given: [{ label: "Headings", value: listed }],
      tolerance: {},
      // One along the radial, one at the arrow, those toward the station, those away from it, or any.
      words: [only(0), only(1), only(1, 2), only(0, 3), ANY],
      answer: (functions) => possible(couldBe(functions), headings.length),
      check: ({ scene, receivers: [shown] }) => {
        if (!isReceived(shown, station)) return null;
        const wanted = panelRead(shown);
        const alike = headings.filter((heading) => {
          const aircraft = { ...scene.aircraft, heading };
          const [reading] = world.resolve({ ...scene, aircraft }).receivers;
          const read = reading === undefined ? null : panelRead(reading);
          return read?.flag === wanted?.flag && read?.needle === wanted?.needle;
        });
        return possible(alike, headings.length);
      },
      steps: () => [
        "Needle and flag compare the selected course with the radial you are on.",
        "The heading has no part in that: turn on the spot and nothing on this face moves. Any of the four is possible.",
      ],
      ghost: (answer) => {
        if (answer.kind !== "word" || answer.word === ANY) return null;
        const told = headings.find((heading) => answer.word.includes(threeDigits(heading)));
        return told === undefined ? null : ghostOnHeading(world, at, told);
      },
    };
  },
} as const satisfies Form;

/** "any of the four", "only 066", "only 066 or 246"; null where none is left. */
function possible(headings: readonly number[], of: number): Answer | null {
  if (headings.length === 0) return null;
  return { kind: "word", word: headings.length === of ? ANY : onlyWord(headings) };
}

const onlyWord = (headings: readonly number[]): string =>
  `only ${headings.map(threeDigits).sort().join(" or ")}`;
