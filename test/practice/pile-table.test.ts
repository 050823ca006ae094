/** Tables of answers as people and spreadsheets write them. */

import { describe, expect, it } from "vitest";
import { readAnswerSheet } from "../../src/practice/index.ts";

const row = (line: number, learner: string, problem: string, answer: string) => ({
  line,
  learner,
  problem,
  answer,
  confidence: null,
  timeS: null,
  acceptedBecause: null,
});

describe("a table of answers", () => {
  it.each([
    ["commas", 'Ana,1,"3, 4"\nBo,Q2,A\n'],
    ["semicolons", "Ana;1;3, 4\r\nBo;#2;A\r\n"],
    ["tabs", "Ana\t1\t3, 4\nBo\tno. 2\tA"],
    ["semicolons under a header", "\ufeffName;Question;Answer\nAna;1.;3, 4\nBo;2;A", 1],
    ["what is said before it", "sep=;\nAna;1;3, 4\nBo;2;A", 1],
    ["blank lines and rows", '\nAna,1,"3, 4"\n,,\nBo,2,A\n', 1, 2],
  ])("is read with %s", (_, text, before = 0, beforeBo = before) => {
    expect(readAnswerSheet(text)).toEqual({
      rows: [row(1 + before, "Ana", "1", "3, 4"), row(2 + beforeBo, "Bo", "2", "A")],
      refused: [],
    });
  });

  it.each([
    ["Ana;1;3,4,5", "3,4,5"],
    ["Ana,1,3;4", "3;4"],
    ["Ana\t1\t3,4;5", "3,4;5"],
  ])("%s has the answer %s", (text, answer) => {
    expect(readAnswerSheet(text)).toEqual({ rows: [row(1, "Ana", "1", answer)], refused: [] });
  });

  it("may have a learner in each row and a problem in each column; an empty cell is a problem left out", () => {
    const text = "Class,Name,1,Q2,20F-FC7-2D4\nB,Ana,A,,246\nB,Bo,,?,\nB,,A,B,\nB,Cho,,,\n";
    expect(readAnswerSheet(text)).toEqual({
      rows: [row(2, "Ana", "1", "A"), row(2, "Ana", "20F-FC7-2D4", "246"), row(3, "Bo", "2", "?")],
      refused: [
        { line: 4, reason: "no learner is named in this row" },
        { line: 5, reason: "Cho: no answer stands in this row" },
      ],
    });
  });

  it("refuses a row of more values than belong, whose answer was cut in two", () => {
    const { rows, refused } = readAnswerSheet("Ana,1,3,4\nBo,1,A,,\n");
    expect(rows).toEqual([row(2, "Bo", "1", "A")]);
    expect(refused).toEqual([
      { line: 1, reason: expect.stringMatching(/^Ana: the row has 4 values where 3 belong; .* quotation/) },
    ]);
  });

  it("lists a quotation mark left open, and reads on", () => {
    const { rows, refused } = readAnswerSheet('learner,problem,answer\nAna,1,"A\nBo,1,B\n');
    expect(rows).toEqual([row(3, "Bo", "1", "B")]);
    expect(refused.map(({ line }) => line)).toEqual([2]);
  });
});
