import { describe, expect, test } from "vitest";
import { LOCALIZER_CHANNELS_MHZ, serviceOf, VOR_CHANNELS_MHZ } from "./channel-plan.ts";
import { dmeChannel, pairedDmeChannel, readDmeChannel } from "./dme-pairing.ts";

const NUMBERS = Array.from({ length: 126 }, (_, index) => index + 1);

describe("pairing", () => {
  test("goes from frequency to channel and back for every VOR and localizer frequency", () => {
    for (const mhz of [...VOR_CHANNELS_MHZ, ...LOCALIZER_CHANNELS_MHZ]) {
      const channel = pairedDmeChannel(mhz);
      expect(channel?.vhfMhz).toBe(mhz);
      expect(channel?.service).toBe(serviceOf(mhz));
    }
  });

  test("goes from channel to frequency and back for every paired channel", () => {
    for (const number of NUMBERS)
      for (const mode of ["X", "Y"] as const) {
        const channel = dmeChannel(number, mode);
        if (channel.vhfMhz !== null) expect(pairedDmeChannel(channel.vhfMhz)).toEqual(channel);
      }
  });

  test.each([107.9, 118, 113.025])("gives no channel for %d MHz", (mhz) => {
    expect(pairedDmeChannel(mhz)).toBeNull();
  });

  test("answers 63 MHz away, X and Y of a number on opposite sides", () => {
    for (const number of NUMBERS) {
      const [x, y] = [dmeChannel(number, "X"), dmeChannel(number, "Y")];
      expect(Math.abs(x.replyMhz - x.interrogationMhz)).toBe(63);
      expect(x.replyMhz + y.replyMhz).toBe(2 * x.interrogationMhz);
    }
  });
});

test("the reply changes sides between channels 63 and 64 (14 CFR 171.311 Table 1b, dme-pairing-c001)", () => {
  const replies = ([63, 64] as const).map((number) => [
    dmeChannel(number, "X").replyMhz,
    dmeChannel(number, "Y").replyMhz,
  ]);
  expect(replies).toEqual([
    [1024, 1150],
    [1151, 1025],
  ]);
});

describe("channel text", () => {
  test.each(["86X", "086X", " 86x ", "86 X"])("%j is channel 86X", (text) => {
    expect(readDmeChannel(text)).toEqual({ kind: "read", channel: dmeChannel(86, "X") });
  });

  test.each(["", "0X", "127X", "86", "86Z", "X86", "1234X"])("%j is refused with the remedy", (text) => {
    expect(readDmeChannel(text)).toEqual({
      kind: "unreadable",
      reason: expect.stringContaining("such as 86X"),
    });
  });

  test.each([0, 127, 1.5, Number.NaN])("number %d is a programmer's mistake", (number) => {
    expect(() => dmeChannel(number, "X")).toThrow(RangeError);
  });
});
