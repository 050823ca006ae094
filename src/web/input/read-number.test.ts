import { describe, expect, it } from "vitest";
import { inThousands, readAltitude, readDirection, readWithin, wholeDirection } from "./read-number.ts";

describe("readDirection", () => {
  it("takes 1 to 3 digits up to 360", () => {
    expect(readDirection("course", "060")).toBe(60);
    expect(readDirection("course", "7")).toBe(7);
    expect(readDirection("course", "360")).toBe(360);
    expect(readDirection("course", "000")).toBe(0);
  });

  it("says what would be right for anything else", () => {
    for (const text of ["361", "-5", "07°", "", "north", "1234", "7.5"])
      expect(readDirection("course", text)).toMatch(/not a course: three digits, 001 to 360$/);
  });

  it("waits for the third digit", () => {
    expect(wholeDirection("07")).toBe(false);
    expect(wholeDirection("070")).toBe(true);
  });
});

describe("readAltitude", () => {
  it("takes feet with and without comma and unit", () => {
    expect(readAltitude("3,500", 0, 45_000)).toBe(3500);
    expect(readAltitude("12000 ft", 0, 45_000)).toBe(12_000);
  });

  it("says what would be right for anything else", () => {
    for (const text of ["", "high", "99999", "FL65"])
      expect(readAltitude(text, 0, 45_000)).toMatch(/0 to 45,000 ft$/);
  });

  it("writes a comma before the hundreds", () => {
    expect([999, 1000, 12_345].map(inThousands)).toEqual(["999", "1,000", "12,345"]);
  });
});

describe("readWithin", () => {
  const limits = { min: 0, max: 0.9, right: "it is 0 to 0.9, such as 0.1" };
  it("takes a number in its limits, ends included, with a point or a comma", () => {
    expect(["0", ".9", "0,25", " 0.5 ", "0."].map((text) => readWithin(text, limits))).toEqual([
      0, 0.9, 0.25, 0.5, 0,
    ]);
  });

  it("says in a sentence what would be right", () => {
    for (const text of ["0.91", "-0.1", "1e-1", "half", "1,0,0", "."])
      expect(readWithin(text, limits)).toBe(`“${text}” will not do: it is 0 to 0.9, such as 0.1`);
    expect(readWithin("", limits)).toBe("nothing will not do: it is 0 to 0.9, such as 0.1");
  });
});
