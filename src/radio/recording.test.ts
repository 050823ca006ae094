import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  bass,
  hissOnly,
  localizer,
  music,
  recordingOf,
  soundOf,
  voice,
  withoutDirectPart,
  withSamples,
} from "../../test/recordings.ts";
import { errorDeg } from "../../test/signal.ts";
import { spread } from "../../test/spread.ts";
import { type RecordedSignal, type Recording, type RecordingFault, readRecording } from "./recording.ts";

function signalIn(recording: Recording): RecordedSignal {
  const read = readRecording(recording);
  if (!read.ok) throw new Error(JSON.stringify(read.fault));
  return read.signal;
}

function faultIn(recording: Recording): RecordingFault {
  const read = readRecording(recording);
  if (read.ok) throw new Error(`no fault, but radial ${read.signal.measurement.radial}`);
  return read.fault;
}

describe("a sound recording", () => {
  test("gives radial, depths and ident", () => {
    const ident = { kind: "code", text: "HJL", shared: false } as const;
    const signal = signalIn(recordingOf({ radialDeg: 246, modulation: { ident } }, { durationS: 12 }));
    expect(errorDeg(signal.measurement, 246)).toBeCloseTo(0, 3);
    expect(signal.measurement.toneAmplitude / signal.measurement.carrier).toBeCloseTo(0.3, 4);
    expect(signal.ident).toEqual({ kind: "ident", text: "HJL", times: 1 });
    expect(signal).toMatchObject({ carrierKnown: true, inverted: false, flagCause: null });
  });

  test("without its direct part still gives radial and ident, and no depth; the flag is not pulled for it", () => {
    const ident = { kind: "code", text: "HJL", shared: false } as const;
    const signal = signalIn(
      withoutDirectPart(recordingOf({ radialDeg: 10, modulation: { ident } }, { durationS: 12 })),
    );
    expect(errorDeg(signal.measurement, 10)).toBeCloseTo(0, 2);
    expect(signal).toMatchObject({ carrierKnown: false, flagCause: null, ident: { text: "HJL" } });
  });

  test("without its direct part the flag still falls for a tone that is far too low", () => {
    const weak = recordingOf({ modulation: { toneDepth: 0.1 } });
    expect(signalIn(weak).flagCause).toBe("tone-low");
    expect(signalIn(withoutDirectPart(weak)).flagCause).toBe("tone-low");
  });

  test("upside down is put right", () => {
    const signal = signalIn(withSamples(recordingOf({ radialDeg: 77 }), (x) => -x));
    expect(signal.inverted).toBe(true);
    expect(errorDeg(signal.measurement, 77)).toBeCloseTo(0, 3);
  });

  test("the louder channel is heard, the first of equals", () => {
    const loud = recordingOf({ radialDeg: 30 });
    const soft = withSamples(recordingOf({ radialDeg: 200 }), (x) => x / 4);
    const both = [...soft.channels, ...loud.channels];
    expect(errorDeg(signalIn({ ...loud, channels: both }).measurement, 30)).toBeCloseTo(0, 3);
    const equal = [...loud.channels, ...recordingOf({ radialDeg: 200 }).channels];
    expect(errorDeg(signalIn({ ...loud, channels: equal }).measurement, 30)).toBeCloseTo(0, 1);
  });

  test("noise pulls the flag, and the radial is still told", () => {
    const signal = signalIn(recordingOf({ radialDeg: 120, carrierToNoiseDbHz: 51 }, { durationS: 6 }));
    expect(signal.flagCause).toBe("noisy");
    expect(Math.abs(errorDeg(signal.measurement, 120))).toBeLessThan(3);
  });
});

test("every radial comes back from sound and from baseband, whatever the level", () => {
  fc.assert(
    fc.property(
      spread(0, 360),
      spread(-60, -1),
      fc.constantFrom("audio", "baseband"),
      fc.constantFrom("conventional", "doppler"),
      (radialDeg, levelDb, form, kind) => {
        const made = recordingOf(
          { radialDeg, modulation: { kind } },
          { form, durationS: 1, ...(form === "baseband" ? { carrierOffsetHz: 432 } : {}) },
        );
        const { measurement } = signalIn(withSamples(made, (x) => x * 10 ** (levelDb / 20)));
        expect(Math.abs(errorDeg(measurement, radialDeg))).toBeLessThan(0.01);
      },
    ),
    { numRuns: 20 },
  );
});

