/** `needlework signal`: a station's signal as samples, and a radial from samples. */

import type { Command } from "./command.ts";
import { CallFault } from "./faults.ts";
import { decodeSignal } from "./signal-decode.ts";
import { makeSignal, RATE_BY_DEFAULT_HZ, SECONDS_BY_DEFAULT } from "./signal-make.ts";

export const SIGNAL: Command = {
  name: "signal",
  operands: "SCENE",
  operandCount: [0, 1],
  about: [
    "Writes what one of a scene's receivers is given as a WAV file, with SigMF metadata beside it: the AM detector's output,",
    "or with --iq the complex baseband on two channels. - reads a scene from stdin.",
    "With --decode it measures a recording instead, a WAV file or SigMF: radial, ident, depths, quality, and why a flag falls.",
  ].join("\n"),
  options: {
    output: { value: "FILE", short: "o", help: "the WAV file to write; - for stdout, without metadata" },
    receiver: { value: "NAME", help: "whose signal (the scene's first)" },
    seconds: { value: "S", help: `how long (${SECONDS_BY_DEFAULT})` },
    rate: {
      value: "HZ",
      help: `samples a second (${RATE_BY_DEFAULT_HZ}); with --decode, instead of what the file says`,
    },
    iq: { help: "complex baseband, in phase and quadrature" },
    offset: { value: "HZ", help: "where the carrier stands beside the middle of the band, with --iq (0)" },
    noise: {
      value: "DB|none",
      help: "noise over thermal noise (the scene's; none without a signal of its own)",
    },
    radial: { value: "DEG", help: "another radial than the aircraft's" },
    decode: {
      value: "FILE",
      help: "the recording to measure: .wav or .sigmf-meta; - for a WAV file on stdin",
    },
    course: { value: "DEG", help: "with --decode, also what the needle would show" },
    json: { help: "print as JSON; directions in degrees, null where a thing is not known" },
  },
  example: "needlework signal demo/scenes/01-which-way-to-the-course.yaml -o txj.wav",
  run: async (call) => {
    const scene = call.operands[0];
    const recording = call.text("decode");
    if (recording !== undefined) {
      if (scene !== undefined) throw new CallFault(`--decode takes no scene, but got "${scene}"`);
      return decodeSignal(call, recording);
    }
    if (scene === undefined) throw new CallFault("SCENE is missing; or give a recording: --decode FILE");
    return makeSignal(call, scene);
  },
};
