import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  explainFrequency,
  frequencyText,
  LOCALIZER_CHANNELS_MHZ,
  nearestVorChannels,
  readFrequency,
  sameChannel,
  serviceOf,
  VOR_CHANNELS_MHZ,
} from "./channel-plan.ts";

describe("the service of a frequency", () => {
  test("is the same however the number was reached", () => {
    // 108 + 26 x 0.05 is 109.30000000000001 and 109.3 x 1000 is 109299.99999999999.
    let summed = 108;
    for (let step = 0; step < 200; step++) {
      const exact = (108_000 + 50 * step) / 1000;
      expect(serviceOf(summed), String(exact)).toBe(serviceOf(exact));
      expect(sameChannel(summed, exact)).toBe(true);
      summed += 0.05;
    }
  });

  test("follows the parity of the tenth below 112 MHz, and is VOR from there up", () => {
    for (let step = 0; step < 200; step++) {
      const text = ((108_000 + 50 * step) / 1000).toFixed(2);
      const tenth = Number(text[4]);
      const expected = Number(text) >= 112 || tenth % 2 === 0 ? "vor" : "localizer";
      expect(serviceOf(Number(text)), text).toBe(expected);
    }
  });

  test.each([
    [107.95, "outside"],
    [108, "vor"],
    [111.95, "localizer"],
    [112, "vor"],
    [117.95, "vor"],
    [117.975, "outside"],
    [113.02, "not-a-channel"],
    [113.0501, "not-a-channel"],
    [0, "outside"],
    [-110.2, "outside"],
  ])("of %d MHz is %s", (mhz, service) => {
    expect(serviceOf(mhz)).toBe(service);
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY])("refuses %d", (mhz) => {
    expect(() => serviceOf(mhz)).toThrow(RangeError);
  });
});

describe("the nearest VOR channels", () => {
  test("of anything in the band are VOR, enclose it, and have no VOR channel between", () => {
    fc.assert(
      fc.property(fc.double({ min: 108, max: 117.95, noNaN: true }), (mhz) => {
        const near = nearestVorChannels(mhz);
        const [low, high] = [near[0]!, near.at(-1)!];
        expect(near.every((channel) => VOR_CHANNELS_MHZ.includes(channel))).toBe(true);
        expect(low).toBeLessThanOrEqual(mhz + 1e-6);
        expect(high).toBeGreaterThanOrEqual(mhz - 1e-6);
        expect(VOR_CHANNELS_MHZ.filter((channel) => channel > low && channel < high)).toEqual([]);
      }),
    );
  });

  test("of a localizer lie to both sides of it", () => {
    expect(nearestVorChannels(108.1)).toEqual([108.05, 108.2]);
    expect(nearestVorChannels(111.95)).toEqual([111.85, 112]);
  });

  test("of a VOR channel are that channel, off the band its end", () => {
    for (const mhz of VOR_CHANNELS_MHZ) expect(nearestVorChannels(mhz)).toEqual([mhz]);
    expect(nearestVorChannels(90)).toEqual([108]);
    expect(nearestVorChannels(120)).toEqual([117.95]);
  });
});

test("every service has its sentence, with the remedy", () => {
  expect(explainFrequency(115.6).explanation).toBe("115.60 is a VOR channel");
  expect(explainFrequency(108.1).explanation).toBe(
    "108.10 is a localizer channel; VOR channels below 112 MHz have an even tenth, the nearest are 108.05 and 108.20",
  );
  expect(explainFrequency(113.025).explanation).toBe(
    "113.025 is not on the 50 kHz steps of the navigation band; of the VOR channels the nearest are 113.00 and 113.05",
  );
  expect(explainFrequency(118).explanation).toBe(
    "118.00 is outside the navigation band, 108.00 to 117.95 MHz",
  );
});

describe("frequency text", () => {
  test("has two decimals for every channel and reads back to the same number", () => {
    for (const mhz of [...VOR_CHANNELS_MHZ, ...LOCALIZER_CHANNELS_MHZ]) {
      expect(frequencyText(mhz)).toMatch(/^\d{3}\.\d\d$/);
      expect(readFrequency(frequencyText(mhz))).toEqual({ kind: "read", frequencyMhz: mhz });
    }
  });

  test.each(["115.6", "115.60", "115.600", " 115.60 MHz", 115.6])("reads %j", (written) => {
    expect(readFrequency(written)).toEqual({ kind: "read", frequencyMhz: 115.6 });
  });

  test.each(["", "115,60", "one", "1e2", "-115.6", Number.NaN])(
    "does not read %j, and says why",
    (written) => {
      expect(readFrequency(written)).toEqual({
        kind: "unreadable",
        reason: expect.stringContaining("such as 115.60"),
      });
    },
  );
});
