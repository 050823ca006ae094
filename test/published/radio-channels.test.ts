/** Published values of the navigation band and the DME channels; each row names its source (rows/*.json). */

import { describe, expect, test } from "vitest";
import {
  dmeChannel,
  frequencyDeviationHz,
  LOCALIZER_CHANNELS_MHZ,
  pairedDmeChannel,
  readDmeChannel,
  serviceOf,
  VOR_CHANNELS_MHZ,
} from "../../src/radio/index.ts";
import { checkRows, numberIn, type PublishedRow, type RowValues, textIn } from "./published-rows.ts";
import dmePairing from "./rows/dme-pairing.json" with { type: "json" };
import vorSignal from "./rows/vor-signal.json" with { type: "json" };

checkRows({
  name: "vor-signal",
  rows: vorSignal,
  knownRows: 20,
  ours: (row) =>
    "mhz" in row.inputs
      ? { service: serviceOf(numberIn(row.inputs, "mhz")) }
      : {
          deviation_hz: frequencyDeviationHz(
            numberIn(row.inputs, "deviation_ratio"),
            numberIn(row.inputs, "modulating_hz"),
          ),
        },
});

checkRows({ name: "dme-pairing", rows: dmePairing, knownRows: 37, ours: pairing });

function pairing(row: PublishedRow): RowValues {
  if (row.what === "VOR frequency to DME channel")
    return { channel: pairedDmeChannel(numberIn(row.inputs, "vor_mhz"))?.text ?? null };
  const read = readDmeChannel(textIn(row.inputs, "channel"));
  if (read.kind === "unreadable") throw new Error(read.reason);
  const { vhfMhz, service, interrogationMhz, replyMhz } = read.channel;
  return {
    vhf_mhz: vhfMhz,
    vor_mhz: service === "vor" ? vhfMhz : null,
    service,
    interrogation_mhz: interrogationMhz,
    reply_mhz: replyMhz,
  };
}

describe("published constants of the band", () => {
  test("160 VOR channels, 40 of them below 112 MHz, and 40 localizer channels (vor-signal-c003)", () => {
    // Count implied by ICAO Annex 10 Vol V 4.2 with 50 kHz spacing; ground-school notes print the same.
    expect(VOR_CHANNELS_MHZ).toHaveLength(160);
    expect(VOR_CHANNELS_MHZ.filter((mhz) => mhz < 112)).toHaveLength(40);
    expect(LOCALIZER_CHANNELS_MHZ).toHaveLength(40);
    expect([LOCALIZER_CHANNELS_MHZ[0], LOCALIZER_CHANNELS_MHZ.at(-1)]).toEqual([108.1, 111.95]);
  });

  test("the band runs from 108.00 to 117.95 MHz (vor-signal-c001, FAA AIM 1-1-3 a)", () => {
    expect([VOR_CHANNELS_MHZ[0], VOR_CHANNELS_MHZ.at(-1)]).toEqual([108, 117.95]);
  });

  test("pulse pairs are 12/12 microseconds apart on X, 36/30 on Y (dme-pairing-c003, ICAO Annex 10 Table A)", () => {
    expect(dmeChannel(86, "X")).toMatchObject({ interrogationSpacingUs: 12, replySpacingUs: 12 });
    expect(dmeChannel(86, "Y")).toMatchObject({ interrogationSpacingUs: 36, replySpacingUs: 30 });
  });

  test("252 channels ask on 1025..1150 and answer on 962..1213 MHz (dme-pairing-c004, 14 CFR 171.311 Table 1b)", () => {
    const all = Array.from({ length: 126 }, (_, index) => [
      dmeChannel(index + 1, "X"),
      dmeChannel(index + 1, "Y"),
    ]).flat();
    expect(new Set(all.map((channel) => channel.text)).size).toBe(252);
    expect(Math.min(...all.map((channel) => channel.interrogationMhz))).toBe(1025);
    expect(Math.max(...all.map((channel) => channel.interrogationMhz))).toBe(1150);
    expect(Math.min(...all.map((channel) => channel.replyMhz))).toBe(962);
    expect(Math.max(...all.map((channel) => channel.replyMhz))).toBe(1213);
  });

  test("channels 1 to 16 and 60 to 69 have no VHF partner, the other 200 have (dme-pairing-c002)", () => {
    const unpaired = Array.from({ length: 126 }, (_, index) => index + 1).filter(
      (number) => dmeChannel(number, "X").vhfMhz === null,
    );
    expect(unpaired).toEqual([...range(1, 16), ...range(60, 69)]);
    expect(VOR_CHANNELS_MHZ.length + LOCALIZER_CHANNELS_MHZ.length).toBe((126 - unpaired.length) * 2);
  });
});

const range = (from: number, to: number): number[] =>
  Array.from({ length: to - from + 1 }, (_, index) => from + index);
