import { expect, it } from "vitest";
import { readError, signedDegrees } from "./read-error.ts";

it("takes signed degrees, by whichever minus", () => {
  expect(["3", "+3", "−6", "-6°", "2.5", "2,5", "0", "-0"].map((text) => readError(text, 30))).toEqual([
    3, 3, -6, -6, 2.5, 2.5, 0, 0,
  ]);
});

it("says what would be right for anything else", () => {
  for (const text of ["", "31", "-30.1", "2.55", "left", "1e1"])
    expect(readError(text, 30)).toMatch(/−30 to \+30 degrees$/);
});

it("writes what it reads", () => {
  expect([-6, 0, 2.5].map(signedDegrees)).toEqual(["−6", "0", "+2.5"]);
});
