/** The shape of a problem set's file: its keys, what each may hold, and what a person is told is right. */

import * as z from "zod/mini";
import {
  dateLeafFor,
  type JsonSchema,
  landShapeFor,
  noted,
  publishedSchema,
  type RecordShape,
  stationsShapeFor,
  textLeaf,
} from "../scene/index.ts";
import { MOST_PROBLEMS } from "./problem-set.ts";

export const PROBLEM_SET_VERSION = 1;

export const codeLeaf = textLeaf({
  max: 20,
  pattern: /^[0-9A-Za-z]{3}[- ]?[0-9A-Za-z]{3}[- ]?[0-9A-Za-z]{3}$/,
  looksLike: ["number"],
  right: "a problem's code has nine letters and digits, such as 4K7-Q2M-9XD",
  description:
    "The code of a problem: nine letters and digits. It holds the form, the way of answering and the seed.",
  examples: ["4K7-Q2M-9XD"],
});

export const problemSetLeaves = {
  problems: noted(
    z.literal(PROBLEM_SET_VERSION),
    `a problem set begins with problems: ${PROBLEM_SET_VERSION}`,
    {
      description: "The version of the problem set, which says too that it is one.",
    },
  ),
  title: z.optional(
    textLeaf({
      max: 200,
      blank: true,
      right: "a title has at most 200 characters",
      description: "The title, as it stands on the sheet.",
    }),
  ),
  note: z.optional(
    textLeaf({
      max: 2000,
      blank: true,
      right: "a note has at most 2000 characters",
      description: "What the learners are told at the head of the sheet.",
    }),
  ),
  date: dateLeafFor(
    "The day the problems are set on; magnetic variation depends on it, and so do the problems.",
  ),
  stations: z.optional(
    stationsShapeFor(
      "The stations the problems are set on: a station file by its path from this file, a list of them, or the stations themselves. The Ostrelle Isles when absent.",
    ),
  ),
  land: z.optional(
    landShapeFor("Under stations of your own: a land file by its path from this file, or the land itself."),
  ),
  list: noted(
    z.array(codeLeaf).check(z.minLength(1), z.maxLength(MOST_PROBLEMS)),
    "write list: and under it the problems' codes, each after a dash, such as - 4K7-Q2M-9XD",
    { description: `The problems' codes in the order they are put, 1 to ${MOST_PROBLEMS}.` },
  ),
};

export const PROBLEM_SET: RecordShape = {
  keys: problemSetLeaves,
  meant: {
    version: "problems",
    name: "title",
    about: "note",
    notes: "note",
    description: "note",
    station: "stations",
    map: "land",
    codes: "list",
    items: "list",
  },
};

/** The published JSON Schema, for editors. */
export const problemSetJsonSchema = (): JsonSchema =>
  publishedSchema(z.strictObject(problemSetLeaves), "Needlework problem set");
