import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { layoutFigure } from "../src/draw/figure/layout-figure.ts";
import {
  Figure,
  type FigureProps,
  figureSvg,
  fontFaceCss,
  lagMs,
  Reasons,
  THEMES,
  TwoWaves,
} from "../src/draw/index.ts";
import { lineWidthPx } from "../src/draw/plain/text-line.tsx";
import { fontsHave, textWidthPx } from "../src/draw/plain/text-width.ts";
import { chainOf } from "../src/draw/reasons/index.ts";
import { layoutReasons } from "../src/draw/reasons/reasons-layout.ts";
import { reasonsFor } from "../src/reason/index.ts";
import { resolveScene, TRAINING_CAUTION, VIEWS, type View } from "../src/scene/index.ts";
import { badNumbers, idsOf, svgOf, wordsOf } from "./draw-faces-read.ts";
import { HJL, onRadial, readingOf, situationOf, TXJ } from "./isles.ts";
import { sceneArbitrary } from "./scene-arbitraries.ts";

const theme = THEMES.light;

const single = situationOf({ at: onRadial(TXJ, 246, 18.4), courseDeg: 61, headingDeg: 87, windKt: 12 });
/** Two receivers and a question. */
const situation = resolveScene({
  ...single.scene,
  title: "Which way to the course?",
  ask: "Is the course to your left or to your right?",
  receivers: [
    ...single.scene.receivers,
    { ...single.scene.receivers[0]!, name: "NAV2", frequencyMhz: HJL.frequencyMhz },
  ],
});
const reasons = reasonsFor(situation);

const propsOf = (more: Partial<FigureProps> = {}): FigureProps => ({
  situation,
  reasons,
  views: VIEWS,
  widthPx: 1920,
  heightPx: 1080,
  theme,
  idPrefix: "f",
  ...more,
});

const SIZES = [
  [1920, 1080],
  [1600, 1200],
  [1280, 720],
  [1080, 1920],
  [800, 600],
] as const;

const viewSets: View[][] = [[], ["chart"], ["signal"], ["panel"], ["reasons"]].flatMap((set) => [
  set as View[],
  ...VIEWS.filter((view) => !set.includes(view as never)).map((view) => [...set, view] as View[]),
]);

