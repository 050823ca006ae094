/**
 * The inks of a needle field. An ink is a square of eight by eight pixels that is repeated like a printer's screen: an even tint,
 * or a tint with lines or dots. Every cell of a plate is printed with one ink, and the inks of a field are one small table, the
 * same for whatever prints it. They are laid over the chart's ground as ink over ink: on the light sheet they darken (white prints
 * nothing), on the dark one they lighten (black prints nothing).
 *
 * Colours mean what they mean everywhere: `radial` what the station gives, `course` what you set. They never stand alone: the TO
 * side is hatched, bands have edges, and each kind has its own screen.
 */

import {
  FIELD_RECEPTIONS,
  FIX_BANDS_NM,
  type FieldReception,
  NO_FIX,
  SHADE_COUNT,
  STEPS_EACH_SIDE,
  shadeMeaning,
} from "../../panel/index.ts";
import type { Theme } from "../theme.ts";
import type { FieldKind } from "./field-choice.ts";

/** The side of an ink's square, px, a power of two. */
export const TILE_PX = 8;
export const TILE_CELLS = TILE_PX * TILE_PX;
export const INK_COUNT = 256;

/** Shades come first, then receptions, then bands of fix. */
export const RECEPTION_INKS = 96;
export const FIX_INKS = 128;
export const EDGE_INK = 255;

type Colour = readonly [number, number, number];

/** How much of the second colour lies at a pixel of the square, 0 to 1. */
type Screen = (x: number, y: number) => number;

const DIAGONAL = [1, 0.42, 0, 0, 0, 0, 0, 0.42];
const plain: Screen = () => 0;
/** Rising to the right. */
const hatched: Screen = (x, y) => DIAGONAL[(x + y) % 8] ?? 0;
/** Falling to the right. */
const backHatched: Screen = (x, y) => DIAGONAL[(x - y + 8) % 8] ?? 0;
const crossed: Screen = (x, y) => Math.max(hatched(x, y), backHatched(x, y));
/** Two dots to the square, set off. */
const dotted: Screen = (x, y) => {
  const dx = (((y & 4) === 0 ? x : x + 4) % 8) - 1.5;
  const dy = (y % 4) - 1.5;
  return Math.hypot(dx, dy) < 1 ? 1 : 0;
};

interface Ink {
  readonly tint: Colour;
  readonly screen: Screen;
  readonly mark: Colour;
}

/** All inks of one kind of field, `INK_COUNT` squares of `TILE_CELLS` pixels, red, green, blue and an opaque fourth. */
export function inksFor(kind: FieldKind, theme: Theme): Uint8Array {
  const bytes = new Uint8Array(INK_COUNT * TILE_CELLS * 4);
  for (let ink = 0; ink < INK_COUNT; ink++) {
    const { tint, screen, mark } = inkOf(kind, theme, ink);
    for (let at = 0; at < TILE_CELLS; at++) {
      const [red, green, blue] = mixed(tint, mark, screen(at % TILE_PX, Math.floor(at / TILE_PX)));
      bytes.set([red, green, blue, 255], (ink * TILE_CELLS + at) * 4);
    }
  }
  return bytes;
}

function inkOf(kind: FieldKind, theme: Theme, ink: number): Ink {
  const strength = tinter(theme);
  if (ink === EDGE_INK) return even(strength(theme.soft, 0.55));
  if (ink >= FIX_INKS && ink < FIX_INKS + NO_FIX) return fixInk(theme, ink - FIX_INKS);
  const reception = FIELD_RECEPTIONS[ink - RECEPTION_INKS];
  if (reception !== undefined) return kind === "reception" ? receptionInk(theme, reception) : blank(theme);
  if (ink < SHADE_COUNT) return kind === "to-from" ? flagInk(theme, ink) : needleInk(theme, ink);
  return blank(theme);
}

