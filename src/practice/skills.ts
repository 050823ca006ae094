/**
 * The learner's path: what a student can do at the end of each step, in teaching order, and what each step builds on. The order and the
 * prerequisites are ours; what is to be known follows the FAA's Airman Certification Standards and handbooks.
 */

/** In menus: from what the station sends to whole procedures. */
export const SKILL_BANDS = ["signal", "numbers", "reading", "position", "flying", "procedure"] as const;
export type SkillBand = (typeof SKILL_BANDS)[number];

export const SKILL_IDS = [
  "station-sends-bearing",
  "band-and-pairing",
  "tune-then-prove",
  "signal-health",
  "class-and-reach",
  "line-of-sight",
  "four-directions",
  "reciprocal-at-sight",
  "north-to-north",
  "station-north",
  "centre-and-read",
  "to-from-halves",
  "side-of-line",
  "dots-to-degrees",
  "degrees-to-miles",
  "heading-does-not-matter",
  "whole-panel-forecast",
  "backwards-needle",
  "one-line-position",
  "two-line-fix",
  "slant-to-ground",
  "line-and-distance-fix",
  "in-or-out-course",
  "cut-the-line",
  "lead-the-roll-out",
  "bracket-the-wind",
  "read-the-wind",
  "overhead-or-abeam",
  "through-and-out",
  "clock-to-station",
  "hold-the-arc",
  "racetrack",
  "prove-the-receiver",
  "plan-a-radio-leg",
  "hand-over",
  "dark-sky-fix",
  "lost-and-found",
  "compass-card-panel",
  "pointer-panel",
] as const;
export type SkillId = (typeof SKILL_IDS)[number];

export interface Skill {
  readonly id: SkillId;
  readonly band: SkillBand;
  /** For a menu. */
  readonly title: string;
  /** What can be seen at the end, in the third person: "says left or right of course". */
  readonly does: string;
  readonly needs: readonly SkillId[];
}