describe("the layout of a figure", () => {
  it("puts every view on the page once, apart from the others and from the words", () => {
    for (const [widthPx, heightPx] of SIZES)
      for (const views of [...viewSets, VIEWS, ["chart", "panel", "reasons"] as const]) {
        const layout = layoutFigure(propsOf({ widthPx, heightPx, views }));
        expect(layout.views.map((placed) => placed.view).sort()).toEqual([...views].sort());
        const title = layout.words.filter((line) => line.role !== "caution");
        const caution = layout.words.filter((line) => line.role === "caution");
        const lowestTitle = Math.max(...title.map((line) => line.y));
        const highestCaution = Math.min(...caution.map((line) => line.y - line.sizePx));
        for (const { box } of layout.views) {
          expect(box.x).toBeGreaterThan(0);
          expect(box.x + box.widthPx).toBeLessThan(widthPx);
          expect(box.y).toBeGreaterThan(lowestTitle);
          expect(box.y + box.heightPx).toBeLessThan(highestCaution);
        }
        layout.views.forEach((one, index) => {
          for (const other of layout.views.slice(index + 1)) {
            const beside =
              one.box.x + one.box.widthPx <= other.box.x || other.box.x + other.box.widthPx <= one.box.x;
            const above =
              one.box.y + one.box.heightPx <= other.box.y || other.box.y + other.box.heightPx <= one.box.y;
            expect(beside || above).toBe(true);
          }
        });
      }
  });

  it("keeps every line of words on the page", () => {
    for (const [widthPx, heightPx] of SIZES)
      for (const line of layoutFigure(propsOf({ widthPx, heightPx })).words) {
        const wide = lineWidthPx(line.text, line.sizePx, line.role === "title" ? "words-bold" : "words");
        expect(line.anchor === "end" ? line.x - wide : line.x).toBeGreaterThan(0);
        expect(line.anchor === "end" ? line.x : line.x + wide).toBeLessThan(widthPx);
        expect(line.y).toBeLessThan(heightPx);
        expect(line.sizePx).toBeGreaterThanOrEqual(12);
      }
  });

  it("gives the chart more room than panel or signal, and the argument type of 16 px and more, on a slide", () => {
    for (const [widthPx, heightPx] of SIZES.slice(0, 2)) {
      const { views, argued, scale } = layoutFigure(propsOf({ widthPx, heightPx }));
      const boxes = new Map(views.map(({ view, box }) => [view, box]));
      const area = (view: View) => boxes.get(view)!.widthPx * boxes.get(view)!.heightPx;
      expect(area("chart")).toBeGreaterThan(area("panel"));
      expect(area("chart")).toBeGreaterThan(area("signal"));
      const chain = chainOf(
        reasons.filter((step) => argued.includes(step.receiver)),
        [],
        true,
      );
      const drawn = layoutReasons(chain, { ...boxes.get("reasons")!, typeScale: scale, noteBelow: true });
      expect(drawn.leftOut).toBe(0);
      expect(drawn.textPx).toBeGreaterThanOrEqual(16);
    }
  });

  it("argues for everyone where there is room, for the receiver asked for where there is not", () => {
    expect(layoutFigure(propsOf({ views: ["reasons"] })).argued).toEqual(["NAV1", "NAV2"]);
    expect(layoutFigure(propsOf()).argued).toEqual(["NAV1"]);
    expect(layoutFigure(propsOf({ receiver: "NAV2" })).argued).toEqual(["NAV2"]);
  });
});

