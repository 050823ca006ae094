/** What leaves the bench and what comes into it, in the real Chromium: files, links, pictures, print, recent work. */

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import { Resvg } from "@resvg/resvg-js";
import axe from "axe-core";
import type { Locator, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { type EmbeddedFont, figureSvg, fontFaceCss, THEMES } from "../../src/draw/index.ts";
import { stationDeg } from "../../src/earth/index.ts";
import { reasonsFor } from "../../src/reason/index.ts";
import { resolveScene, type Scene, TRAINING_CAUTION, VIEWS } from "../../src/scene/index.ts";
import { act } from "../../src/web/state/actions.ts";
import { readPdf } from "../out-pdf-read.ts";
import { tableText } from "../scene-files.ts";
import { benchUnderTest, type Visit } from "./bench-under-test.ts";
import { LAPTOP, PHONE, pageFolder, serveBench } from "./browser.ts";
import { demoScene, facesOf, facesOn } from "./demo-in-node.ts";

const FIRST = demoScene("01-which-way-to-the-course");
const POLL = { timeout: 15_000 };

const bench = benchUnderTest();

const onBench = (use: (page: Page) => Promise<void>, visit: Visit = {}): Promise<void> =>
  bench.visit(use, {
    // From the first on file choosers are handed to the test: asked for late, the first could be turned away before.
    early: async (page) => void page.on("filechooser", () => {}),
    ...visit,
  });

/** A browser without file pickers of its own: it picks by an input and saves as a download. */
const withoutPickers = (): void => {
  for (const name of ["showOpenFilePicker", "showSaveFilePicker"]) Reflect.deleteProperty(window, name);
};

const menu = (page: Page): Locator => page.getByRole("dialog", { name: "Share, save, print" });
const openMenu = async (page: Page): Promise<Locator> => {
  const tools = page.getByRole("button", { name: "Tools", exact: true });
  if (await tools.isVisible()) await tools.click();
  await page.getByRole("button", { name: "Share", exact: true }).click();
  return menu(page);
};
const said = (page: Page): Locator => page.locator(".said span").filter({ visible: true });
const course = (page: Page, receiver: string): Locator =>
  page.getByRole("spinbutton", { name: `${receiver} course`, exact: true });

async function downloaded(page: Page, press: () => Promise<void>): Promise<{ name: string; bytes: Buffer }> {
  const [download] = await Promise.all([page.waitForEvent("download"), press()]);
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}

const require = createRequire(import.meta.url);
const fontFile = (name: string): string => require.resolve(`@fontsource/${name}`);
const FONTS = [
  ["B612", 400, "b612/files/b612-latin-400-normal"],
  ["B612", 700, "b612/files/b612-latin-700-normal"],
  ["B612 Mono", 400, "b612-mono/files/b612-mono-latin-400-normal"],
  ["B612 Mono", 700, "b612-mono/files/b612-mono-latin-700-normal"],
] as const;

/** What the command line's `figure` draws for the same views, size and theme. */
function figureInNode(scene: Scene, more: Partial<Parameters<typeof figureSvg>[0]> = {}): string {
  const situation = resolveScene(scene);
  const fonts = FONTS.map(
    ([family, weight, file]): EmbeddedFont => ({
      family,
      weight,
      woff2Base64: readFileSync(fontFile(`${file}.woff2`)).toString("base64"),
    }),
  );
  return figureSvg({
    situation,
    reasons: reasonsFor(situation),
    views: VIEWS,
    widthPx: 1920,
    heightPx: 1080,
    theme: THEMES.light,
    idPrefix: "figure",
    fontCss: fontFaceCss(fonts),
    receiver: "NAV1",
    ...more,
  });
}

interface Seen {
  readonly width: number;
  readonly height: number;
  /** Opacity of the first pixel, 0 to 255. */
  readonly corner: number;
  /** How far the colours lie from those of another picture of this size, the mean of all, 0 to 255; NaN without one. */
  readonly apart: number;
}

/** A PNG as the browser's own decoder sees it. */
const seen = (page: Page, png: Uint8Array, other?: Uint8Array): Promise<Seen> =>
  page.evaluate(
    async (pictures) => {
      const decoded = await Promise.all(
        pictures.map(async (base64) => {
          const bytes = Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));
          const { width, height, ...bitmap } = await createImageBitmap(
            new Blob([bytes], { type: "image/png" }),
          ).then((made) => ({ width: made.width, height: made.height, made }));
          const context = new OffscreenCanvas(width, height).getContext("2d");
          context?.drawImage(bitmap.made, 0, 0);
          return {
            width,
            height,
            data: context?.getImageData(0, 0, width, height).data ?? new Uint8ClampedArray(),
          };
        }),
      );
      const [one, two] = decoded;
      if (one === undefined) throw new Error("no picture was given");
      const sum = one.data.reduce(
        (total, value, index) => total + Math.abs(value - (two?.data[index] ?? Number.NaN)),
        0,
      );
      return {
        width: one.width,
        height: one.height,
        corner: one.data[3] ?? -1,
        apart: sum / one.data.length,
      };
    },
    [png, ...(other === undefined ? [] : [other])].map((each) => Buffer.from(each).toString("base64")),
  );

