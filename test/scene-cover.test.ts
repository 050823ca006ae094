/** Covers: what each hides, and what it leaves open. */

import { expect, test } from "vitest";
import {
  COVER_WORDS,
  coverText,
  isCovered,
  isReceiverCovered,
  parseCover,
  RECEIVER_PARTS,
} from "../src/scene/index.ts";

test("every cover is read and written alike", () => {
  for (const text of [...COVER_WORDS, "NAV1", ...RECEIVER_PARTS.map((part) => `NAV1.${part}`)]) {
    const target = parseCover(text);
    expect(target && coverText(target)).toBe(text);
  }
  expect(parseCover("chart")).toEqual({ kind: "view", view: "chart" });
  expect(parseCover("heading")).toEqual({ kind: "heading" });
  expect(parseCover("NAV1")).toEqual({ kind: "receiver", receiver: "NAV1", part: null });
  expect(parseCover("NAV1.dme")).toEqual({ kind: "receiver", receiver: "NAV1", part: "dme" });
});

test.each(["", ".", "NAV1.", ".needle", "NAV1.needle.flag", "NAV1.heading", "1st.needle", "the needle"])(
  "%j is no cover",
  (text) => {
    expect(parseCover(text)).toBeNull();
  },
);

test("a part is hidden by its own cover and by its receiver's, and by no other", () => {
  expect(isCovered(["NAV1.needle"], "NAV1", "needle")).toBe(true);
  expect(isCovered(["NAV1"], "NAV1", "needle")).toBe(true);
  expect(isCovered(["NAV1.needle"], "NAV1", "flag")).toBe(false);
  expect(isCovered(["NAV1.needle"], "NAV2", "needle")).toBe(false);
  expect(isCovered(["NAV1", "panel"], "NAV2", "needle")).toBe(false);
  expect(isReceiverCovered(["NAV1.needle"], "NAV1")).toBe(false);
  expect(isReceiverCovered(["NAV1"], "NAV1")).toBe(true);
});

test("views, the aircraft and its heading are hidden by their own names", () => {
  expect(isCovered(["chart"], null, "chart")).toBe(true);
  expect(isCovered(["chart"], null, "aircraft")).toBe(false);
  expect(isCovered(["aircraft"], null, "aircraft")).toBe(true);
  expect(isCovered(["aircraft"], null, "heading")).toBe(false);
});