describe("a bad recording is named:", () => {
  test("silence, exact or of the last bit", () => {
    expect(faultIn(soundOf(() => 0)).kind).toBe("silent");
    expect(faultIn(soundOf((_, index) => (index % 2) / 32_768)).kind).toBe("silent");
  });

  test("a tenth of a second", () => {
    expect(faultIn(recordingOf({}, { durationS: 0.1 }))).toEqual({ kind: "too-short", durationS: 0.1 });
  });

  test("no samples", () => {
    expect(faultIn(soundOf(() => 0, { durationS: 0 })).kind).toBe("too-short");
  });

  test("samples that are no numbers", () => {
    expect(faultIn(withSamples(recordingOf({}), (x, at) => (at === 5 ? Number.NaN : x))).kind).toBe(
      "not-numbers",
    );
  });

  test("clipped, in whole numbers and in floats", () => {
    const clipped = withSamples(recordingOf({}), (x) => Math.min(1, 1.5 * x));
    expect(faultIn(clipped).kind).toBe("clipped");
    expect(faultIn({ ...clipped, fullScale: null }).kind).toBe("clipped");
  });

  test("not clipped is what only just fits", () => {
    const loud = withSamples(recordingOf({}), (x) => Math.round((x / 0.8) * 32_767) / 32_768);
    expect(signalIn(loud).flagCause).toBe(null);
  });

  test("not clipped is a quiet one in coarse steps, of which many lie at its greatest", () => {
    const quiet = withSamples(recordingOf({ radialDeg: 40 }), (x) => Math.round((x / 8) * 127) / 128);
    expect(Math.abs(errorDeg(signalIn(quiet).measurement, 40))).toBeLessThan(0.5);
  });

  test("a localizer, with its direct part and without", () => {
    expect(faultIn(localizer()).kind).toBe("localizer");
    expect(faultIn(withoutDirectPart(localizer())).kind).toBe("localizer");
  });

  test.each([
    ["voice", voice],
    ["music", music],
    ["a bass at 90 Hz", bass],
    ["hiss", hissOnly],
  ])("%s", (_, sound) => {
    expect(faultIn(sound()).kind).toBe("no-vor");
    expect(faultIn(withoutDirectPart(sound())).kind).toBe("no-vor");
  });

  test("a carrier with its 30 Hz and nothing else", () => {
    expect(faultIn(soundOf((t) => 0.5 + 0.15 * Math.cos(2 * Math.PI * 30 * t))).kind).toBe("no-subcarrier");
  });

  test("a rate that cannot hold the sub-carrier", () => {
    const sound = soundOf((t) => 0.5 + 0.15 * Math.cos(2 * Math.PI * 30 * t), { sampleRateHz: 22_050 });
    expect(faultIn(sound)).toEqual({ kind: "rate-too-low", sampleRateHz: 22_050 });
  });

  test.each([
    [48_000, 44_100],
    [44_100, 48_000],
    [48_000, 8000],
    [96_000, 48_000],
    [24_000, 192_000],
    [192_000, 48_000],
  ])("taken at %i and said to be %i", (sampleRateHz, saidHz) => {
    const made = recordingOf({ radialDeg: 60, carrierToNoiseDbHz: 70 }, { sampleRateHz, durationS: 8 });
    expect(faultIn({ ...made, sampleRateHz: saidHz })).toEqual({
      kind: "wrong-rate",
      saidHz,
      probablyHz: sampleRateHz,
    });
  });

  test("baseband taken for sound, and sound for baseband", () => {
    const baseband = recordingOf({}, { form: "baseband", carrierOffsetHz: 300 });
    expect(faultIn({ ...baseband, form: "audio" })).toEqual({ kind: "other-form", holds: "baseband" });
    const sound = withoutDirectPart(recordingOf({}));
    const stereo = { ...sound, channels: [...sound.channels, new Float64Array(sound.channels[0]!.length)] };
    expect(faultIn({ ...stereo, form: "baseband" })).toEqual({ kind: "other-form", holds: "audio" });
  });
});
