/** The forty mistaken ideas, each replacing one or more of the reference functions and nothing else. */

import {
  magneticDeg,
  magneticFromTrue,
  reciprocal,
  stationDeg,
  trueDeg,
  turned,
  wrap180,
} from "../earth/index.ts";
import {
  courseTrue,
  handOf,
  isOpposed,
  otherHand,
  panelShown,
  physicalNeedleDeg,
  physicalRadial,
} from "./functions.ts";
import type { Slip } from "./slip.ts";

const OFTEN = 0.12;
const AT_TIMES = 0.07;
const SELDOM = 0.03;
const RAD = Math.PI / 180;
/** The turn of someone who chases the needle near the station, degrees. */
const CHASE_DEG = 30;

const slips = <const Id extends string>(list: readonly (Slip & { readonly id: Id })[]) => list;

export const SLIPS = slips([
  {
    id: "radial-reads-inbound",
    name: "A radial is the way in",
    refutation:
      "A radial is counted outward from the station: on the 246 radial you are southwest of it, and fly 066 to reach it.",
    remedy: "Number the spokes at their outer ends, fly a circle, and see the number follow the place.",
    skills: ["four-directions", "centre-and-read", "one-line-position", "in-or-out-course"],
    base: OFTEN,
    origin: "own",
    patch: (before) => ({
      radial: (facts) => reciprocal(before.radial(facts)),
      readRadial: (panel, facts) => reciprocal(before.readRadial(panel, facts)),
      lineOfPosition: (panel, facts) => reciprocal(before.lineOfPosition(panel, facts)),
      taskCourse: ({ way, radial }) => (way === "inbound" ? radial : reciprocal(radial)),
    }),
  },
  {
    id: "radial-is-heading",
    name: "My radial is where I point",
    refutation:
      "The radial says where the aircraft is, whichever way it points: turn on the spot and the radial stays.",
    remedy: "Spin on the spot: the heading rolls, the radial stands still.",
    skills: ["four-directions", "centre-and-read", "heading-does-not-matter"],
    base: OFTEN,
    origin: "listed",
    patch: () => ({
      radial: (facts) => stationDeg(facts.heading),
      readRadial: (_, facts) => stationDeg(facts.heading),
      // Who confuses radial and heading still knows where the station lies.
      bearingTo: (facts) => reciprocal(physicalRadial(facts)),
    }),
  },
  {
    id: "selector-is-radial",
    name: "The number I dialled is my radial",
    refutation: "The selector is a question, not an answer: the radial is what needle and flag say about it.",
    remedy: "Twist the selector: the aircraft on the chart must not move.",
    skills: ["centre-and-read", "dots-to-degrees", "one-line-position"],
    base: OFTEN,
    origin: "own",
    patch: () => ({
      readRadial: (panel) => panel.course,
      lineOfPosition: (panel) => panel.course,
    }),
  },
  {
    id: "needle-points-at-station",
    name: "The needle points at the station",
    refutation:
      "The needle shows on which side the selected line lies for one who faces along it; it knows nothing of the nose or of where the station is from it.",
    remedy: "Four aircraft on one spot with four headings: one panel.",
    skills: ["station-sends-bearing", "side-of-line", "heading-does-not-matter", "whole-panel-forecast"],
    base: OFTEN,
    origin: "listed",
    patch: (_, self) => ({
      needleDeg: (facts) => {
        const fromNose = wrap180(self().bearingTo(facts) - facts.heading);
        return Math.abs(fromNose) > 90 ? Math.sign(fromNose) * (180 - Math.abs(fromNose)) : fromNose;
      },
    }),
  },
  {
    id: "flag-follows-nose",
    name: "TO means that I fly toward it",
    refutation: "TO and FROM compare the selected course with where you are; the heading has no part in it.",
    remedy: "Four aircraft on one spot with four headings: one flag.",
    skills: ["to-from-halves", "heading-does-not-matter", "overhead-or-abeam"],
    base: OFTEN,
    origin: "listed",
    patch: (_, self) => ({
      flag: (facts) => (Math.abs(wrap180(self().bearingTo(facts) - facts.heading)) < 90 ? "TO" : "FROM"),
    }),
  },
  {
    id: "needle-is-aircraft",
    name: "The needle shows where I am",
    refutation:
      "The needle is the line and the ring in the middle is you: needle left, line left, you are right of it.",
    remedy: "Draw the needle as the line and the aircraft in the middle ring.",
    skills: ["side-of-line", "dots-to-degrees", "backwards-needle", "cut-the-line"],
    base: OFTEN,
    origin: "own",
    patch: (before, self) => ({
      side: (facts) => handOf(self().needleDeg(facts)),
      readRadial: (panel) => {
        const needle = self().readNeedleDeg(panel);
        return panel.flag === "TO" ? turned(reciprocal(panel.course), -needle) : turned(panel.course, needle);
      },
      lineHand: (facts) => otherHand(before.lineHand(facts)),
      cutSide: (clearance, facts) => (before.cutSide(clearance, facts) === 1 ? -1 : 1),
    }),
  },
  {
    id: "page-left-right",
    name: "Left of course is left on the page",
    refutation:
      "Left and right of course are those of one who faces along it: southbound they are the other way round on the page.",
    remedy: "Turn the chart until the course points up.",
    skills: ["side-of-line"],
    base: AT_TIMES,
    origin: "own",
    patch: () => ({
      side: (facts) => {
        const along = courseTrue(facts);
        const eastOfLine = Math.sin((facts.azimuth - along) * RAD) * Math.cos(along * RAD);
        return eastOfLine > 0 ? "right" : "left";
      },
    }),
  },
  {
    id: "needle-rules-always",
    name: "Always turn to the needle",
    refutation:
      "The needle is to be followed only when heading and selected course agree; pointed against the course, it reads backwards.",
    remedy: "Let a ghost fly it: the distance to the line grows.",
    skills: ["backwards-needle", "cut-the-line"],
    base: OFTEN,
    origin: "published",
    patch: () => ({ lineHand: (facts) => handOf(physicalNeedleDeg(facts)) }),
  },
  {
    id: "from-means-reversed",
    name: "FROM reverses the needle",
    refutation:
      "Only a heading against the selected course reverses the needle; TO or FROM has nothing to do with it.",
    remedy: "Set up two by two: TO and FROM, heading with and against the course.",
    skills: ["backwards-needle", "through-and-out"],
    base: AT_TIMES,
    origin: "own",
    patch: () => ({
      lineHand: (facts) => {
        const hand = handOf(physicalNeedleDeg(facts));
        return panelShown(facts).flag === "FROM" ? otherHand(hand) : hand;
      },
    }),
  },
  {
    id: "degree-is-a-mile",
    name: "One degree is one mile",
    refutation: "A degree is a mile only at 60 NM; at 30 NM it is half a mile, at 15 a quarter.",
    remedy: "The same deflection at 6, 30 and 60 NM.",
    skills: ["degrees-to-miles", "lead-the-roll-out"],
    base: OFTEN,
    origin: "own",
    patch: () => ({ offNm: (_, needleDeg) => Math.abs(needleDeg) }),
  },
  {
    id: "dot-is-a-degree",
    name: "A dot is one degree",
    refutation: "Five dots are ten degrees: each dot counts two.",
    remedy: "Swing the selector ten degrees and count the dots.",
    skills: ["dots-to-degrees", "degrees-to-miles"],
    base: AT_TIMES,
    origin: "own",
    patch: (before) => ({ readNeedleDeg: (panel) => before.readNeedleDeg(panel) / 2 }),
  },
  {
    id: "true-is-magnetic",
    name: "North is north",
    refutation:
      "The chart counts from true north, radials from the station's north and the compass from magnetic north; the difference must be put in.",
    remedy: "Draw the rose skewed over the grid.",
    skills: ["north-to-north", "one-line-position", "plan-a-radio-leg"],
    base: OFTEN,
    origin: "own",
    patch: (_, self) => ({
      radial: (facts) => stationDeg(facts.azimuth),
      plotTrue: (radial) => trueDeg(radial),
      planHeading: (track, facts) => magneticDeg(track + self().windCorrectionDeg(track, facts)),
    }),
  },
  {
    id: "variation-backwards",
    name: "Variation goes on the other way",
    refutation: "West is added going from true to magnetic, east is taken away.",
    remedy: "Try the sign both ways against the printed rose.",
    skills: ["north-to-north", "one-line-position", "plan-a-radio-leg"],
    base: AT_TIMES,
    origin: "own",
    patch: (_, self) => ({
      radial: (facts) => stationDeg(facts.azimuth + facts.declinationDeg),
      plotTrue: (radial, facts) => trueDeg(radial - facts.declinationDeg),
      planHeading: (track, facts) =>
        magneticDeg(track + facts.variationDeg + self().windCorrectionDeg(track, facts)),
    }),
  },
  {
    id: "todays-variation-on-radial",
    name: "Radials move with magnetic north",
    refutation:
      "A station's radials keep the north it was aligned to when surveyed; only the compass follows today's field.",
    remedy: "Two roses on one place: the station's and the compass's, each with its date.",
    skills: ["station-north", "plan-a-radio-leg"],
    base: AT_TIMES,
    origin: "own",
    patch: () => ({ radial: (facts) => stationDeg(facts.azimuth - facts.variationDeg) }),
  },
  {
    id: "declination-on-compass",
    name: "The compass uses the station's figure",
    refutation:
      "The compass follows today's variation where the aircraft is; the station's declination is for its radials only.",
    remedy: "The same two roses, and now a heading.",
    skills: ["station-north", "plan-a-radio-leg"],
    base: SELDOM,
    origin: "own",
    patch: (_, self) => ({
      planHeading: (track, facts) =>
        magneticDeg(track - facts.declinationDeg + self().windCorrectionDeg(track, facts)),
    }),
  },
  {
    id: "receivers-crossed",
    name: "The lines of the two receivers change places",
    refutation:
      "Each line belongs to the station its own receiver is tuned to: read the frequency, hear the ident, then draw.",
    remedy: "Mark each line and each face with its receiver's number.",
    skills: ["two-line-fix", "dark-sky-fix"],
    base: AT_TIMES,
    origin: "own",
    patch: () => ({ boxes: (first, second) => [second, first] }),
  },
  {
    id: "slant-is-ground",
    name: "DME is distance on the chart",
    refutation:
      "DME measures the slant to the aircraft: overhead it reads your height, and it is longer than the chart's distance nearby.",
    remedy: "Draw the triangle from the side; fly overhead and read the height.",
    skills: ["slant-to-ground", "line-and-distance-fix"],
    base: OFTEN,
    origin: "published",
    patch: () => ({ groundNm: (slantNm) => slantNm, slantNm: (distanceNm) => distanceNm }),
  },
  {
    id: "height-subtracted",
    name: "Just take the height off",
    refutation:
      "Slant, height and ground make a right triangle: take the square of the height from the square of the slant.",
    remedy: "The same triangle with the squares drawn on its sides.",
    skills: ["slant-to-ground"],
    base: SELDOM,
    origin: "own",
    patch: () => ({
      groundNm: (slantNm, heightNm) => Math.max(0, slantNm - heightNm),
      slantNm: (distanceNm, heightNm) => distanceNm + heightNm,
    }),
  },
  {
    id: "dme-rate-always",
    name: "DME speed is groundspeed",
    refutation:
      "DME times how the slant changes: it is groundspeed only straight toward or from the station, and well away from it.",
    remedy: "Fly an arc: the speed reads nothing.",
    skills: ["slant-to-ground", "read-the-wind"],
    base: AT_TIMES,
    origin: "published",
    patch: () => ({ dmeSpeedIsGroundspeed: () => true }),
  },
  {
    id: "inbound-sets-radial",
    name: '"On the 120 radial" means dial 120',
    refutation: "The selector gets the way you will fly: inbound on the 120 radial that is 300.",
    remedy: "Turn the arrow on the spoke around, then dial it.",
    skills: ["in-or-out-course", "cut-the-line"],
    base: OFTEN,
    origin: "published",
    patch: () => ({ taskCourse: ({ radial }) => radial }),
  },
  {
    id: "twists-cut-heading",
    name: "Dial the intercept heading",
    refutation: "The selector gets the line to be met; the intercept heading belongs on the compass only.",
    remedy: "Ask two things: where to, and along which line?",
    skills: ["in-or-out-course", "cut-the-line"],
    base: AT_TIMES,
    origin: "published",
    patch: (_, self) => ({ selector: (clearance, facts) => stationDeg(self().cutHeading(clearance, facts)) }),
  },
  {
    id: "number-is-heading",
    name: "Fly the number shown",
    refutation: "The course is a line on the ground; the heading that reaches or holds it is another number.",
    remedy: "Let a ghost drift beside the line for ever.",
    skills: ["cut-the-line", "bracket-the-wind"],
    base: OFTEN,
    origin: "listed",
    patch: (_, self) => ({
      cutHeading: (clearance) => magneticDeg(self().taskCourse(clearance)),
      trackHeading: (facts) => magneticDeg(facts.course),
      nextCut: (_cut, facts) => magneticDeg(facts.course),
    }),
  },
  {
    id: "cut-mirrored",
    name: "The cut goes on the other side",
    refutation:
      "The cut leans from the course toward the line: line to the right, add; line to the left, take away.",
    remedy: "Look from where you are to the line, then past it.",
    skills: ["cut-the-line"],
    base: AT_TIMES,
    origin: "published",
    patch: (_, self) => ({
      cutHeading: (clearance, facts) =>
        magneticDeg(self().taskCourse(clearance) - self().cutSide(clearance, facts) * clearance.cutDeg),
    }),
  },
  {
    id: "nose-on-station",
    name: "Just point at it",
    refutation:
      "Pointing at the station in a wind flies a curve; a line is held by a heading into the wind, and met by a cut.",
    remedy: "Lay the curved path of homing over the straight track.",
    skills: ["cut-the-line", "bracket-the-wind"],
    base: OFTEN,
    origin: "published",
    patch: (_, self) => ({
      cutHeading: (_clearance, facts) => magneticDeg(self().bearingTo(facts)),
      trackHeading: (facts) => magneticDeg(self().bearingTo(facts)),
    }),
  },
  {
    id: "crab-downwind",
    name: "Lean away from the wind",
    refutation: "The nose goes into the wind, toward where it comes from, so that the drift is made good.",
    remedy: "A boat across a river, leaning either way.",
    skills: ["bracket-the-wind", "read-the-wind"],
    base: AT_TIMES,
    origin: "listed",
    patch: (_, self) => ({
      trackHeading: (facts) => {
        const track = courseTrue(facts);
        return magneticFromTrue(turned(track, -self().windCorrectionDeg(track, facts)), facts.variationDeg);
      },
    }),
  },
  {
    id: "wind-blows-toward",
    name: "The wind blows toward the number",
    refutation: "A wind is named for where it comes from: 140/18 comes out of the southeast.",
    remedy: 'Wind sock and arrow; say "from" aloud.',
    skills: ["read-the-wind", "plan-a-radio-leg"],
    base: AT_TIMES,
    origin: "own",
    patch: (before) => ({ windFrom: (facts) => reciprocal(before.windFrom(facts)) }),
  },
  {
    id: "keeps-whole-cut",
    name: "On the line, keep the intercept heading",
    refutation: "On regaining the line take off half the cut; the other half holds against the wind.",
    remedy: "The ladder of brackets: 20, 10, 5.",
    skills: ["bracket-the-wind"],
    base: AT_TIMES,
    origin: "listed",
    patch: () => ({ nextCut: ({ side, deg }, facts) => magneticDeg(facts.course + side * deg) }),
  },
  {
    id: "abeam-is-overhead",
    name: "When the flag flips, I am overhead",
    refutation: "The flag flips anywhere abeam; overhead the needle swings as well and DME reads the height.",
    remedy: "Ring the line abeam: DME is not at its least there.",
    skills: ["overhead-or-abeam"],
    base: AT_TIMES,
    origin: "published",
    patch: () => ({ isOverhead: ({ flagChanged }) => flagChanged }),
  },
  {
    id: "chases-in-cone",
    name: "A big needle near the station is a big error",
    refutation: "Near the station a degree is a few yards: hold the heading until the flag settles.",
    remedy: "Five degrees at half a mile are eighty metres.",
    skills: ["overhead-or-abeam"],
    base: AT_TIMES,
    origin: "listed",
    patch: () => ({ nearTurnDeg: (facts) => Math.sign(physicalNeedleDeg(facts)) * CHASE_DEG }),
  },
  {
    id: "twists-at-passage",
    name: "Past the station, dial the reciprocal",
    refutation:
      "Straight on, the same course leads out as led in: leave the selector alone and let the flag change.",
    remedy: "Draw the line through the station with one arrow on it.",
    skills: ["through-and-out"],
    base: AT_TIMES,
    origin: "published",
    patch: () => ({ courseAfter: reciprocal }),
  },
  {
    id: "clock-off-the-wing",
    name: "The bearing-change rule works anywhere",
    refutation:
      "Minutes to the station by the change of bearing hold with the station off the wingtip; nearer the nose they come out too long.",
    remedy: "The same rule with the station at 90, 45 and 20 degrees from the nose.",
    skills: ["clock-to-station"],
    base: AT_TIMES,
    origin: "own",
    patch: () => ({ minutesOut: ({ minutes, bearingChangeDeg }) => (60 * minutes) / bearingChangeDeg }),
  },
  {
    id: "reach-by-class",
    name: "The class radius is all that matters",
    refutation: "Horizon and high ground cut the signal off inside the published radius.",
    remedy: "A profile from the side, with the ray.",
    skills: ["class-and-reach", "line-of-sight"],
    base: AT_TIMES,
    origin: "own",
    patch: () => ({ hears: ({ distanceNm, classRadiusNm }) => distanceNm <= classRadiusNm }),
  },
  {
    id: "dead-needle-trusted",
    name: "Centred is centred",
    refutation: "A needle without a signal parks in the middle: read the flag first.",
    remedy: "Pull the plug: the needle parks in the middle.",
    skills: ["signal-health"],
    base: AT_TIMES,
    origin: "listed",
    patch: () => ({ onCourse: ({ needleDeg }) => (Math.abs(needleDeg) < 1 ? "yes" : "no") }),
  },
  {
    id: "alive-means-right",
    name: "If the needle lives, it is the right station",
    refutation:
      "A live needle says that some station is received; only its ident says which, and a test or absent ident says do not use it.",
    remedy: "Swap two digits: two real stations in range.",
    skills: ["tune-then-prove"],
    base: OFTEN,
    origin: "published",
    patch: () => ({ usable: ({ signalValid }) => signalValid }),
  },
  {
    id: "limits-crossed",
    name: "Six on the ground, four in the air",
    refutation: "On the ground and against a test signal the limit is 4 degrees; in the air it is 6.",
    remedy: "The ground stands still: be stricter there.",
    skills: ["prove-the-receiver"],
    base: SELDOM,
    origin: "own",
    patch: () => ({
      checkLimitDeg: (where) => (where === "airborne" ? 4 : where === "two receivers" ? 4 : 6),
    }),
  },
  {
    id: "vot-reciprocal",
    name: "A test signal reads 180 FROM",
    refutation: "A test signal puts you north of it: 000 FROM, or 180 TO.",
    remedy: "Stand north of the station: you are on 000 FROM.",
    skills: ["prove-the-receiver"],
    base: SELDOM,
    origin: "own",
    patch: (before) => ({ testSignalCourse: (flag) => reciprocal(before.testSignalCourse(flag)) }),
  },
  {
    id: "late-changeover",
    name: "Change over when the signal fades",
    refutation: "Change at the midpoint, the bend or the charted point, where both stations are good.",
    remedy: "Both signals drawn against distance.",
    skills: ["hand-over"],
    base: SELDOM,
    origin: "own",
    patch: () => ({ handOverNm: ({ classRadiusNm }) => classRadiusNm }),
  },
  {
    id: "hsi-reverses",
    name: "The compass-card face reads backwards too",
    refutation:
      "On an HSI the card carries the line round with the nose: it does not read backwards with the pointer on the wanted course.",
    remedy: "Turn the whole card with the nose.",
    skills: ["compass-card-panel"],
    base: AT_TIMES,
    origin: "own",
    patch: (before) => ({
      hsiHand: (facts) => (isOpposed(facts) ? otherHand(before.hsiHand(facts)) : before.hsiHand(facts)),
    }),
  },
  {
    id: "head-is-radial",
    name: "The pointer's head is my radial",
    refutation: "The head of the pointer is the bearing to the station; its tail tells the radial.",
    remedy: "Lift the tail: the tail tells the radial.",
    skills: ["pointer-panel"],
    base: AT_TIMES,
    origin: "own",
    patch: () => ({ rmiRadial: (head) => head }),
  },
  {
    id: "selector-drives-rmi",
    name: "The selector moves the pointer",
    refutation: "The RMI's pointer shows the bearing to the station whatever course is selected.",
    remedy: "Twist the selector: nothing moves.",
    skills: ["pointer-panel"],
    base: SELDOM,
    origin: "own",
    patch: () => ({ rmiHead: (facts) => facts.course }),
  },
]);

export type SlipId = (typeof SLIPS)[number]["id"];

const BY_ID: ReadonlyMap<string, Slip & { readonly id: SlipId }> = new Map(
  SLIPS.map((slip) => [slip.id, slip]),
);

export const isSlipId = (text: string): text is SlipId => BY_ID.has(text);

export function slipOf(id: SlipId): Slip & { readonly id: SlipId } {
  const slip = BY_ID.get(id);
  if (slip === undefined) throw new RangeError(`no slip is called ${id}`);
  return slip;
}
