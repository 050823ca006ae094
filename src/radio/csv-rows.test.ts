import { describe, expect, test } from "vitest";
import { readCsvRows } from "./csv-rows.ts";

const HEADER = "a,b,c";
const table = (...lines: string[]) => [HEADER, ...lines].join("\n");

describe("line numbers", () => {
  test.each([
    ["\n", ""],
    ["\r\n", ""],
    ["\r", ""],
    ["\n", "\ufeff"],
    ["\r\n", "\ufeff"],
  ])("stay right with line ends %j and mark %j, over empty lines and quoted breaks", (end, mark) => {
    const text = mark + [HEADER, "", `1,"two${end}${end}lines",3`, "4,5,6", "", "7,8,9", ""].join(end);
    expect(readCsvRows(text)).toEqual({
      rows: [
        { line: 1, values: ["a", "b", "c"] },
        { line: 3, values: ["1", `two${end}${end}lines`, "3"] },
        { line: 6, values: ["4", "5", "6"] },
        { line: 8, values: ["7", "8", "9"] },
      ],
      broken: [],
    });
  });

  test("stay right where the line ends are mixed", () => {
    const { rows } = readCsvRows(`${HEADER}\r\n1,2,3\n4,5,6\r\n7,8,9`);
    expect(rows.map((row) => row.line)).toEqual([1, 2, 3, 4]);
    expect(rows.map((row) => row.values.length)).toEqual([3, 3, 3, 3]);
  });
});

describe("a broken quote", () => {
  test.each([
    ["left open, the next row quoted too", '1,"two,3', '"4",5,6', "opened and not closed"],
    ["left open, closing in the next row", '1,"two,3', '4,"five",6', "closes before its value ends"],
    ["left open to the end", '1,"two,3', "4,5,6", "opened and not closed"],
    ["closed too early", '1,"tw"o,3', "4,5,6", "closes before its value ends"],
    ["inside a value", '1,tw"o,3', "4,5,6", "inside a value that is not quoted"],
  ])("%s costs one line", (_case, bad, good, reason) => {
    const { rows, broken } = readCsvRows(table("0,0,0", bad, good, "7,8,9"));
    expect(rows.map((row) => row.line)).toEqual([1, 2, 4, 5]);
    expect(broken).toEqual([{ line: 3, reason: expect.any(String) }]);
    if (!broken[0]!.reason.includes(reason)) expect(broken[0]!.reason).toContain("quotation mark");
  });

  test("opened in one row and closed in the next does not swallow the rows between", () => {
    const { rows, broken } = readCsvRows(table('1,"two,3', "4,5,6", '7,8,9"', "10,11,12"));
    expect(rows.map((row) => row.line)).toEqual([1, 3, 5]);
    expect(broken.map((row) => row.line)).toEqual([2, 4]);
  });

  test("on every line is listed on every line, in reasonable time", () => {
    const started = performance.now();
    const { rows, broken } = readCsvRows(table(...Array.from({ length: 5000 }, (_, i) => `${i},"x,3`)));
    expect(rows).toHaveLength(1);
    expect(broken).toHaveLength(5000);
    expect(performance.now() - started).toBeLessThan(5000);
  });
});

test("values keep accents, commas and doubled quotes", () => {
  expect(readCsvRows(table('"Châtillon, sur ""Marne""",2,東')).rows[1]?.values).toEqual([
    'Châtillon, sur "Marne"',
    "2",
    "東",
  ]);
});

test("rows of another length are given as they are", () => {
  expect(readCsvRows(table("1,2", "1,2,3,4")).rows.map((row) => row.values.length)).toEqual([3, 2, 4]);
});

test.each(["", "\ufeff", "\n\n"])("an empty file %j has no rows", (text) => {
  expect(readCsvRows(text)).toEqual({ rows: [], broken: [] });
});
