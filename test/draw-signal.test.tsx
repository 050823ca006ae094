/** The pictures of the signal, read back: where the beam points and when it flashes, how wide the shade is, where the spectrum's lines stand. */

import fc from "fast-check";
import type { ComponentChild } from "preact";
import { describe, expect, it } from "vitest";
import {
  beamDeg,
  CompositePicture,
  compositeSamples,
  compositeSentence,
  isFlash,
  LIGHTHOUSE_TURNS_S,
  Lighthouse,
  lighthouseNotes,
  lighthouseSentence,
  lighthouseTimes,
  noBearingSentence,
  pictureSignal,
  RoseAngle,
  roseSentence,
  SpectrumPicture,
  spectrumOf,
  spectrumSentence,
  THEMES,
  TwoWaves,
} from "../src/draw/index.ts";
import { textWidthPx } from "../src/draw/plain/text-width.ts";
import { stationDeg } from "../src/earth/index.ts";
import type { ReceiverReading } from "../src/panel/index.ts";
import { resolveScene } from "../src/scene/index.ts";
import { svgOf, wordsOf } from "./draw-faces-read.ts";
import { onRadial, readingOf, situationOf, TXJ } from "./isles.ts";
import { spread } from "./spread.ts";

const SIZE = { widthPx: 700, heightPx: 260, theme: THEMES.light, idPrefix: "s" };
const on = (radialDeg: number, courseDeg = 70): ReceiverReading =>
  readingOf({ at: onRadial(TXJ, radialDeg, 20), courseDeg });
const numberIn = (svg: string, name: string): number =>
  Number(new RegExp(`${name}="([\\d.]+)"`).exec(svg)?.[1]);
const signalOf = (reading: ReceiverReading) => pictureSignal(reading)!;

describe("the lighthouse picture", () => {
  const drawn = (
    reading: ReceiverReading,
    atS: number,
    turnS: number,
    covers: readonly string[] = [],
  ): string => svgOf(<Lighthouse {...SIZE} reading={reading} atS={atS} turnS={turnS} covers={covers} />);

  it.each([
    [0, /<text[^>]*>flash: the beam is at north/],
    [11, /<text[^>]*>since the flash; you are swept/],
  ])("keeps what stands beside its stopwatch on the sheet, %s s after the flash", (atS, note) => {
    // As large as it is on a table of 1440 by 900 that the signal fills.
    const size = { ...SIZE, widthPx: 622, heightPx: 275, typeScale: 1.6 };
    const svg = svgOf(<Lighthouse {...size} reading={on(240)} atS={atS} turnS={12} />);
    const [text = ""] = note.exec(svg) ?? [];
    const words = text.slice(text.indexOf(">") + 1);
    const right = numberIn(text, " x") + textWidthPx(words, numberIn(text, "font-size"), "words");
    expect(right).toBeLessThanOrEqual(size.widthPx);
    expect(numberIn(text, "font-size")).toBeGreaterThanOrEqual(12);
  });

  // Common practice as taught: no source.
  it.each([
    [60, 2],
    [90, 3],
    [180, 6],
  ])("sweeps the radial %s of a turn of 12 s after %s s", (radialDeg, afterS) => {
    const reading = on(radialDeg);
    expect(lighthouseTimes(reading, 12)!.measuredS).toBeCloseTo(afterS, 2);
    expect(numberIn(drawn(reading, afterS, 12), "data-beam")).toBeCloseTo(radialDeg, 6);
    expect(wordsOf(drawn(reading, 1, 12))).toContain(
      `swept you at ${afterS}.00 s: radial ${String(radialDeg).padStart(3, "0")}`,
    );
  });

  it("turns its beam evenly, and flashes as it passes north", () => {
    const reading = on(246);
    for (const turnS of LIGHTHOUSE_TURNS_S)
      for (let part = 0; part < 2; part += 0.05) {
        const svg = drawn(reading, part * turnS, turnS);
        expect(numberIn(svg, "data-beam")).toBeCloseTo((part % 1) * 360, 2);
        expect(svg).toContain(`rotate(${Math.round(beamDeg(part * turnS, turnS) * 1000) / 1000})`);
        expect(svg.includes("data-flash"), `${part}`).toBe(isFlash(part * turnS, turnS));
      }
    expect(isFlash(0, 12)).toBe(true);
    expect(isFlash(1, 12)).toBe(false);
    expect(isFlash(11.99, 12)).toBe(false);
  });

  it("finds needle and flag by the difference of two times", () => {
    fc.assert(
      fc.property(spread(0, 360), fc.integer({ min: 0, max: 359 }), (radialDeg, courseDeg) => {
        const reading = on(radialDeg, courseDeg);
        if (reading.flag === "OFF") return;
        const times = lighthouseTimes(reading, 12)!;
        expect(times.nearer).toBe(reading.flag);
        const lateDeg = (times.lateS / 12) * 360;
        expect(reading.flag === "FROM" ? -lateDeg : lateDeg).toBeCloseTo(reading.deviationDeg!, 6);
      }),
      { numRuns: 60 },
    );
  });

  it("says what it is not, and whose north it is", () => {
    const notes = lighthouseNotes(on(246), 12).join(" ");
    expect(notes).toContain("This is a picture");
    expect(notes).toContain("30 times a second");
    // A sixth of a thirtieth of a second.
    expect(notes).toContain("5.56 ms");
    expect(notes).toContain("not true north; at TXJ it points 9° west of true north");
  });
});

