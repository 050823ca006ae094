import { expect, test } from "vitest";
import { heard } from "../../test/signal.ts";
import { type KeyingRead, readKeying } from "./read-keying.ts";
import { LEAST_CARRIER_TO_NOISE_DB_HZ } from "./signal-monitor.ts";
import type { IdentModulation } from "./vor-modulation.ts";

interface Sent {
  readonly ident: IdentModulation;
  readonly identHz?: number;
  readonly durationS?: number;
  readonly startS?: number;
  readonly carrierToNoiseDbHz?: number | null;
  readonly seed?: number;
}

function read({ ident, identHz = 1020, durationS = 22, startS = 0, ...noise }: Sent): KeyingRead {
  const signal = { modulation: { ident, identHz }, ...noise };
  const receiver = heard(signal, { sampleRateHz: 24_000, durationS, startS, form: "audio" });
  return readKeying(receiver.ident.loudness(), receiver.measured().carrier);
}

const code = (text: string): IdentModulation => ({ kind: "code", text, shared: false });
const LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

test("at the noise at which the flag falls, 200 idents without an error", () => {
  for (let run = 0; run < 200; run++) {
    const text = [7 * run, 11 * run + 3, 5 * run + (run >> 3)].map((at) => LETTERS[at % 26]).join("");
    const found = read({
      ident: code(text),
      // From one gap to past the next, wherever the ident lies in it.
      startS: 8.8,
      durationS: 11,
      carrierToNoiseDbHz: LEAST_CARRIER_TO_NOISE_DB_HZ,
      seed: run,
    });
    expect(found).toEqual({ kind: "ident", text, times: 1 });
  }
}, 120_000);

test("a tone at either end of its tolerance is read", () => {
  for (const identHz of [970, 1070])
    expect(read({ ident: code("HJL"), identHz, carrierToNoiseDbHz: 60 })).toMatchObject({ text: "HJL" });
});

test("an ident that is heard in part is not guessed at", () => {
  expect(read({ ident: code("TXJ"), startS: 1.5, durationS: 6 })).toEqual({ kind: "cut-off" });
  expect(read({ ident: code("TXJ"), startS: 1.5, durationS: 16 })).toMatchObject({ text: "TXJ", times: 1 });
});

test("one turn in four is left to the DME beside it", () => {
  const shared: IdentModulation = { kind: "code", text: "TXJ", shared: true };
  expect(read({ ident: shared, startS: 9, durationS: 33 })).toMatchObject({ text: "TXJ", times: 2 });
  expect(read({ ident: code("TXJ"), startS: 9, durationS: 33 })).toMatchObject({ text: "TXJ", times: 3 });
});

test("T-E-S-T, the sounds of a test station, and nothing but noise", () => {
  expect(read({ ident: code("TEST"), startS: 9.5 })).toMatchObject({ kind: "test" });
  expect(read({ ident: { kind: "dots" } })).toEqual({ kind: "test-signal" });
  expect(read({ ident: { kind: "steady" } })).toEqual({ kind: "test-signal" });
  expect(read({ ident: { kind: "none" } })).toEqual({ kind: "none" });
  for (const carrierToNoiseDbHz of [45, 54, 70])
    expect(read({ ident: { kind: "none" }, carrierToNoiseDbHz })).toEqual({ kind: "none" });
});
