/** The pictures' colours can be read: WCAG 2.2, 1.4.3 (text 4.5:1) and 1.4.11 (graphics 3:1); high contrast as 1.4.6 (7:1). */

import { expect, test } from "vitest";
import { THEME_NAMES, THEMES } from "../src/draw/index.ts";

/** Relative luminance of a colour `#rrggbb`, WCAG 2.2. */
function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(one: string, other: string): number {
  const [low = 0, high = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (high + 0.05) / (low + 0.05);
}

test("black on white is 21 to 1", () => expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 6));

test.each(THEME_NAMES)("%s: words and strokes stand out from every ground", (name) => {
  const theme = THEMES[name];
  const least = name === "contrast" ? 7 : 4.5;
  const grounds = [theme.paper, theme.desk ?? theme.paper];
  for (const ground of grounds)
    for (const colour of [theme.ink, theme.course, theme.radial, theme.soft])
      expect(contrast(colour, ground), `${colour} on ${ground}`).toBeGreaterThanOrEqual(least);
  for (const ground of [theme.sea, ...theme.land])
    for (const colour of [theme.ink, theme.course, theme.radial])
      expect(contrast(colour, ground), `${colour} on ${ground}`).toBeGreaterThanOrEqual(3);
  expect(contrast(theme.ink, theme.cover)).toBeGreaterThanOrEqual(least);
});
