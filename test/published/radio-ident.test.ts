/** Published values of Morse code, idents and DME accuracy; each row names its source (rows/*.json). */

import { describe, expect, test } from "vitest";
import {
  DME_IDENT_HZ,
  dmeAccuracyFaaNm,
  dmeToleranceIcaoNm,
  dotMs,
  identCalls,
  identDurationS,
  morseCode,
  morseUnits,
  TEST_IDENT,
  usableParts,
  VOR_IDENT_HZ,
} from "../../src/radio/index.ts";
import { checkRows, numberIn, type PublishedRow, type RowValues, textIn } from "./published-rows.ts";
import dmeIdent from "./rows/dme-ident.json" with { type: "json" };
import morse from "./rows/morse.json" with { type: "json" };

const LETTER_GAP_UNITS = 3; // ITU-R M.1677-1

checkRows({ name: "morse", rows: morse, knownRows: 35, ours: code });
checkRows({ name: "dme-ident", rows: dmeIdent, knownRows: 10, ours: distancePart });

function code({ what, inputs }: PublishedRow): RowValues {
  switch (what) {
    case "Morse code of a character":
      return { code: morseCode(textIn(inputs, "character")) };
    case "Length of one dot":
      return { dot_ms: dotMs(numberIn(inputs, "words_per_minute")) };
    case "Units of a letter of PARIS with the gap after it":
      return { units_with_letter_gap: morseUnits(textIn(inputs, "character")) + LETTER_GAP_UNITS };
    case "Maintenance code":
      return { code: morseCode(textIn(inputs, "word")) };
    case "Length of an ident at 7 words per minute": {
      const ident = textIn(inputs, "ident");
      return {
        code: morseCode(ident),
        units: morseUnits(ident),
        duration_s: identDurationS(ident, numberIn(inputs, "words_per_minute")),
      };
    }
    default:
      throw new Error(`no check is written for "${what}"`);
  }
}

function distancePart({ what, inputs }: PublishedRow): RowValues {
  switch (what) {
    case "What the idents heard tell about the two parts of a paired station": {
      const usable = usableParts({
        vorIdentHeard: inputs.vor_1020_hz_ident_heard === true,
        dmeIdentHeard: inputs.dme_1350_hz_ident_heard === true,
      });
      return { vor_usable: usable.vorUsable, dme_usable: usable.dmeUsable };
    }
    case "DME accuracy bound, FAA rule":
      return { accuracy_nm: dmeAccuracyFaaNm(numberIn(inputs, "distance_nm")) };
    case "DME fix tolerance, ICAO rule":
      return { tolerance_nm: dmeToleranceIcaoNm(numberIn(inputs, "distance_nm")) };
    default:
      throw new Error(`no check is written for "${what}"`);
  }
}

describe("published constants of the ident", () => {
  test("the tones are 1020 and 1350 Hz (dme-ident-c001, FAA AIM 1-1-7)", () => {
    expect([VOR_IDENT_HZ, DME_IDENT_HZ]).toEqual([1020, 1350]);
  });

  test("PARIS with its closing word gap is 50 units (morse-c002, standard speed definition)", () => {
    expect(morseUnits("PARIS") + 7).toBe(50);
  });

  test("the DME's ident comes once for each three of the VOR, in a 40 s block (dme-ident-c002 FAA, c003 ICAO)", () => {
    const calls = identCalls({ vorText: "GFS", dmeText: "GFS" }, 120);
    expect(calls.filter((call) => call.toneHz === DME_IDENT_HZ)).toHaveLength(3);
    expect(calls.filter((call) => call.toneHz === VOR_IDENT_HZ)).toHaveLength(9);
    const starts = calls.filter((call) => call.toneHz === DME_IDENT_HZ).map((call) => call.startS);
    expect(starts).toEqual([30, 70, 110]);
  });

  test("a VOR alone sends three idents in 30 s (vor-signal-c009, ICAO Annex 10 3.3.6, from memory)", () => {
    expect(identCalls({ vorText: "GFS", dmeText: null }, 30)).toHaveLength(3);
  });

  test("a station on test sends - . ... - (dme-ident-c006, FAA AIM 1-1-3 c)", () => {
    expect(morseCode(TEST_IDENT)).toBe("- . ... -");
  });
});
