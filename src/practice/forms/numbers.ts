/**
 * The forms of problem by name, each with its place in problem codes. A number is never changed or given again: codes on paper
 * depend on it.
 */

export const FORM_NUMBERS = {
  "needle-forecast": 0,
  "flag-forecast": 1,
  "side-call": 2,
  "turn-call": 3,
  "read-radial": 4,
  "place-dot": 5,
  "measure-radial": 6,
  "centre-course": 7,
  "clearance-course": 8,
  "cut-heading": 9,
  "track-heading": 10,
  "ground-speed": 11,
  "off-by-miles": 12,
  "ground-range": 13,
  "dme-forecast": 14,
  "dme-speed-trust": 15,
  "minutes-out": 16,
  "can-hear": 17,
  "can-use": 18,
  "am-i-on": 19,
  "two-line-fix": 20,
  "heading-range": 21,
  "overhead-or-abeam": 22,
  "course-after": 23,
  "near-station-act": 24,
  "next-cut": 25,
  "next-panel": 26,
  "hsi-turn": 27,
  "rmi-radial": 28,
  "rmi-after-twist": 29,
  "check-verdict": 30,
  "vot-reading": 31,
  "hand-over-point": 32,
  "plan-heading": 33,
  "wind-from-drift": 34,
  "ident-match": 35,
  "leg-log": 36,
  "lost-order": 37,
} as const;

export type FormId = keyof typeof FORM_NUMBERS;

export const FORM_IDS = Object.keys(FORM_NUMBERS) as readonly FormId[];

export const isFormId = (text: string): text is FormId => Object.hasOwn(FORM_NUMBERS, text);
