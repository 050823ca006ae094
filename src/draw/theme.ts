/**
 * Colours, type and stroke of every picture: a printed atlas on a drawing table. Three colours carry the teaching and mean the
 * same in every view: ink is you, `course` is what you set, `radial` is what the station gives.
 */

export interface Theme {
  readonly name: ThemeName;
  /** The aircraft, its heading, plain text. */
  readonly ink: string;
  /** What you set: selected course, its line, index and needle. */
  readonly course: string;
  /** What the station gives: stations, roses, your radial, the TO side. */
  readonly radial: string;
  /** The ground everything lies on; null leaves it transparent. */
  readonly desk: string | null;
  /** A sheet on the desk. */
  readonly paper: string;
  readonly sea: string;
  /** Low, middle, high ground. */
  readonly land: readonly [string, string, string];
  readonly coast: string;
  /** Rules and hairlines. */
  readonly line: string;
  /** Secondary words. */
  readonly soft: string;
  readonly cover: string;
  readonly coverInk: string;
  /** What is covered is left empty, to be drawn and written in by hand, in place of a strip that says what it hides. */
  readonly blanks?: boolean;
}

export const THEME_NAMES = ["light", "dark", "contrast"] as const;
export type ThemeName = (typeof THEME_NAMES)[number];

const LIGHT: Theme = {
  name: "light",
  ink: "#1d2730",
  course: "#af3d28",
  radial: "#0f6b78",
  desk: "#e9e4d8",
  paper: "#fbf8f1",
  sea: "#e8eef0",
  land: ["#efe6cf", "#e2d3ad", "#cdb787"],
  coast: "#8b8468",
  line: "#c9c2b2",
  soft: "#5c6670",
  cover: "#d9cfb8",
  coverInk: "#7b705a",
};

const DARK: Theme = {
  name: "dark",
  ink: "#ece6d8",
  course: "#f08a6c",
  radial: "#62c3cf",
  desk: "#12181d",
  paper: "#1a2229",
  sea: "#16212a",
  land: ["#2c2f2a", "#3a392d", "#4c4833"],
  coast: "#8f8a70",
  line: "#37424a",
  soft: "#9aa3a8",
  cover: "#4a4538",
  coverInk: "#c9bd9f",
};

/** High contrast, for weak eyes and weak projectors: every word and stroke at 7:1 or more on its ground. */
const CONTRAST: Theme = {
  name: "contrast",
  ink: "#000000",
  course: "#8a1500",
  radial: "#00404a",
  desk: "#ffffff",
  paper: "#ffffff",
  sea: "#ffffff",
  land: ["#f4ecd8", "#e9dcb8", "#dccb98"],
  coast: "#3d3a2c",
  line: "#6b6b6b",
  soft: "#303030",
  cover: "#efe6cf",
  coverInk: "#3d3526",
};

export const THEMES: Readonly<Record<ThemeName, Theme>> = { light: LIGHT, dark: DARK, contrast: CONTRAST };

/**
 * For paper, one ink: what is set stays a full line and what the station gives a broken one, so that nothing is lost in black and white.
 * Not offered as a look of the bench.
 */
export const PRINT_THEME: Theme = {
  name: "contrast",
  ink: "#000000",
  course: "#000000",
  radial: "#3a3a3a",
  desk: null,
  paper: "#ffffff",
  sea: "#ffffff",
  land: ["#f1f1f1", "#e4e4e4", "#d3d3d3"],
  coast: "#7d7d7d",
  line: "#a8a8a8",
  soft: "#404040",
  cover: "#ffffff",
  coverInk: "#7d7d7d",
  blanks: true,
};

/** Words. */
export const WORDS_FONT = "B612, 'DejaVu Sans', sans-serif";
/** Every number that can change, so that it does not jump. */
export const NUMBERS_FONT = "'B612 Mono', 'DejaVu Sans Mono', monospace";