describe("the two waves", () => {
  it("are shaded from one peak to the other, by as much as the radial", () => {
    fc.assert(
      fc.property(spread(0, 360), (radialDeg) => {
        const svg = svgOf(<TwoWaves {...SIZE} reading={on(radialDeg)} widthPx={2400} />);
        const shade = /data-shade="radial" x="([\d.]+)" y="[\d.]+" width="([\d.]+)"/.exec(svg)!;
        const ends = /data-wave="reference" d="M([\d.]+) [^"]*L([\d.]+) [\d.]+"/.exec(svg)!;
        const turnPx = (Number(ends[2]) - Number(ends[1])) / 2.5;
        expect((Number(shade[2]) / turnPx) * 360).toBeCloseTo(radialDeg, 0);
        expect(Number(shade[1])).toBeCloseTo(Number(/data-peak="reference" x1="([\d.]+)"/.exec(svg)![1]), 2);
      }),
      { numRuns: 20 },
    );
  });
});

describe("the angle on the rose", () => {
  it("is as many degrees as the wave comes late, in picture and words", () => {
    const reading = on(246);
    const svg = svgOf(<RoseAngle {...SIZE} reading={reading} />);
    const spoke =
      /data-part="radial" data-angle="246".*?x1="([\d.]+)" y1="([\d.]+)" x2="([\d.]+)" y2="([\d.]+)"/s.exec(
        svg,
      )!;
    const [x1, y1, x2, y2] = spoke.slice(1).map(Number) as [number, number, number, number];
    expect(((Math.atan2(x2 - x1, y1 - y2) * 180) / Math.PI + 360) % 360).toBeCloseTo(246, 1);
    expect(roseSentence(reading)).toBe(
      "The variable wave lags the reference by 246 degrees, 22.8 milliseconds of a turn of 33.3: radial 246. The course line runs 070 and 250: the needle is 2 dots left, TO.",
    );
  });

  it("lights the parts that the argument speaks of", () => {
    const lit = (receiver: string) =>
      svgOf(<RoseAngle {...SIZE} reading={on(246)} lit={{ receiver, parts: ["radial", "needle"] }} />);
    expect(lit("NAV1").split("data-lit").length - 1).toBe(4);
    expect(lit("NAV2")).not.toContain("data-lit");
  });
});

describe("the spectrum", () => {
  it("has its lines where ICAO Annex 10 Vol I, 3.3.5 puts them", () => {
    const { binHz, amplitudes } = spectrumOf(signalOf(on(246)));
    const at = (hz: number): number => amplitudes[Math.round(hz / binHz)]!;
    expect(at(30)).toBeCloseTo(0.3, 3);
    expect(at(1020)).toBeCloseTo(0.1, 3);
    // J16(16) is 0.4473 over the cube root of 16 (Abramowitz and Stegun, 9.3.31); beyond ratio plus one lines fade (Carson).
    expect(at(9960 + 480)).toBeCloseTo(0.3 * 0.1775, 3);
    expect(at(9960 - 480)).toBeCloseTo(0.3 * 0.1775, 3);
    expect(at(9960 + 900)).toBeLessThan(0.001);
    expect(at(5000)).toBeLessThan(1e-6);
  });

  it("is drawn with its peaks over their numbers", () => {
    const reading = on(246);
    const signal = signalOf(reading);
    const svg = svgOf(
      <SpectrumPicture {...SIZE} reading={reading} signal={signal} spectrum={spectrumOf(signal)} />,
    );
    const peakHz = (fromHz: number): number => {
      const piece = new RegExp(
        `data-piece="${fromHz}" data-from-x="([\\d.]+)" data-to-x="([\\d.]+)" data-to-hz="(\\d+)".*?<path d="M([^"]+)"`,
        "s",
      ).exec(svg)!;
      const [fromX, toX, toHz] = piece.slice(1, 4).map(Number) as [number, number, number];
      const points = piece[4]!.split("L").map((point) => point.split(" ").map(Number) as [number, number]);
      const [x] = points.reduce((best, point) => (point[1] < best[1] ? point : best));
      return fromHz + ((x - fromX) / (toX - fromX)) * (toHz - fromHz);
    };
    expect(peakHz(0)).toBeCloseTo(30, 0);
    expect(peakHz(900)).toBeCloseTo(1020, 0);
    expect(Math.abs(peakHz(9240) - 9960)).toBeLessThanOrEqual(481);
    expect(wordsOf(svg)).toMatch(/9480/);
    expect(wordsOf(svg)).toMatch(/10440/);
  });
});

