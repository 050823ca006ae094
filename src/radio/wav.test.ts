import { expect, test } from "vitest";
import { wavBytes } from "./wav.ts";

test("is a RIFF/WAVE file of one 16-bit channel whose sizes agree", () => {
  const bytes = wavBytes(new Float32Array([0, 1, -1, 0.5, 2]), 22_050);
  const view = new DataView(bytes.buffer);
  const name = (offset: number): string => String.fromCharCode(...bytes.subarray(offset, offset + 4));
  expect([name(0), name(8), name(12), name(36)]).toEqual(["RIFF", "WAVE", "fmt ", "data"]);
  expect(view.getUint32(4, true)).toBe(bytes.length - 8);
  expect(view.getUint32(40, true)).toBe(10);
  expect(bytes).toHaveLength(54);
  expect([view.getUint16(20, true), view.getUint16(22, true), view.getUint16(34, true)]).toEqual([1, 1, 16]);
  expect([view.getUint32(24, true), view.getUint32(28, true)]).toEqual([22_050, 44_100]);
  const samples = [0, 1, 2, 3, 4].map((index) => view.getInt16(44 + 2 * index, true));
  // The last lies beyond full scale and is clipped.
  expect(samples).toEqual([0, 32_767, -32_767, 16_384, 32_767]);
});

test("refuses a sample that is no number and a rate that is not whole", () => {
  expect(() => wavBytes(new Float32Array([Number.NaN]), 8000)).toThrow(RangeError);
  expect(() => wavBytes(new Float32Array(1), 0)).toThrow(RangeError);
  expect(() => wavBytes(new Float32Array(1), 8000.5)).toThrow(RangeError);
});