describe("a figure", () => {
  it("says title, question and caution, and describes each view in words", () => {
    const svg = svgOf(<Figure {...propsOf()} />);
    const words = wordsOf(svg);
    for (const said of [situation.scene.title, situation.scene.ask, TRAINING_CAUTION])
      expect(words).toContain(said);
    const desc = /<desc id="f-desc">([^<]*)/.exec(svg)?.[1] ?? "";
    for (const view of ["Chart:", "Panel:", "Signal:", "Reasons:"]) expect(desc).toContain(view);
  });

  it("stands alone as a file: header, size, fonts, and nothing from outside", () => {
    const fontCss = fontFaceCss([{ family: "B612", weight: 400, woff2Base64: "AAAA" }]);
    const svg = figureSvg(propsOf({ fontCss }));
    expect(svg).toMatch(/^<\?xml version="1.0" encoding="UTF-8"\?>\n<svg /);
    expect(svg).toContain('viewBox="0 0 1920 1080"');
    expect(svg).toContain(
      "@font-face{font-family:'B612';font-weight:400;src:url(data:font/woff2;base64,AAAA)",
    );
    expect(svg.replaceAll(/xmlns="[^"]*"/g, "")).not.toMatch(/https?:|href=/);
    expect(new Set(idsOf(svg)).size).toBe(idsOf(svg).length);
    expect(() => figureSvg(propsOf({ fontCss: "</style>" }))).toThrow(RangeError);
    expect(() => fontFaceCss([{ family: "B612", weight: 400, woff2Base64: "')" }])).toThrow(RangeError);
  });

  it("leaves the ground empty when asked to", () => {
    const desk = `<rect width="1920" height="1080" fill="${theme.desk}"`;
    expect(figureSvg(propsOf())).toContain(desk);
    expect(figureSvg(propsOf({ transparent: true }))).not.toContain(desk);
  });

  it("leaves nothing of a covered view or part in the file", () => {
    const shut = (covers: readonly string[]) => figureSvg(propsOf({ covers }));
    expect(wordsOf(shut([]))).toMatch(/\bdots?\b/);
    expect(wordsOf(shut(["NAV1.needle", "NAV2.needle"]))).not.toMatch(/\bdots?\b|\bon your (left|right)/);
    expect(wordsOf(shut([]))).toMatch(/\b087\b/);
    expect(wordsOf(shut(["heading"]))).not.toMatch(/\b087\b/);
    expect(wordsOf(shut([]))).toMatch(/TXJ/);
    // Two stations are tuned; the covered one's name must not be told by panel, signal or argument.
    const noChart = figureSvg(propsOf({ covers: ["NAV1.ident"], views: ["panel", "signal", "reasons"] }));
    expect(wordsOf(noChart)).not.toMatch(/TXJ|Tamsel/);
    const noSignal = shut(["signal"]);
    expect(noSignal).not.toContain("data-wave");
    expect(wordsOf(noSignal)).toContain("covered: signal");
    const nothing = shut(VIEWS);
    expect(nothing).not.toMatch(/data-part|data-reason|data-wave/);
    expect(wordsOf(nothing).match(/covered: \w+/g)).toHaveLength(4);
  });

  it("is drawn well-formed whatever the scene holds", () => {
    fc.assert(
      fc.property(
        sceneArbitrary,
        fc.constantFrom(...SIZES),
        fc.subarray([...VIEWS], { minLength: 1 }),
        (scene, [widthPx, heightPx], views) => {
          const resolved = resolveScene(scene);
          // No height lifts a station a quarter of the earth away over the horizon, and no argument says one.
          fc.pre(resolved.receivers.every(({ geometry }) => (geometry?.distanceNm ?? 0) < 4000));
          const svg = figureSvg(
            propsOf({ situation: resolved, reasons: reasonsFor(resolved), views, widthPx, heightPx }),
          );
          expect(badNumbers(svg.replace(/>[^<]*</g, "><"))).toEqual([]);
          expect(new Set(idsOf(svg)).size).toBe(idsOf(svg).length);
          // XML has no place for control characters and halves of characters.
          expect([...svg].filter((sign) => /[\p{Cc}\p{Cs}]/u.test(sign) && !"\n\t\r".includes(sign))).toEqual(
            [],
          );
        },
      ),
      { numRuns: 40 },
    );
  });
});

describe("the two waves", () => {
  const waves = (radialDeg: number) =>
    svgOf(
      <TwoWaves
        reading={readingOf({ at: onRadial(TXJ, radialDeg, 18) })}
        widthPx={900}
        heightPx={200}
        theme={theme}
        idPrefix="w"
      />,
    );
  const pointsOf = (svg: string, wave: string) =>
    [
      ...(new RegExp(`data-wave="${wave}"[^>]* d="([^"]+)"`).exec(svg)?.[1] ?? "").matchAll(
        /[ML]([\d.]+) ([\d.]+)/g,
      ),
    ].map(([, x, y]) => ({ x: Number(x), y: Number(y) }));
  const peakMark = (svg: string, wave: string) =>
    Number(new RegExp(`data-peak="${wave}" x1="([\\d.]+)"`).exec(svg)?.[1]);

  it("are apart by the radial: read back from the curves by their phase", () => {
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 3590 }), (tenths) => {
        const radialDeg = tenths / 10;
        const svg = waves(radialDeg);
        const [reference, variable] = [pointsOf(svg, "reference"), pointsOf(svg, "variable")];
        const middle = (Math.max(...reference.map((p) => p.y)) + Math.min(...reference.map((p) => p.y))) / 2;
        // 2.5 turns are drawn; the phase of each curve over its first two turns, by its sine and cosine parts.
        const perTurn = (reference.length - 1) / 2.5;
        const phaseDeg = (points: { y: number }[]) => {
          let [sine, cosine] = [0, 0];
          for (let i = 0; i < 2 * perTurn; i++) {
            const angle = (2 * Math.PI * i) / perTurn;
            sine += (middle - points[i]!.y) * Math.sin(angle);
            cosine += (middle - points[i]!.y) * Math.cos(angle);
          }
          return (Math.atan2(sine, cosine) * 180) / Math.PI;
        };
        const lag = (((phaseDeg(variable) - phaseDeg(reference)) % 360) + 360) % 360;
        expect(lag).toBeCloseTo(radialDeg, 0);
        const turnPx = (reference.at(-1)!.x - reference[0]!.x) / 2.5;
        const marked = (peakMark(svg, "variable") - peakMark(svg, "reference")) / turnPx;
        expect(marked * 360).toBeCloseTo(radialDeg, 0);
      }),
      { numRuns: 40 },
    );
  });

  it("are 22.8 ms of 33.3 ms apart on radial 246", () => {
    expect(lagMs(246)).toBeCloseTo(22.78, 2);
    expect(wordsOf(waves(246))).toContain("246° = 22.8 ms");
  });

  it("are said to be missing when no bearing is measured", () => {
    const svg = svgOf(<TwoWaves reading={null} widthPx={600} heightPx={160} theme={theme} idPrefix="w" />);
    expect(svg).not.toContain("data-wave");
    expect(wordsOf(svg)).toContain("No receiver measures a bearing");
  });
});