describe("the composite", () => {
  it("swells by 30 percent and is largest when the beam sweeps the aircraft", () => {
    const { audio, slow } = compositeSamples(signalOf(on(90)));
    const most = slow.reduce((best, value, index) => (value > slow[best]! ? index : best), 0) % 4080;
    expect((most / 4080) * 360).toBeGreaterThan(80);
    expect((most / 4080) * 360).toBeLessThan(100);
    expect(Math.max(...slow)).toBeCloseTo(1.3, 1);
    expect(Math.max(...audio)).toBeCloseTo(1.7, 1);
    expect(Math.min(...audio)).toBeCloseTo(0.3, 1);
  });

  it("names its three parts, and the magnified piece where there is room", () => {
    const reading = on(246);
    const signal = signalOf(reading);
    const of = (heightPx: number): string =>
      svgOf(
        <CompositePicture
          {...SIZE}
          heightPx={heightPx}
          reading={reading}
          signal={signal}
          samples={compositeSamples(signal)}
        />,
      );
    expect(wordsOf(of(260))).toMatch(/30 Hz AM.*9960 Hz FM.*1020 Hz/s);
    expect(of(260)).toContain("magnified");
    expect(of(120)).not.toContain("magnified");
    expect(compositeSentence(reading, signal)).toContain("TXJ");
  });

  it("carries the scene's echoes and noise", () => {
    const { scene } = situationOf({ at: onRadial(TXJ, 90, 20), courseDeg: 90 });
    const spoilt = resolveScene({
      ...scene,
      signal: {
        kind: "doppler",
        noiseDb: 20,
        propeller: null,
        reflectors: [{ ident: "TXJ", position: onRadial(TXJ, 160, 2), amplitude: 0.3 }],
      },
    }).receivers[0]!;
    const signal = signalOf(spoilt);
    expect(signal.echoes).toHaveLength(1);
    expect(compositeSentence(spoilt, signal)).toMatch(/Doppler.*an echo, noise/);
    expect(compositeSamples(signal).audio).not.toEqual(compositeSamples(signalOf(on(90))).audio);
    expect(lighthouseNotes(spoilt, 12).join(" ")).toContain("A Doppler station has no beam that turns");
  });
});

describe("under covers", () => {
  const everything = (reading: ReceiverReading, covers: readonly string[]): string => {
    const signal = pictureSignal(reading, covers)!;
    const common = { ...SIZE, reading, covers };
    const pictures: readonly ComponentChild[] = [
      <RoseAngle {...common} />,
      <Lighthouse {...common} atS={1} turnS={12} />,
      <CompositePicture {...common} signal={signal} samples={compositeSamples(signal)} />,
      <SpectrumPicture {...common} signal={signal} spectrum={spectrumOf(signal)} />,
    ];
    return [
      ...pictures.map(svgOf),
      roseSentence(reading, covers),
      lighthouseSentence(reading, 12, covers),
      ...lighthouseNotes(reading, 12, covers),
      spectrumSentence(reading, signal, covers),
    ].join("\n");
  };

  it.each(["NAV1.course", "NAV1.needle", "NAV1.flag"])("%s leaves course, needle and flag out", (cover) => {
    expect(everything(on(246), [])).toMatch(/\b070\b/);
    const told = everything(on(246), [cover]);
    expect(told).not.toMatch(/\b070\b|\b250\b|dots|\bTO\b|FROM|data-part="(course|needle)"/);
    // And two courses then look alike.
    expect(everything(on(246, 200), [cover])).toBe(told);
  });

  it.each(["NAV1.ident", "NAV1.frequency"])("%s leaves station and declination out", (cover) => {
    expect(everything(on(246), [])).toMatch(/TXJ.*9° west/s);
    expect(everything(on(246), [cover])).not.toMatch(/TXJ|9° west/);
  });

  it("tells why no bearing arrives only in the open", () => {
    const reading = readingOf({ at: onRadial(TXJ, 246, 20), tune: 112 });
    expect(noBearingSentence(reading)).toMatch(/No station is on this frequency/);
    expect(noBearingSentence(reading, ["NAV1.flag"])).toBe(
      "NAV1 measures no bearing: there are no two waves to compare.",
    );
    expect(pictureSignal(reading)).toBeNull();
  });

  it("flagged by its monitors it says what they found, and shows what arrives", () => {
    const { scene } = situationOf({ at: onRadial(TXJ, 90, 20) });
    const drowned = resolveScene({
      ...scene,
      signal: { kind: "conventional", noiseDb: 95, propeller: null, reflectors: [] },
    }).receivers[0]!;
    expect(drowned.measured?.flagCause).toBe("noisy");
    expect(noBearingSentence(drowned)).toMatch(/monitors found that it is drowned in noise/);
    expect(pictureSignal(drowned)).not.toBeNull();
    expect(pictureSignal(drowned, ["NAV1.flag"])).toBeNull();
  });
});

it("a beam has a place for every time", () => {
  expect(beamDeg(12, 12)).toBe(0);
  expect(beamDeg(14, 12)).toBe(60);
  expect(lighthouseTimes(on(60), 6)!.measuredS).toBeCloseTo(1, 3);
  expect(stationDeg(60)).toBe(60);
});
