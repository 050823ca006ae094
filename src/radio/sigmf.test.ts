import { describe, expect, test } from "vitest";
import { readSigmf, type SigmfMetadata, sigmfChannels, sigmfText } from "./sigmf.ts";

const ABOUT = {
  form: "baseband",
  sampleRateHz: 48_000,
  samples: 576_000,
  dataset: "hjl.wav",
  description: "HJL",
  label: "VOR",
  frequencyHz: 113_900_000,
} as const;

function metadataOf(text: string): SigmfMetadata {
  const read = readSigmf(text);
  if (!read.ok) throw new Error(read.fault);
  return read.metadata;
}

const simple = (global: object, captures: object[] = []): string =>
  JSON.stringify({ global: { "core:version": "1.0.0", ...global }, captures, annotations: [] });

test("what is written has the fields of the specification, and is read back", () => {
  const text = sigmfText(ABOUT);
  // SigMF 1.x: the three objects; datatype and version are required; header_bytes belongs to a capture, dataset to global.
  expect(JSON.parse(text)).toMatchObject({
    global: {
      "core:datatype": "ci16_le",
      "core:sample_rate": 48_000,
      "core:version": expect.stringMatching(/^1\.\d+\.\d+$/),
      "core:dataset": "hjl.wav",
      "core:description": "HJL",
    },
    captures: [{ "core:sample_start": 0, "core:header_bytes": 44, "core:frequency": 113_900_000 }],
    annotations: [{ "core:sample_start": 0, "core:sample_count": 576_000, "core:label": "VOR" }],
  });
  expect(metadataOf(text)).toMatchObject({
    form: "baseband",
    sampleRateHz: 48_000,
    dataset: "hjl.wav",
    headerBytes: 44,
    trailingBytes: 0,
  });
});

test("sound is real, and a frequency that is not told is not there", () => {
  const json = JSON.parse(sigmfText({ ...ABOUT, form: "audio", frequencyHz: null }));
  expect(json.global["core:datatype"]).toBe("ri16_le");
  expect(json.captures[0]).not.toHaveProperty("core:frequency");
});

describe("samples of every form", () => {
  const values = [0.5, -0.25, 0.75, -1];
  const each = (fill: (value: number, index: number) => void): void => {
    for (const [index, value] of values.entries()) fill(value, index);
  };
  const half = (bits: number): number => 2 ** (bits - 1);
  const view = (bytes: number, fill: (view: DataView) => void): Uint8Array => {
    const made = new DataView(new ArrayBuffer(bytes));
    fill(made);
    return new Uint8Array(made.buffer);
  };
  const forms: [string, Uint8Array][] = [
    ["cf32_le", view(16, (v) => each((x, at) => v.setFloat32(4 * at, x, true)))],
    ["cf32_be", view(16, (v) => each((x, at) => v.setFloat32(4 * at, x, false)))],
    ["cf64_le", view(32, (v) => each((x, at) => v.setFloat64(8 * at, x, true)))],
    ["ci16_le", view(8, (v) => each((x, at) => v.setInt16(2 * at, x * half(16), true)))],
    ["ci16_be", view(8, (v) => each((x, at) => v.setInt16(2 * at, x * half(16), false)))],
    ["ci32_le", view(16, (v) => each((x, at) => v.setInt32(4 * at, x * half(32), true)))],
    ["cu16_be", view(8, (v) => each((x, at) => v.setUint16(2 * at, (x + 1) * half(16), false)))],
    ["cu32_le", view(16, (v) => each((x, at) => v.setUint32(4 * at, (x + 1) * half(32), true)))],
    ["ci8", view(4, (v) => each((x, at) => v.setInt8(at, x * half(8))))],
    ["cu8", view(4, (v) => each((x, at) => v.setUint8(at, (x + 1) * half(8))))],
  ];
  test.each(forms)("%s, and its real brother", (datatype, bytes) => {
    const read = (name: string): number[][] =>
      sigmfChannels(bytes, metadataOf(simple({ "core:datatype": name }))).map((channel) => [...channel]);
    expect(read(datatype)).toEqual([
      [0.5, 0.75],
      [-0.25, -1],
    ]);
    expect(read(datatype.replace("c", "r"))).toEqual([values]);
  });

  test("header and trailer are passed over, an unfinished sample is left out", () => {
    const metadata = metadataOf(
      simple({ "core:datatype": "ri8", "core:trailing_bytes": 1 }, [{ "core:header_bytes": 2 }]),
    );
    expect(sigmfChannels(new Uint8Array([9, 9, 64, 192, 9]), metadata)).toEqual([Float64Array.of(0.5, -0.5)]);
    expect(sigmfChannels(new Uint8Array(1), metadata)).toEqual([new Float64Array(0)]);
    const complex = metadataOf(simple({ "core:datatype": "ci8" }));
    expect(sigmfChannels(new Uint8Array([64, 64, 64]), complex).map(({ length }) => length)).toEqual([1, 1]);
  });
});

test.each([
  ["no JSON", "is no JSON"],
  ["[]", 'has no "global" object'],
  ["null", 'has no "global" object'],
  [simple({}), "core:datatype is null"],
  [simple({ "core:datatype": "ci16" }), 'core:datatype is "ci16"; it must be a form such as ri16_le'],
  [simple({ "core:datatype": "cf16_le" }), 'core:datatype is "cf16_le"'],
  [simple({ "core:datatype": "cu8", "core:num_channels": 2 }), "core:num_channels is 2; one channel is read"],
  [simple({ "core:datatype": "cu8", "core:sample_rate": "fast" }), 'core:sample_rate is "fast"'],
  [
    simple({ "core:datatype": "cu8", "core:dataset": "../x.wav" }),
    "it must be the name of a file in the same folder",
  ],
  [simple({ "core:datatype": "cu8" }, [{ "core:header_bytes": -4 }]), "must be whole numbers of bytes"],
])("%j is refused", (text, words) => {
  expect(readSigmf(text)).toEqual({ ok: false, fault: expect.stringContaining(words) });
});