describe("a picture", () => {
  it("wears the field and the trail of the chart as it is zoomed, as SVG, PDF and in print; and the field stays on a reload", () =>
    onBench(
      async (page) => {
        await page.getByRole("button", { name: /^Field/ }).click();
        await page.getByRole("radio", { name: "TO and FROM" }).check();
        await page.locator('.needle-field[data-ready="true"]').waitFor();
        await page.keyboard.press("Escape");
        await page.getByRole("button", { name: "Play", exact: true }).click();
        await page.locator('.chart-ground [data-part="trail"]').waitFor({ state: "attached" });
        await page.waitForTimeout(1500);
        await page.getByRole("button", { name: "Pause", exact: true }).click();
        await page.locator(".chart-ground").focus();
        await page.keyboard.press("+");
        const save = (kind: string) =>
          downloaded(page, () => menu(page).getByRole("button", { name: kind, exact: true }).click());
        await openMenu(page);
        const svg = (await save("SVG")).bytes.toString("utf8");
        expect(svg.includes('<g data-part="trail">')).toBe(true);
        expect(/<image data-part="field" href="data:image\/png;base64,/.test(svg)).toBe(true);
        const scaleOf = (text: string) => /data-scale-nm="([\d.]+)"/.exec(text)?.[1];
        expect(scaleOf(svg)).toBe(scaleOf(await page.locator(".chart-ground").innerHTML()));
        await expect.poll(() => said(page).textContent(), POLL).toContain("saved");
        const pdf = (await save("PDF")).bytes;
        expect(readPdf(pdf).pages).toBe(1);
        expect(pdf.toString("latin1")).toMatch(/\/BM\s*\/Multiply/);
        await page.keyboard.press("Escape");
        await page.keyboard.press("Control+p");
        await expect
          .poll(() => page.evaluate(() => document.documentElement.dataset.printed), POLL)
          .toBe("yes");
        const sheet = page.locator(".print-sheet > svg");
        expect(await sheet.locator('[data-part="trail"]').count()).toBe(1);
        const blend = await sheet
          .locator('image[data-part="field"]')
          .evaluate((image) => getComputedStyle(image).mixBlendMode);
        expect(blend).toBe("multiply");
        await page.reload();
        await page.locator('.needle-field[data-field="to-from"][data-ready="true"]').waitFor();
      },
      {
        before: () => {
          window.print = () => {
            dispatchEvent(new Event("beforeprint"));
            document.documentElement.dataset.printed = "yes";
          };
        },
      },
    ));

  it.each<["light" | "dark"]>([["light"], ["dark"]])(
    "as SVG is that of figure, letter for letter (%s)",
    (theme) =>
      onBench(
        async (page) => {
          await course(page, "NAV1").fill("075");
          await openMenu(page);
          const { name, bytes } = await downloaded(page, () =>
            menu(page).getByRole("button", { name: "SVG", exact: true }).click(),
          );
          const turned = act(FIRST, { kind: "set-course", receiver: "NAV1", course: stationDeg(75) });
          expect(name).toBe("01-which-way-to-the-course.svg");
          const drawn = figureInNode(turned, { theme: THEMES[theme] });
          expect(bytes.toString("utf8") === drawn).toBe(true);
          await expect
            .poll(() => said(page).textContent(), POLL)
            .toBe("01-which-way-to-the-course.svg saved.");
        },
        { colorScheme: theme },
      ),
  );

  it("hides what the scene covers", () =>
    onBench(
      async (page) => {
        await openMenu(page);
        const { bytes } = await downloaded(page, () =>
          menu(page).getByRole("button", { name: "SVG", exact: true }).click(),
        );
        const svg = bytes.toString("utf8");
        expect(svg === figureInNode(demoScene("22-two-lines-one-mailboat"))).toBe(true);
        expect(svg).toContain("covered: aircraft");
      },
      { path: "#scene=22" },
    ));

  it("as PNG has the size chosen and the letters of its own fonts", () =>
    onBench(
      async (page) => {
        const dialog = await openMenu(page);
        const png = async () =>
          (await downloaded(page, () => dialog.getByRole("button", { name: "PNG" }).click())).bytes;
        const choose = (size: string) =>
          dialog.getByRole("combobox", { name: "Size of the picture" }).selectOption(size);
        // A window this low has no room for the signal.
        const views = VIEWS.filter((view) => view !== "signal");
        const drawn = rasterised(figureInNode(FIRST, { views, fontCss: undefined }));
        const wide = await seen(page, await png(), drawn);
        expect(wide).toMatchObject({ width: 1920, height: 1080, corner: 255 });
        // Two rasterisers differ at edges; with another font every letter would.
        expect(wide.apart).toBeLessThan(2.5);
        await choose("slide");
        await dialog.getByRole("checkbox", { name: "Empty ground" }).check();
        expect(await seen(page, await png())).toMatchObject({ width: 1600, height: 1200, corner: 0 });
        await choose("screen");
        expect(await seen(page, await png())).toMatchObject(LAPTOP);
      },
      { viewport: LAPTOP },
    ));

  it("as PDF has one page of its size, its words as letters in our fonts, and its description", () =>
    onBench(async (page) => {
      await openMenu(page);
      const { name, bytes } = await downloaded(page, () =>
        menu(page).getByRole("button", { name: "PDF", exact: true }).click(),
      );
      expect(name).toBe("01-which-way-to-the-course.pdf");
      const pdf = readPdf(bytes);
      expect([pdf.pages, pdf.widthPt, pdf.heightPt]).toEqual([1, 1440, 810]);
      expect(new Set(pdf.fonts)).toEqual(
        new Set(["B612-Regular", "B612-Bold", "B612Mono-Regular", "B612Mono-Bold"]),
      );
      const { texts, description } = await lettersOn(page, figureInNode(FIRST, { fontCss: undefined }));
      expect(texts.map(({ text }) => text)).toContain(FIRST.title);
      expect(texts.map(({ text }) => text)).toContain(TRAINING_CAUTION);
      expect(pdf.letters.map(({ text }) => text).join("")).toBe(texts.map(({ text }) => text).join(""));
      // Each run of letters begins where the browser begins it, within half a pixel.
      const runs = [...pdf.letters];
      for (const { text, starts } of texts)
        for (let done = 0; done < text.length; ) {
          const run = runs.shift()!;
          const start = starts[done]!;
          expect(
            Math.hypot(run.x / 0.75 - start.x, run.y / 0.75 - start.y),
            `${text} at ${done}`,
          ).toBeLessThan(0.5);
          done += run.text.length;
        }
      expect(runs).toEqual([]);
      expect(pdf.alt).toBe(description);
    }));

  it.each(["12", "22", "24", "25"])("of scene %s goes onto a page too", (number) =>
    onBench(
      async (page) => {
        await openMenu(page);
        const { bytes } = await downloaded(page, () =>
          menu(page).getByRole("button", { name: "PDF", exact: true }).click(),
        );
        expect(readPdf(bytes).pages).toBe(1);
      },
      { path: `#scene=${number}`, colorScheme: "dark" },
    ),
  );

  it("is copied to the clipboard", () =>
    onBench(
      async (page) => {
        const dialog = await openMenu(page);
        await dialog.getByRole("button", { name: "Copy picture" }).click();
        await expect.poll(() => said(page).textContent(), POLL).toBe("Picture copied.");
        const size = await page.evaluate(async () => {
          const [item] = await navigator.clipboard.read();
          const bitmap = await createImageBitmap(await item!.getType("image/png"));
          return [bitmap.width, bitmap.height];
        });
        expect(size).toEqual([1920, 1080]);
      },
      { permissions: ["clipboard-read", "clipboard-write"] },
    ));
});

interface TextOnPage {
  readonly text: string;
  /** Where each of its characters begins, px from the picture's upper left corner. */
  readonly starts: readonly { readonly x: number; readonly y: number }[];
}

/** Every text of a picture as the browser sets it, in the page's own fonts. */
const lettersOn = (page: Page, svg: string): Promise<{ texts: TextOnPage[]; description: string }> =>
  page.evaluate(async (source) => {
    const picture = new DOMParser().parseFromString(source, "image/svg+xml").documentElement;
    const holder = document.body.appendChild(document.createElement("div"));
    const root = holder.appendChild(document.importNode(picture, true)) as unknown as SVGSVGElement;
    await document.fonts.ready;
    const corner = root.getBoundingClientRect();
    const texts = [...root.querySelectorAll("text")].map((element) => {
      const matrix = element.getScreenCTM() ?? new DOMMatrix();
      const text = element.textContent ?? "";
      const starts = Array.from({ length: element.getNumberOfChars() }, (_, index) => {
        const at = element.getStartPositionOfChar(index).matrixTransform(matrix);
        return { x: at.x - corner.x, y: at.y - corner.y };
      });
      return { text, starts };
    });
    holder.remove();
    return { texts, description: picture.querySelector("desc")?.textContent ?? "" };
  }, svg);

function rasterised(svg: string): Uint8Array {
  const fontFiles = FONTS.map(([, , file]) =>
    fileURLToPath(new URL(`../../dist/fonts/${fontName(file)}.ttf`, import.meta.url)),
  );
  return new Resvg(svg, { font: { loadSystemFonts: false, fontFiles, defaultFontFamily: "B612" } })
    .render()
    .asPng();
}

const fontName = (file: string): string =>
  `${file.startsWith("b612-mono") ? "B612Mono" : "B612"}-${file.includes("700") ? "Bold" : "Regular"}`;

describe("the link", () => {
  it("is copied with the whole scene in it, and opens it elsewhere", () =>
    onBench(
      async (page) => {
        await course(page, "NAV1").fill("075");
        const dialog = await openMenu(page);
        await dialog.getByRole("button", { name: "Copy link" }).click();
        await expect.poll(() => said(page).textContent(), POLL).toMatch(/^Link copied/);
        const link = await page.evaluate(() => navigator.clipboard.readText());
        expect(link).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/#s1\./);
        await page.goto("about:blank");
        await page.goto(link);
        const turned = act(FIRST, { kind: "set-course", receiver: "NAV1", course: stationDeg(75) });
        await expect.poll(() => facesOn(page), POLL).toEqual(facesOf(turned));
      },
      { permissions: ["clipboard-read", "clipboard-write"] },
    ));
});

const STATIONS = `stations: 1
list:
  - ident: TXJ
    name: Tamsel
    kind: VOR-DME
    frequency: 115.60
    at: 10°09.0′S 002°19.0′E
    elevation: 22
    declination: 9W
`;
const MINE = `# My own scene, for Tuesday.
scene: 1
title: Mine
date: 2026-07-01
stations: mine.stations.yaml   # only one
aircraft:
  at: TXJ 246/18

  heading: 090   # east
  altitude: 3500
receivers:
  - { name: NAV1, tune: TXJ, course: 070 }   # the club's
`;
const fileOf = (name: string, text: string) => ({
  name,
  mimeType: "application/yaml",
  buffer: Buffer.from(text),
});

/** Opens files by the keys, through the browser's file chooser. */
async function pick(page: Page, ...files: ReturnType<typeof fileOf>[]): Promise<void> {
  const [chooser] = await Promise.all([page.waitForEvent("filechooser"), page.keyboard.press("Control+o")]);
  await chooser.setFiles(files);
}

/** Drops files on the page as a hand does: in, over, down. */
async function drop(page: Page, ...files: readonly [name: string, text: string][]): Promise<void> {
  const transfer = await page.evaluateHandle((given) => {
    const made = new DataTransfer();
    for (const [name, text] of given) made.items.add(new File([text], name));
    return made;
  }, files);
  await page.dispatchEvent("body", "dragenter", { dataTransfer: transfer });
  await page.dispatchEvent("body", "dragover", { dataTransfer: transfer });
  expect(await page.getByText("Drop a scene file here").isVisible()).toBe(true);
  await page.dispatchEvent("body", "drop", { dataTransfer: transfer });
}

describe("a scene file", () => {
  it("is opened, edited and saved with its comments, its order and its blank lines", () =>
    onBench(
      async (page) => {
        await pick(page, fileOf("mine.stations.yaml", STATIONS), fileOf("mine.yaml", MINE));
        await expect.poll(() => page.locator("h1").textContent(), POLL).toBe("Mine");
        await course(page, "NAV1").fill("066");
        const { name, bytes } = await downloaded(page, () => page.keyboard.press("Control+s"));
        expect(name).toBe("mine.yaml");
        expect(bytes.toString("utf8")).toBe(MINE.replace("course: 070", "course: 066"));
        await expect
          .poll(() => said(page).textContent(), POLL)
          .toBe("mine.yaml saved. Keep it with mine.stations.yaml, which it draws on.");
      },
      { before: withoutPickers },
    ));

  it("that the bench was started with is saved into its own text", async () => {
    const texts: Readonly<Record<string, string>> = { "mine.yaml": MINE, "mine.stations.yaml": STATIONS };
    const own = await serveBench(pageFolder(), {
      path: "mine.yaml",
      readText: (path) => {
        const text = texts[path];
        return text === undefined ? { failure: "no such file" } : { path, text };
      },
      today: () => "2026-07-01",
    });
    try {
      await onBench(
        async (page) => {
          await course(page, "NAV1").fill("066");
          const { name, bytes } = await downloaded(page, () => page.keyboard.press("Control+s"));
          expect(name).toBe("mine.yaml");
          expect(bytes.toString("utf8")).toBe(MINE.replace("course: 070", "course: 066"));
        },
        { before: withoutPickers, address: own.address },
      );
    } finally {
      await own.close();
    }
  });

  it("of the demo is saved to stand alone", () =>
    onBench(
      async (page) => {
        await openMenu(page);
        const { name, bytes } = await downloaded(page, () =>
          menu(page).getByRole("button", { name: "Save scene" }).click(),
        );
        expect(name).toBe("01-which-way-to-the-course.yaml");
        expect(await said(page).textContent()).toMatch(
          /saved\. Its 8 stations and the land are written in the file/,
        );
        await page.keyboard.press("Escape");
        await course(page, "NAV1").fill("075");
        await pick(page, fileOf(name, bytes.toString("utf8")));
        await expect.poll(() => facesOn(page), POLL).toEqual(facesOf(FIRST));
      },
      { before: withoutPickers },
    ));

  it("is dropped on the page with the files it names, and undo brings the last scene back", () =>
    onBench(async (page) => {
      await drop(page, ["mine.yaml", MINE], ["mine.stations.yaml", STATIONS]);
      await expect.poll(() => page.locator("h1").textContent(), POLL).toBe("Mine");
      expect(await said(page).textContent()).toBe("Mine opened.");
      await page.keyboard.press("Control+z");
      await expect.poll(() => facesOn(page), POLL).toEqual(facesOf(FIRST));
    }));

  it.each<[string, readonly [string, string][], RegExp]>([
    [
      "without its stations",
      [["mine.yaml", MINE]],
      /mine\.yaml:5:11 stations mine\.stations\.yaml cannot be opened/,
    ],
    [
      "with a fault",
      [
        ["mine.yaml", MINE.replace("090", "390")],
        ["mine.stations.yaml", STATIONS],
      ],
      /mine\.yaml:9:12 heading 390 is out of range/,
    ],
    ["that is none", [["list.txt", "buy milk"]], /list\.txt is no scene file/],
    ["that is a picture", [["a.yaml", "\u0089PNG\r\n\u001a\n\u0000"]], /not a text file/],
  ])("%s is explained, and the present scene stays", (_, files, sentence) =>
    onBench(async (page) => {
      await course(page, "NAV1").fill("075");
      await drop(page, ...files);
      const notice = page.getByRole("alert");
      await notice.waitFor();
      expect(await notice.textContent()).toMatch(sentence);
      const turned = act(FIRST, { kind: "set-course", receiver: "NAV1", course: stationDeg(75) });
      expect(await facesOn(page)).toEqual(facesOf(turned));
      await page.keyboard.press("Enter");
      await expect.poll(() => notice.count(), POLL).toBe(0);
    }),
  );

  it.each([
    [
      "table",
      "navaids.csv",
      tableText('1,QZA,"Alder",VOR-DME,113900,45.5,8.5,300,113900,86X,,,,2'),
      "1 stations",
    ],
    ["station file", "mine.stations.yaml", STATIONS, "mine.stations.yaml"],
  ])(
    "that is a %s of stations opens the stations' sheet, from the bench and from Home",
    (_, name, text, wanted) =>
      onBench(async (page) => {
        const told = page.locator("#tool-sheet [data-catalogue]");
        await drop(page, [name, text]);
        await expect.poll(() => told.textContent(), POLL).toContain(wanted);
        await page.getByRole("button", { name: "Home", exact: true }).click();
        await page.locator(".home").waitFor();
        await drop(page, [name, text]);
        await expect.poll(() => told.textContent(), POLL).toContain(wanted);
        expect(await page.getByRole("alert").count()).toBe(0);
        expect(await facesOn(page)).toEqual(facesOf(FIRST));
      }),
  );

  it("is written back to its own place where the browser allows, but never over another program's changes", () =>
    onBench(
      async (page) => {
        await page.evaluate(
          async ([mine, stations]) => {
            const folder = await navigator.storage.getDirectory();
            for (const [name, text] of [
              ["mine.yaml", mine],
              ["mine.stations.yaml", stations],
            ] as const) {
              const writable = await (await folder.getFileHandle(name, { create: true })).createWritable();
              await writable.write(text);
              await writable.close();
            }
          },
          [MINE, STATIONS] as const,
        );
        const stored = (name: string) =>
          page.evaluate(async (wanted) => {
            const folder = await navigator.storage.getDirectory();
            return (await (await folder.getFileHandle(wanted)).getFile()).text();
          }, name);
        await page.keyboard.press("Control+o");
        await expect.poll(() => page.locator("h1").textContent(), POLL).toBe("Mine");
        await course(page, "NAV1").fill("066");
        await page.keyboard.press("Control+s");
        await expect.poll(() => stored("mine.yaml"), POLL).toBe(MINE.replace("course: 070", "course: 066"));
        await course(page, "NAV1").fill("067");
        await page.keyboard.press("Control+s");
        await expect.poll(() => stored("mine.yaml"), POLL).toBe(MINE.replace("course: 070", "course: 067"));
        const others = `${MINE}# Changed elsewhere.\n`;
        await page.evaluate(async (text) => {
          const folder = await navigator.storage.getDirectory();
          const writable = await (await folder.getFileHandle("mine.yaml")).createWritable();
          await writable.write(text);
          await writable.close();
        }, others);
        await course(page, "NAV1").fill("068");
        await page.keyboard.press("Control+s");
        await expect.poll(() => stored("picked.yaml"), POLL).toBe(MINE.replace("course: 070", "course: 068"));
        expect(await stored("mine.yaml")).toBe(others);
        await expect
          .poll(() => said(page).textContent(), POLL)
          .toMatch(
            /picked\.yaml saved\. Mine\.yaml was changed by another program|picked\.yaml saved\. mine\.yaml was changed/,
          );
      },
      {
        before: () => {
          // Real files, in the page's own part of the disk; only the person's choosing is stood in for.
          const folder = () => navigator.storage.getDirectory();
          Object.assign(window, {
            showOpenFilePicker: async () => [
              await (await folder()).getFileHandle("mine.yaml"),
              await (await folder()).getFileHandle("mine.stations.yaml"),
            ],
            showSaveFilePicker: async () => (await folder()).getFileHandle("picked.yaml", { create: true }),
          });
        },
      },
    ));
});

describe("recent work", () => {
  const stored = (page: Page): Promise<{ name: string; title: string; work: { kind: string } }[]> =>
    page.evaluate(() => JSON.parse(localStorage.getItem("needlework.recent") ?? '{"entries":[]}').entries);

  it("keeps a scene once it is changed, and a file with its text", () =>
    onBench(async (page) => {
      await page.waitForTimeout(1500);
      expect(await stored(page)).toEqual([]);
      await course(page, "NAV1").fill("075");
      await expect
        .poll(() => stored(page), POLL)
        .toMatchObject([{ title: FIRST.title, work: { kind: "link" } }]);
      await drop(page, ["mine.yaml", MINE], ["mine.stations.yaml", STATIONS]);
      await expect
        .poll(() => stored(page), POLL)
        .toMatchObject([
          {
            name: "mine",
            title: "Mine",
            work: { kind: "text", text: MINE, files: [["mine.stations.yaml", STATIONS]] },
          },
          { title: FIRST.title },
        ]);
    }));

  it("is kept even when the page closes at once", () =>
    onBench(async (page) => {
      await course(page, "NAV1").fill("075");
      await page.goto("about:blank");
      await page.goto(`${bench.address()}/`);
      // The two pages are two processes: what one wrote last reaches the other a moment later.
      await expect.poll(() => stored(page), POLL).toMatchObject([{ title: FIRST.title }]);
    }));

  it("lies on Home to be picked up again, and is saved into its own text; and all of it is forgotten", () =>
    onBench(
      async (page) => {
        await pick(page, fileOf("mine.stations.yaml", STATIONS), fileOf("mine.yaml", MINE));
        await expect.poll(() => page.locator("h1").textContent(), POLL).toBe("Mine");
        await course(page, "NAV1").fill("075");
        await expect.poll(async () => JSON.stringify(await stored(page)), POLL).toContain("course: 075");
        await page.reload();
        await expect.poll(() => course(page, "NAV1").inputValue(), POLL).toBe("075");
        // The address gave the scene, the tab its text.
        await page.waitForTimeout(2000);
        expect(await stored(page)).toHaveLength(1);
        const again = await downloaded(page, () => page.keyboard.press("Control+s"));
        expect(again.bytes.toString("utf8")).toBe(MINE.replace("course: 070", "course: 075"));
        await page.getByRole("button", { name: "Home", exact: true }).click();
        const work = page.getByRole("region", { name: "Recent work" });
        await work.locator(".thumbnail svg").first().waitFor();
        await work.getByRole("button", { name: /^Mine/ }).click();
        await expect.poll(() => course(page, "NAV1").inputValue(), POLL).toBe("075");
        await course(page, "NAV1").fill("066");
        const { name, bytes } = await downloaded(page, () => page.keyboard.press("Control+s"));
        expect(name).toBe("mine.yaml");
        expect(bytes.toString("utf8")).toBe(MINE.replace("course: 070", "course: 066"));
        // Picked up again it is still one piece of work.
        await expect.poll(async () => JSON.stringify(await stored(page)), POLL).toContain("course: 066");
        expect(await stored(page)).toHaveLength(1);
        await page.getByRole("button", { name: "Home", exact: true }).click();
        await work.getByRole("button", { name: "Forget all" }).click();
        await expect.poll(() => work.count(), POLL).toBe(0);
        expect(await stored(page)).toEqual([]);
      },
      { before: withoutPickers },
    ));

  it("survives a spoilt store", () =>
    onBench(
      async (page) => {
        await course(page, "NAV1").fill("075");
        await expect.poll(() => stored(page), POLL).toMatchObject([{ title: FIRST.title }]);
      },
      { before: () => localStorage.setItem("needlework.recent", '{"version":1,"entries":[{"id":7},"x') },
    ));
});

describe("print", () => {
  it("puts the figure with its title, question and caution on one landscape page, in light colours", () =>
    onBench(
      async (page) => {
        await page.keyboard.press("Control+p");
        await expect
          .poll(() => page.evaluate(() => document.documentElement.dataset.printed), POLL)
          .toBe("yes");
        await page.emulateMedia({ media: "print" });
        const sheet = page.locator(".print-sheet > svg");
        expect(await sheet.isVisible()).toBe(true);
        expect(await page.locator(".bench").isVisible()).toBe(false);
        const words = (await sheet.textContent()) ?? "";
        for (const wanted of [FIRST.title, FIRST.ask, TRAINING_CAUTION]) expect(words).toContain(wanted);
        expect(await sheet.innerHTML()).toContain(THEMES.light.course);
        const pdf = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
        expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
        const [, width, height] = /\/MediaBox\s*\[0 0 ([\d.]+) ([\d.]+)\]/.exec(pdf) ?? [];
        expect(Number(width)).toBeGreaterThan(Number(height));
        await page.emulateMedia({ media: "screen" });
        await page.evaluate(() => dispatchEvent(new Event("afterprint")));
        expect(await page.locator(".print-sheet").count()).toBe(0);
        expect(await page.locator(".bench").isVisible()).toBe(true);
      },
      {
        colorScheme: "dark",
        before: () => {
          // A headless browser has no print dialog to wait for.
          window.print = () => {
            dispatchEvent(new Event("beforeprint"));
            document.documentElement.dataset.printed = "yes";
          };
        },
      },
    ));
});

describe("the menu", () => {
  it("is opened, gone through and left by keys alone, and gives the focus back", () =>
    onBench(async (page) => {
      const button = page.getByRole("button", { name: "Share", exact: true });
      await button.focus();
      await page.keyboard.press("Enter");
      await menu(page).waitFor();
      const reached: string[] = [];
      for (let count = 0; count < 12; count++) {
        reached.push(
          await page.evaluate(() => {
            const focused = document.activeElement;
            return focused?.textContent || focused?.getAttribute("aria-label") || focused?.tagName || "";
          }),
        );
        await page.keyboard.press("Tab");
      }
      for (const wanted of [
        /^Close/,
        /^Copy link/,
        /^Save scene/,
        /^Open scene/,
        /^PNG/,
        /^SVG/,
        /^PDF/,
        /^Print/,
      ])
        expect(reached.some((text) => wanted.test(text))).toBe(true);
      await page.keyboard.press("Escape");
      await expect.poll(() => menu(page).isVisible(), POLL).toBe(false);
      expect(await button.evaluate((element) => element === document.activeElement)).toBe(true);
    }));

  it.each(["light", "dark"] as const)("has no fault that axe finds, and fits a phone (%s)", (colorScheme) =>
    onBench(
      async (page) => {
        const dialog = await openMenu(page);
        await page.evaluate(axe.source);
        const violations = await page.evaluate(async () => {
          const { axe: checker } = window as unknown as {
            axe: { run: () => Promise<{ violations: { id: string }[] }> };
          };
          return (await checker.run()).violations.map(({ id }) => id);
        });
        expect(violations).toEqual([]);
        const small = await dialog.locator("button, select, label.tick").evaluateAll((controls) =>
          controls
            .filter((control) => control.checkVisibility())
            .map((control) => ({ box: control.getBoundingClientRect(), text: control.textContent }))
            .filter(({ box }) => box.width < 44 || box.height < 44)
            .map(({ box, text }) => `${box.width}×${box.height} ${text}`),
        );
        expect(small).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(PHONE.width);
      },
      { viewport: PHONE, hasTouch: true, isMobile: true, colorScheme },
    ),
  );
});