/** Needle: from the radial's colour at full left through nothing to the course's at full right. */
function needleInk(theme: Theme, shade: number): Ink {
  const meaning = shadeMeaning(shade);
  if (meaning === null) return blank(theme);
  const strength = tinter(theme);
  const part = Math.abs(meaning.step) / STEPS_EACH_SIDE;
  const colour = meaning.step < 0 ? theme.radial : theme.course;
  const tint = strength(colour, part === 0 ? 0 : FULL * (0.12 + 0.88 * part));
  if (meaning.flag === "FROM") return even(tint);
  return { tint, screen: hatched, mark: over(theme, tint, strength(theme.radial, HATCH)) };
}

function flagInk(theme: Theme, shade: number): Ink {
  const meaning = shadeMeaning(shade);
  if (meaning === null) return blank(theme);
  const strength = tinter(theme);
  if (meaning.flag === "FROM") return even(strength(theme.course, FULL * 0.62));
  const tint = strength(theme.radial, FULL * 0.62);
  return { tint, screen: hatched, mark: over(theme, tint, strength(theme.radial, HATCH)) };
}

function receptionInk(theme: Theme, reception: FieldReception): Ink {
  const strength = tinter(theme);
  const marked = (part: number, screen: Screen, mark: string, markPart: number): Ink => {
    const tint = strength(theme.radial, part);
    return { tint, screen, mark: over(theme, tint, strength(mark, markPart)) };
  };
  switch (reception) {
    case "good-inside":
      return even(strength(theme.radial, 0.28));
    case "good-outside":
      return marked(0.1, backHatched, theme.radial, 0.26);
    case "good-unknown":
      return even(strength(theme.radial, 0.18));
    case "weak-inside":
    case "weak-outside":
    case "weak-unknown":
      return marked(0.06, dotted, theme.radial, 0.6);
    case "overhead":
      return marked(0, crossed, theme.course, 0.5);
    case "two-at-once":
      return marked(0.2, crossed, theme.course, 0.5);
    case "terrain":
      return marked(0, hatched, theme.soft, 0.32);
    case "too-weak":
      return marked(0, dotted, theme.soft, 0.5);
    case "below-horizon":
    case "silent":
    case "distance-only":
    case "no-station":
    case "localizer-channel":
      return blank(theme);
  }
}

/** The better the fix, the deeper. */
const FIX_STRENGTHS = [0.52, 0.38, 0.26, 0.15, 0] as const;

function fixInk(theme: Theme, band: number): Ink {
  const strength = tinter(theme);
  const tint = strength(theme.radial, FIX_STRENGTHS[band] ?? 0);
  // The last has no end, and a screen of its own says that it is not blank.
  return band < FIX_BANDS_NM.length
    ? even(tint)
    : { tint, screen: dotted, mark: over(theme, tint, strength(theme.radial, 0.36)) };
}

/** How deep a needle at full scale and the lines of the TO side are printed. */
const FULL = 0.32;
const HATCH = 0.22;

const even = (tint: Colour): Ink => ({ tint, screen: plain, mark: tint });
const blank = (theme: Theme): Ink => even(nothingOn(theme));

const WHITE: Colour = [255, 255, 255];
const BLACK: Colour = [0, 0, 0];
/** What prints nothing. */
const nothingOn = ({ name }: Theme): Colour => (name === "light" ? WHITE : BLACK);

/** A colour printed so strongly, 0 to 1. */
const tinter =
  (theme: Theme) =>
  (colour: string, part: number): Colour =>
    mixed(nothingOn(theme), channelsOf(colour), part);

/** One ink over another, as the page lays them over its ground. */
const over = ({ name }: Theme, one: Colour, other: Colour): Colour =>
  one.map((value, channel) => {
    const second = other[channel] ?? 0;
    return Math.round(
      name === "light" ? (value * second) / 255 : 255 - ((255 - value) * (255 - second)) / 255,
    );
  }) as unknown as Colour;

const mixed = (one: Colour, other: Colour, part: number): Colour =>
  one.map((value, channel) =>
    Math.round(value + ((other[channel] ?? 0) - value) * part),
  ) as unknown as Colour;

/** `#rrggbb` as three numbers. */
function channelsOf(hex: string): Colour {
  const value = Number.parseInt(hex.slice(1), 16);
  return [(value >> 16) & 0xff, (value >> 8) & 0xff, value & 0xff];
}
