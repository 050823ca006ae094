/**
 * A dead needle rests in the middle, and only the flag tells it from a centred one. With the flag covered nothing else may: a station
 * on the air and the same station silent give the same panel and the same chart, byte for byte.
 */

import { describe, expect, it } from "vitest";
import {
  faceSentence,
  fitView,
  needleWords,
  Panel,
  ReceiverFace,
  THEMES,
  wavesSentence,
} from "../src/draw/index.ts";
import type { Face } from "../src/panel/index.ts";
import type { Situation } from "../src/scene/index.ts";
import { chartSvg } from "./draw-chart-read.ts";
import { svgOf } from "./draw-faces-read.ts";
import { HJL, OXK, onRadial, situationOf, TXJ } from "./isles.ts";

const theme = THEMES.light;
/** The ident and the distance tell too, each by itself. */
const COVERS = ["NAV1.flag", "NAV1.ident", "NAV1.dme"];

const centredOn = (status: "on-air" | "silent", face: Face, covers: readonly string[]): Situation =>
  situationOf({
    at: onRadial(TXJ, 250, 18),
    courseDeg: 70,
    headingDeg: 70,
    face,
    stations: [HJL, { ...TXJ, status }, OXK],
    covers,
  });

function pictures(situation: Situation): string {
  const { covers } = situation.scene;
  const reading = situation.receivers[0]!;
  return [
    svgOf(
      <Panel situation={situation} widthPx={420} heightPx={420} theme={theme} idPrefix="p" covers={covers} />,
    ),
    svgOf(<ReceiverFace reading={reading} sizePx={240} theme={theme} idPrefix="f" covers={covers} />),
    chartSvg(situation, { view: fitView(situation, 900, 700) }),
    faceSentence(reading, covers),
    needleWords(reading, covers),
  ].join("\n");
}

/** Where two texts part, with a little of each. */
function difference(one: string, other: string): string {
  if (one === other) return "none";
  let at = 0;
  while (one[at] === other[at]) at++;
  return `at ${at}: ${one.slice(at - 60, at + 60)} | ${other.slice(at - 60, at + 60)}`;
}

describe("with the flag covered", () => {
  for (const face of ["cdi", "hsi"] as const)
    it(`a ${face} without a signal looks like a centred one, and the chart does not tell either`, () => {
      const [live, dead] = (["on-air", "silent"] as const).map((status) => centredOn(status, face, COVERS));
      expect(live!.receivers[0]!.needleSide).toBe("centre");
      expect(dead!.receivers[0]!.flag).toBe("OFF");
      expect(difference(pictures(dead!), pictures(live!))).toBe("none");
    });

  it("the same two are told apart in the open, by picture and by words", () => {
    const [live, dead] = (["on-air", "silent"] as const).map((status) => centredOn(status, "cdi", []));
    expect(difference(pictures(dead!), pictures(live!))).not.toBe("none");
    expect(needleWords(dead!.receivers[0]!)).toBe("parked");
    expect(needleWords(live!.receivers[0]!)).toBe("centred");
  });
});

it("a covered frequency keeps the station's name out of the signal, as a covered ident does", () => {
  const reading = centredOn("on-air", "cdi", []).receivers[0]!;
  expect(wavesSentence(reading)).toContain("TXJ");
  for (const cover of ["NAV1.ident", "NAV1.frequency"])
    expect(wavesSentence(reading, [cover])).not.toContain("TXJ");
});
