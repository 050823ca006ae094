/** `needlework figure`: a picture of a scene, for a slide or a page. */

import { extname } from "node:path";
import {
  type ChartField,
  chartField,
  choiceFor,
  coverOver,
  type FieldKind,
  figureSvg,
  newChoice,
  THEME_NAMES,
  THEMES,
  type ThemeName,
} from "../draw/index.ts";
import { reasonsFor } from "../reason/index.ts";
import { resolveScene, type Scene, VIEWS, type View } from "../scene/index.ts";
import type { Call, Command } from "./command.ts";
import { didYouMean } from "./did-you-mean.ts";
import { CallFault, EXIT_DONE } from "./faults.ts";
import { type PictureSize, pictureSize } from "./picture-size.ts";
import { readSceneOrThrow } from "./scene-operand.ts";
import { STREAM, tell } from "./streams.ts";
import { writeWhole } from "./write-whole.ts";

const FORMATS = ["svg", "png", "pdf"] as const;
type Format = (typeof FORMATS)[number];

/** A field by the word that asks for it. */
const FIELDS: Readonly<Record<string, FieldKind>> = {
  needle: "needle",
  "to-from": "to-from",
  reception: "reception",
  "cross-fix": "fix",
};

const DEFAULT_VIEWS: readonly View[] = ["chart", "panel"];

export const FIGURE: Command = {
  name: "figure",
  operands: "SCENE",
  operandCount: [1, 1],
  about: [
    "Draws a scene as an SVG, PNG or PDF, by the ending of the output's name. What the scene covers stays covered, so a",
    "problem can be printed as it is and its answer with --uncover. - reads a scene from stdin.",
  ].join("\n"),
  options: {
    output: { value: "FILE", short: "o", help: "the file to write: .svg, .png or .pdf; - for stdout" },
    format: { value: FORMATS.join("|"), help: "the kind of picture, where the name does not say it" },
    views: { value: "LIST", help: `which of ${VIEWS.join(",")} (${DEFAULT_VIEWS.join(",")})` },
    size: { value: "SIZE", help: "16:9, 4:3 or WIDTHxHEIGHT in pixels (16:9, that is 1920x1080)" },
    theme: { value: THEME_NAMES.join("|"), help: "(light)" },
    field: {
      value: Object.keys(FIELDS).join("|"),
      help: "colour the chart by what this says at every place",
    },
    receiver: {
      value: "NAME",
      help: "whose field and argument; of a cross-fix the first (the scene's first)",
    },
    transparent: { help: "leave the ground around the sheets empty" },
    uncover: { help: "show what the scene covers" },
  },
  example:
    "needlework figure demo/scenes/01-which-way-to-the-course.yaml -o slide.png --views chart,panel,reasons",
  run: async (call) => {
    const path = call.operands[0] ?? "";
    const output = call.text("output");
    if (output === undefined) throw new CallFault("say where the picture goes: -o FILE");
    const format = formatOf(call, output);
    const look = {
      views: viewsOf(call),
      ...pictureSize(call.text("size")),
      theme: THEMES[oneOf<ThemeName>(call, "theme", THEME_NAMES) ?? "light"],
      transparent: call.has("transparent"),
      idPrefix: "figure",
    };
    const { scene, files } = await readSceneOrThrow(path);
    const shown: Scene = call.has("uncover") ? { ...scene, covers: [] } : scene;
    const receiver = receiverOf(call, shown);
    const field = fieldOf(call, shown, look.views);
    const situation = resolveScene(shown);
    const { worldLandFor } = await import("./world-land.ts");
    const picture = {
      ...look,
      situation,
      reasons: reasonsFor(situation),
      world: worldLandFor(shown),
      receiver,
      field,
    };
    writeWhole(output, await PICTURES[format](picture), files);
    if (output !== STREAM) tell(`${output} written, ${look.widthPx} by ${look.heightPx} pixels`);
    return EXIT_DONE;
  },
};

type Picture = Parameters<typeof figureSvg>[0] & PictureSize;

/** Each format's parts are loaded only when it is asked for: the rasteriser and the typesetter take their time to start. */
const PICTURES: Readonly<Record<Format, (picture: Picture) => Promise<Uint8Array>>> = {
  svg: async (picture) => {
    const { embeddedFontCss } = await import("./picture-fonts.ts");
    return Buffer.from(figureSvg({ ...picture, fontCss: embeddedFontCss() }));
  },
  png: async (picture) => {
    const { pngFromSvg } = await import("./png.ts");
    return pngFromSvg(figureSvg(picture), picture.widthPx);
  },
  pdf: async (picture) => {
    const { pdfFromSvg } = await import("./pdf.ts");
    return pdfFromSvg(figureSvg(picture), picture, picture.situation.scene.title);
  },
};

function formatOf(call: Call, output: string): Format {
  const asked = oneOf<Format>(call, "format", FORMATS);
  const ending = extname(output).slice(1).toLowerCase();
  const named = FORMATS.find((format) => format === ending);
  if (asked !== undefined && named !== undefined && asked !== named)
    throw new CallFault(`--format ${asked} contradicts the name ${output}`);
  const format = asked ?? named;
  if (format !== undefined) return format;
  throw new CallFault(
    output === STREAM
      ? "say which picture goes to stdout: --format svg, png or pdf"
      : `${output} does not end in .svg, .png or .pdf; name it so, or say which it is with --format`,
  );
}

function viewsOf(call: Call): readonly View[] {
  const text = call.text("views");
  if (text === undefined) return DEFAULT_VIEWS;
  const words = text.split(",").map((word) => word.trim());
  const views = words.map((word) => known(word, "view", VIEWS));
  if (new Set(views).size < views.length) throw new CallFault(`--views ${text} names a view twice`);
  return views;
}

/** The receiver asked for; undefined when none is. */
function receiverOf(call: Call, { receivers }: Scene): string | undefined {
  const text = call.text("receiver");
  return text === undefined
    ? undefined
    : known(
        text,
        "receiver",
        receivers.map(({ name }) => name),
      );
}

function fieldOf(call: Call, scene: Scene, views: readonly View[]): ChartField | null {
  const word = oneOf(call, "field", Object.keys(FIELDS));
  const kind = word === undefined ? undefined : FIELDS[word];
  if (kind === undefined) return null;
  if (!views.includes("chart"))
    throw new CallFault(`--field ${word} colours the chart; add chart to --views`);
  const choice = choiceFor(scene, newChoice(kind, receiverOf(call, scene) ?? scene.receivers[0]?.name ?? ""));
  if (choice === null)
    throw new CallFault(`--field ${word} takes two receivers, and this scene has ${scene.receivers.length}`);
  const covered = coverOver(scene, choice);
  if (covered !== null)
    throw new CallFault(`--field ${word} would show what the scene covers (${covered}); add --uncover`);
  return chartField(scene, choice);
}

/** The option's word, which must be one of the known ones; undefined when the option is not given. */
function oneOf<W extends string>(call: Call, name: string, words: readonly W[]): W | undefined {
  const text = call.text(name);
  return text === undefined ? undefined : known(text, name, words);
}

function known<W extends string>(text: string, what: string, words: readonly W[]): W {
  const word = words.find((candidate) => candidate === text);
  if (word !== undefined) return word;
  throw new CallFault(
    `unknown ${what} "${text}"${didYouMean(text, words)}; it is one of ${words.join(", ")}`,
  );
}
