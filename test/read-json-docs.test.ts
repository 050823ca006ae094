/** The document of `read --json` tells every key that is printed, and every cause of a flag that may stand in it. */

import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { MONITOR_WORDS, readingJson, reasonsFor } from "../src/reason/index.ts";
import { demoSituations } from "./draw-chart-read.ts";

const document = readFileSync("docs/read-json.md", "utf8");
const [, afterReceivers = ""] = document.split("## `receivers`");
const [receivers = "", measured = ""] = afterReceivers.split("## `measured`");

it("tells every key, each under the object that it is of", () => {
  const jsons = demoSituations().map(({ situation }) => readingJson(situation, reasonsFor(situation)));
  const missing = (text: string, of: object): string[] =>
    Object.keys(of).filter((key) => !text.includes(`\`${key}\``));
  let measurements = 0;
  for (const json of jsons) {
    expect(missing(document, json)).toEqual([]);
    expect(missing(document, json.situation)).toEqual([]);
    for (const reason of json.reasons) expect(missing(document, reason)).toEqual([]);
    for (const receiver of json.receivers) {
      expect(missing(receivers, receiver)).toEqual([]);
      if (receiver.measured === null) continue;
      measurements++;
      expect(missing(measured, receiver.measured)).toEqual([]);
    }
  }
  expect(measurements).toBeGreaterThan(2);
});

it("tells every cause of a flag", () => {
  for (const cause of Object.keys(MONITOR_WORDS)) expect(measured).toContain(`\`${cause}\``);
});