describe("the drawn argument", () => {
  const chain = chainOf(reasons, [], true);

  it("shows every step or says how many are left out, never below 12 px, every line inside its column", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 220, max: 1500 }),
        fc.integer({ min: 150, max: 1200 }),
        fc.constantFrom(1, 1.8),
        (widthPx, heightPx, typeScale) => {
          const layout = layoutReasons(chain, { widthPx, heightPx, typeScale, noteBelow: false });
          const steps = layout.items.filter(({ item }) => item.kind === "step");
          expect(steps.length + layout.leftOut).toBe(reasons.length);
          expect(layout.textPx).toBeGreaterThanOrEqual(12);
          for (const placed of layout.items) {
            expect(placed.y + placed.heightPx).toBeLessThanOrEqual(heightPx + 0.001);
            expect(placed.x + layout.columnPx).toBeLessThanOrEqual(widthPx + 0.001);
            for (const line of placed.lines)
              expect(textWidthPx(line, layout.textPx, "words")).toBeLessThanOrEqual(layout.columnPx);
          }
          const svg = svgOf(
            <Reasons
              reasons={reasons}
              widthPx={widthPx}
              heightPx={heightPx}
              typeScale={typeScale}
              theme={theme}
              idPrefix="r"
            />,
          );
          expect(svg.match(/data-reason=/g) ?? []).toHaveLength(steps.length);
          if (layout.leftOut > 0)
            expect(wordsOf(svg)).toMatch(new RegExp(`(^|\\D)${layout.leftOut}( more|\\n)`));
        },
      ),
      { numRuns: 60 },
    );
  });

  it("takes the height it needs when none is given, at full size", () => {
    const layout = layoutReasons(chain, {
      widthPx: 420,
      heightPx: undefined,
      typeScale: 1,
      noteBelow: false,
    });
    expect(layout.leftOut).toBe(0);
    expect(layout.textPx).toBe(14);
    const last = layout.items.at(-1)!;
    expect(layout.heightPx).toBeGreaterThan(last.y + last.heightPx);
  });

  it("lights one step", () => {
    const lit = svgOf(
      <Reasons reasons={reasons} widthPx={500} theme={theme} idPrefix="r" litNumber={3} litReceiver="NAV2" />,
    );
    expect(lit.match(/data-lit/g)).toHaveLength(1);
    expect(lit).toMatch(/data-reason="3" data-receiver="NAV2"[^>]*>(?:(?!data-reason).)*data-lit/);
  });

  it("is written in signs that the fonts have", () => {
    for (const reason of reasons) expect(fontsHave(`${reason.title} ${reason.sentence}`)).toBe(true);
  });
});
