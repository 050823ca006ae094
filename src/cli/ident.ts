/** `needlework ident`: a station's ident as sound. */

import {
  callSamples,
  IDENT_SAMPLE_RATE_HZ,
  IDENT_WORDS_PER_MINUTE,
  identDurationS,
  identPeriodS,
  isMorseText,
  morseCode,
  VOR_IDENT_HZ,
  wavBytes,
} from "../radio/index.ts";
import type { Call, Command } from "./command.ts";
import { CallFault, EXIT_DONE, InputFault } from "./faults.ts";
import { type NumberRule, numberOption } from "./number-option.ts";
import { print, STREAM, tell } from "./streams.ts";
import { writeWhole } from "./write-whole.ts";

/** Far more letters than any station sends, and still a file of a few megabytes. */
const LONGEST_TEXT = 20;
const SPEED: NumberRule = { name: "wpm", least: 1, most: 40, unit: "words a minute" };
/** Below half of the sample rate, and within hearing. */
const TONE: NumberRule = { name: "tone", least: 50, most: 10_000, unit: "Hz" };
const REPEATS: NumberRule = { name: "repeat", least: 1, most: 60, unit: "times", whole: true };

export const IDENT: Command = {
  name: "ident",
  operands: "TEXT",
  operandCount: [1, 1],
  about: [
    "Keys the text in Morse code as a station's ident sounds, and writes it as a WAV file.",
    `A VOR's tone is ${VOR_IDENT_HZ} Hz, that of the DME beside it 1350 Hz.`,
  ].join("\n"),
  options: {
    output: { value: "FILE", short: "o", help: "the WAV file to write; - for stdout" },
    wpm: { value: "N", help: `words a minute (${IDENT_WORDS_PER_MINUTE})` },
    tone: { value: "HZ", help: `hertz (${VOR_IDENT_HZ})` },
    repeat: { value: "N", help: "how many times, every ten seconds as on the air (1)" },
    json: { help: "print text, code, length, speed and tone as JSON" },
  },
  example: "needlework ident HJL -o hjl.wav",
  run: async (call) => {
    const text = identText(call);
    const wordsPerMinute = numberOption(call, SPEED, IDENT_WORDS_PER_MINUTE);
    const toneHz = numberOption(call, TONE, VOR_IDENT_HZ);
    const repeats = numberOption(call, REPEATS, 1);
    const output = call.text("output");
    if (output === STREAM && call.has("json")) throw new CallFault("--json and -o - would both go to stdout");
    const durationS = identDurationS(text, wordsPerMinute);
    const about = { text, morse: morseCode(text), durationS, wordsPerMinute, toneHz };
    if (call.has("json")) print(JSON.stringify(about));
    if (output === undefined) {
      if (!call.has("json")) print(inWords(about));
      return EXIT_DONE;
    }
    writeWhole(output, sound(about, repeats), []);
    if (output !== STREAM && !call.has("json")) tell(`${inWords(about)}, written to ${output}`);
    return EXIT_DONE;
  },
};

interface About {
  readonly text: string;
  readonly morse: string;
  readonly durationS: number;
  readonly wordsPerMinute: number;
  readonly toneHz: number;
}

function identText(call: Call): string {
  const text = call.operands[0] ?? "";
  if (!isMorseText(text))
    throw new InputFault(`"${text}" cannot be an ident: only the letters A to Z and figures have a code`);
  if (text.length > LONGEST_TEXT)
    throw new InputFault(`the text has ${text.length} letters; at most ${LONGEST_TEXT} are keyed`);
  return text.toUpperCase();
}

function sound({ text, durationS, wordsPerMinute, toneHz }: About, repeats: number): Uint8Array {
  const periodS = identPeriodS(text, wordsPerMinute);
  const calls = Array.from({ length: repeats }, (_, turn) => ({ startS: turn * periodS, text, toneHz }));
  const wholeS = (repeats - 1) * periodS + durationS;
  return wavBytes(callSamples(calls, wholeS, { wordsPerMinute }), IDENT_SAMPLE_RATE_HZ);
}

const inWords = ({ text, morse, durationS, wordsPerMinute, toneHz }: About): string =>
  `${text}  ${morse}  ${durationS.toFixed(1)} s at ${wordsPerMinute} words a minute, ${toneHz} Hz`;
