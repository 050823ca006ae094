/**
 * Measures of a dial of any size, px. Everything grows with the face, except that type never falls below 12 px and strokes stay
 * between a hairline and a firm line. The centre is (0, 0), up is the top of the instrument.
 */

import { CAP_HEIGHT } from "../plain/text-width.ts";

export interface DialGeometry {
  readonly sizePx: number;
  /** The outer ring. */
  readonly ringRadiusPx: number;
  readonly ringStrokePx: number;
  /** Tick lengths from the ring inwards: each 30, 10 and 5 degrees; 0 when a face is too small for them. */
  readonly tickPx: { readonly thirty: number; readonly ten: number; readonly five: number };
  readonly tickStrokePx: number;
  readonly numeralSizePx: number;
  /** Middle of the numerals. */
  readonly numeralRadiusPx: number;
  /** Where the numerals end inwards. */
  readonly clearRadiusPx: number;
  /** The hairline inside the numerals; the needle moves within. */
  readonly innerRadiusPx: number;
  readonly dotSpacingPx: number;
  readonly dotRadiusPx: number;
  readonly needleStrokePx: number;
  readonly needleHalfLengthPx: number;
  readonly plateTextPx: number;
  /** Too small for twelve numerals and a triangle in the plate: letters of the quarters and words alone. */
  readonly tiny: boolean;
}

const between = (low: number, value: number, high: number): number => Math.max(low, Math.min(high, value));

/** @param sizePx side of the square that the face fills, px, more than 0; made for 120 and more */
export function dialGeometry(sizePx: number): DialGeometry {
  const known = KNOWN.get(sizePx) ?? measured(sizePx);
  if (KNOWN.size === MOST_KNOWN) KNOWN.clear();
  KNOWN.set(sizePx, known);
  return known;
}

/** The very same measures for the same size: as long as they stay, so do the parts drawn from them. */
const KNOWN = new Map<number, DialGeometry>();
const MOST_KNOWN = 16;

function measured(sizePx: number): DialGeometry {
  const ringRadiusPx = sizePx / 2 - Math.max(7, 0.055 * sizePx);
  const thirty = 0.048 * sizePx;
  const numeralSizePx = Math.max(12, 0.072 * sizePx);
  const halfNumeralPx = (CAP_HEIGHT / 2) * numeralSizePx;
  const numeralRadiusPx = ringRadiusPx - thirty - Math.max(2, 0.016 * sizePx) - halfNumeralPx;
  const clearRadiusPx = numeralRadiusPx - halfNumeralPx;
  const innerRadiusPx = clearRadiusPx - Math.max(2, 0.02 * sizePx);
  return {
    sizePx,
    ringRadiusPx,
    ringStrokePx: between(1.4, sizePx / 110, 4.5),
    tickPx: { thirty, ten: 0.036 * sizePx, five: sizePx < 160 ? 0 : 0.02 * sizePx },
    tickStrokePx: between(0.9, sizePx / 200, 2.6),
    numeralSizePx,
    numeralRadiusPx,
    clearRadiusPx,
    innerRadiusPx,
    dotSpacingPx: (innerRadiusPx * 0.84) / 5,
    dotRadiusPx: Math.max(1.2, 0.0095 * sizePx),
    needleStrokePx: Math.max(2.2, sizePx / 68),
    needleHalfLengthPx: innerRadiusPx * 0.58,
    plateTextPx: Math.max(12, 0.06 * sizePx),
    tiny: sizePx < 112,
  };
}