export const SKILLS: readonly Skill[] = [
  {
    id: "station-sends-bearing",
    band: "signal",
    title: "Say what a station sends",
    does: "says what is broadcast, what the receiver derives, and two things it cannot know: heading and distance",
    needs: [],
  },
  {
    id: "band-and-pairing",
    band: "signal",
    title: "Pick a VOR channel",
    does: "picks a lawful VOR channel, tells it from a localizer, reads the paired DME channel",
    needs: ["station-sends-bearing"],
  },
  {
    id: "tune-then-prove",
    band: "signal",
    title: "Tune, then prove it",
    does: "tunes, listens to one whole ident and matches it; rejects a wrong, absent or test ident",
    needs: ["band-and-pairing"],
  },
  {
    id: "signal-health",
    band: "signal",
    title: "Centred or dead",
    does: "separates a centred needle from a dead one: flag first, needle second",
    needs: ["tune-then-prove"],
  },
  {
    id: "class-and-reach",
    band: "signal",
    title: "Reach by class",
    does: "reads the protected range from class and height above the station",
    needs: ["station-sends-bearing"],
  },
  {
    id: "line-of-sight",
    band: "signal",
    title: "See the station",
    does: "finds the lowest altitude that sees the station, over the horizon and the ground",
    needs: ["class-and-reach"],
  },
  {
    id: "four-directions",
    band: "numbers",
    title: "Four directions",
    does: "names radial, bearing, course and heading in one scene",
    needs: ["station-sends-bearing"],
  },
  {
    id: "reciprocal-at-sight",
    band: "numbers",
    title: "Reciprocals at sight",
    does: "gives any reciprocal at once",
    needs: ["four-directions"],
  },
  {
    id: "north-to-north",
    band: "numbers",
    title: "True to magnetic",
    does: "turns true into magnetic and back",
    needs: ["four-directions"],
  },
  {
    id: "station-north",
    band: "numbers",
    title: "The station's own north",
    does: "counts radials from the station's declination and the compass from today's variation",
    needs: ["north-to-north"],
  },
  {
    id: "centre-and-read",
    band: "reading",
    title: "Centre and read",
    does: "turns the selector until the needle centres; reads the radial with FROM and the bearing with TO",
    needs: ["tune-then-prove", "four-directions", "reciprocal-at-sight"],
  },
  {
    id: "to-from-halves",
    band: "reading",
    title: "TO and FROM halves",
    does: "predicts the flag from position and course",
    needs: ["centre-and-read"],
  },
  {
    id: "side-of-line",
    band: "reading",
    title: "Side of the line",
    does: "says left or right of course, facing along the course",
    needs: ["centre-and-read"],
  },
  {
    id: "dots-to-degrees",
    band: "reading",
    title: "Dots to degrees",
    does: "turns a deflection into degrees",
    needs: ["side-of-line"],
  },
  {
    id: "degrees-to-miles",
    band: "reading",
    title: "Degrees to miles",
    does: "turns degrees off into miles off",
    needs: ["dots-to-degrees"],
  },
  {
    id: "heading-does-not-matter",
    band: "reading",
    title: "Heading does not matter",
    does: "knows that turning on the spot changes nothing on the panel",
    needs: ["to-from-halves", "side-of-line"],
  },
  {
    id: "whole-panel-forecast",
    band: "reading",
    title: "Forecast the whole panel",
    does: "predicts flag, side and amount from chart and course, now and minutes later",
    needs: ["dots-to-degrees", "heading-does-not-matter"],
  },
  {
    id: "backwards-needle",
    band: "reading",
    title: "The needle reversed",
    does: "spots course and heading opposed and says which way the line lies",
    needs: ["whole-panel-forecast"],
  },
  {
    id: "one-line-position",
    band: "position",
    title: "One line of position",
    does: "draws the line of position from the correct side of the station",
    needs: ["station-north", "centre-and-read"],
  },
  {
    id: "two-line-fix",
    band: "position",
    title: "Fix by two lines",
    does: "fixes a position from two stations",
    needs: ["one-line-position"],
  },
  {
    id: "slant-to-ground",
    band: "position",
    title: "Slant to ground",
    does: "turns slant range into ground distance and back, and knows when it may be left out",
    needs: ["station-sends-bearing"],
  },
  {
    id: "line-and-distance-fix",
    band: "position",
    title: "Fix by a line and a distance",
    does: "fixes a position from one radial and DME",
    needs: ["one-line-position", "slant-to-ground"],
  },
  {
    id: "in-or-out-course",
    band: "flying",
    title: "Inbound or outbound course",
    does: 'sets the selector for "inbound on" and "outbound on"',
    needs: ["reciprocal-at-sight", "to-from-halves"],
  },
  {
    id: "cut-the-line",
    band: "flying",
    title: "Cut the line",
    does: "chooses the turn and the angle that meet the line",
    needs: ["side-of-line", "backwards-needle", "in-or-out-course"],
  },
  {
    id: "lead-the-roll-out",
    band: "flying",
    title: "Lead the roll-out",
    does: "starts the turn onto the line early enough",
    needs: ["degrees-to-miles", "cut-the-line"],
  },
  {
    id: "bracket-the-wind",
    band: "flying",
    title: "Bracket the wind",
    does: "corrects toward the line, holds, and takes off half on regaining it",
    needs: ["cut-the-line"],
  },
  {
    id: "read-the-wind",
    band: "flying",
    title: "Read the wind",
    does: "tells the wind from drift; finds correction angle and groundspeed",
    needs: ["bracket-the-wind"],
  },
  {
    id: "overhead-or-abeam",
    band: "flying",
    title: "Overhead or abeam",
    does: "tells station passage from passing abeam; holds the heading in the cone",
    needs: ["to-from-halves"],
  },
  {
    id: "through-and-out",
    band: "flying",
    title: "Through and out",
    does: "goes straight on with the selector untouched, or turns to a new radial in order",
    needs: ["in-or-out-course", "cut-the-line", "overhead-or-abeam"],
  },
  {
    id: "clock-to-station",
    band: "flying",
    title: "The clock to the station",
    does: "finds minutes to the station from a change of bearing near the wingtip",
    needs: ["four-directions"],
  },
  {
    id: "hold-the-arc",
    band: "flying",
    title: "Hold the arc",
    does: "leads onto a DME arc and stays on it in short legs",
    needs: ["slant-to-ground", "bracket-the-wind"],
  },
  {
    id: "racetrack",
    band: "flying",
    title: "The holding pattern",
    does: "picks the entry, times the legs and triples the drift correction outbound",
    needs: ["bracket-the-wind", "through-and-out"],
  },
  {
    id: "prove-the-receiver",
    band: "procedure",
    title: "Prove the receiver",
    does: "knows the receiver checks, their limits and what to write down",
    needs: ["centre-and-read"],
  },
  {
    id: "plan-a-radio-leg",
    band: "procedure",
    title: "Plan a leg by radio",
    does: "fills a line of the nav log: radials, heading, groundspeed, time",
    needs: ["class-and-reach", "line-of-sight", "station-north", "in-or-out-course", "read-the-wind"],
  },
  {
    id: "hand-over",
    band: "procedure",
    title: "Hand over",
    does: "changes station at the midpoint, the bend or the charted point",
    needs: ["plan-a-radio-leg"],
  },
  {
    id: "dark-sky-fix",
    band: "procedure",
    title: "Fix without satellites",
    does: "tunes, proves and fixes within two minutes",
    needs: ["two-line-fix", "line-and-distance-fix", "plan-a-radio-leg"],
  },
  {
    id: "lost-and-found",
    band: "procedure",
    title: "Lost and found",
    does: "orders the actions: safe heading and climb, admit it, fix, call, choose",
    needs: ["dark-sky-fix"],
  },
  {
    id: "compass-card-panel",
    band: "reading",
    title: "The compass-card face",
    does: "reads the HSI and knows why it does not reverse with the pointer set to the wanted course",
    needs: ["whole-panel-forecast", "backwards-needle"],
  },
  {
    id: "pointer-panel",
    band: "reading",
    title: "The pointer face",
    does: "reads the RMI: head the bearing to, tail the radial, the selector of no account",
    needs: ["four-directions", "reciprocal-at-sight"],
  },
];

const BY_ID = new Map(SKILLS.map((skill) => [skill.id, skill]));

export function skillOf(id: SkillId): Skill {
  const skill = BY_ID.get(id);
  if (skill === undefined) throw new RangeError(`no skill is called ${id}`);
  return skill;
}

export const isSkillId = (text: string): text is SkillId => (SKILL_IDS as readonly string[]).includes(text);

/** A skill with everything it builds on, in teaching order. */
export function withNeeds(ids: readonly SkillId[]): readonly SkillId[] {
  const all = new Set<SkillId>();
  const add = (id: SkillId): void => {
    if (all.has(id)) return;
    all.add(id);
    skillOf(id).needs.forEach(add);
  };
  ids.forEach(add);
  return SKILL_IDS.filter((id) => all.has(id));
}
