/**
 * The chart's tools in the real Chromium, used as a person would: stations found and flown to, lines measured, things placed. What the
 * page shows is compared with the engine run here in Node. The table is invented: its stations stand in no country's list.
 */

import axe from "axe-core";
import type { Locator, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import {
  direct,
  geodesicDistanceNm,
  inverse,
  type LatLon,
  latLon,
  latLonText,
  threeDigits,
  trueDeg,
} from "../../src/earth/index.ts";
import { readStations, resolveScene, type Scene } from "../../src/scene/index.ts";
import { beginningNear } from "../../src/web/catalogue/fly-there.ts";
import { visitStation } from "../../src/web/catalogue/visit.ts";
import { act, type SceneAction } from "../../src/web/state/actions.ts";
import { benchUnderTest, type Visit } from "./bench-under-test.ts";
import { PHONE } from "./browser.ts";
import { chartOn, demoScene, facesOf, facesOn } from "./demo-in-node.ts";

const FIRST = demoScene("01-which-way-to-the-course");
const DATE = FIRST.date;

const HEADER =
  '"id","filename","ident","name","type","frequency_khz","latitude_deg","longitude_deg","elevation_ft","iso_country","dme_frequency_khz","dme_channel","dme_latitude_deg","dme_longitude_deg","dme_elevation_ft","slaved_variation_deg","magnetic_variation_deg","usageType","power","associated_airport"';
const row = (
  id: number,
  ident: string,
  name: string,
  khz: number,
  latDeg: number,
  lonDeg: number,
  north = "2",
) =>
  `${id},"x","${ident}","${name}","VOR",${khz},${latDeg},${lonDeg},900,"ZZ",,,,,,${north},1,"BOTH","HIGH",`;
const TABLE = [
  HEADER,
  row(1, "QZA", "Alder Ridge", 113_900, 45.2, 8.1),
  row(2, "QZB", "Birch Hollow", 114_300, 45.9, 8.4, ""),
  row(3, "QZC", "Cedar Point", 108_100, 45.4, 8.8),
  row(4, "QZN", "Far North", 112_300, 82, 10),
].join("\n");
const table = { name: "made-up.csv", mimeType: "text/csv", buffer: Buffer.from(TABLE) };
const LISTED = (() => {
  const read = readStations(TABLE, {
    path: "made-up.csv",
    date: DATE,
    open: () => ({ failure: "there is no other file" }),
  });
  if (!read.ok) throw new Error("the table cannot be read");
  return read.stations;
})();
const ISLES = FIRST.stations;

const bench = benchUnderTest();

/** On a scene of the demo. */
const onBench = (
  use: (page: Page) => Promise<void>,
  { scene = "01", ...visit }: Visit & { readonly scene?: string } = {},
): Promise<void> => bench.visit(use, { path: `#scene=${scene}`, ...visit });

/** Longer than any motion of the page, on a machine that is busy with other things. */
const POLL = { timeout: 15_000 };

const afterActions = (scene: Scene, ...actions: SceneAction[]): Scene => actions.reduce(act, scene);
const expectFaces = (page: Page, scene: Scene): Promise<void> =>
  expect.poll(() => facesOn(page), POLL).toEqual(facesOf(scene));

const tool = (page: Page, name: string): Locator => page.getByRole("button", { name, exact: true });
const sheet = (page: Page): Locator => page.locator("#tool-sheet");
const searchField = (page: Page): Locator => page.getByRole("searchbox");
const results = (page: Page): Locator => sheet(page).locator(".found");
const frequency = (page: Page, receiver: string): Locator =>
  page.getByRole("textbox", { name: `${receiver} frequency` });
const reading = (page: Page): Locator => sheet(page).locator("[data-reading] span");
const slip = (page: Page): Locator => page.locator(".tool-picture text");
const worldLand = (page: Page): Locator => page.locator('.chart-ground > svg [data-land="world"]');

async function openStations(page: Page, query: string): Promise<void> {
  await tool(page, "Stations").click();
  await searchField(page).fill(query);
}

async function openTable(page: Page, file: typeof table = table): Promise<void> {
  await sheet(page).locator("input[type=file]").setInputFiles(file);
  await sheet(page).getByText("kept in this browser.").waitFor();
}

/** Where a place is on the screen, the chart framing the scene as it was opened. */
async function onScreen(page: Page, place: LatLon): Promise<{ x: number; y: number }> {
  const chart = await chartOn(page, resolveScene(FIRST));
  const { x, y } = chart.projection.toPaper(place);
  return { x: chart.left + x, y: chart.top + y };
}

async function drag(page: Page, from: { x: number; y: number }, to: { x: number; y: number }): Promise<void> {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  for (let step = 1; step <= 5; step++)
    await page.mouse.move(from.x + ((to.x - from.x) * step) / 5, from.y + ((to.y - from.y) * step) / 5);
  await page.mouse.up();
}

/** The radial of TXJ that a place is on, in three digits. */
function radialOf(place: LatLon): string {
  const line = inverse(TXJ.position, place);
  return line.kind === "line" ? threeDigits(line.azimuth - TXJ.declinationDeg) : "";
}

const TXJ = ISLES.find(({ ident }) => ident === "TXJ")!;

describe("finding a station", () => {
  it("by frequency, ident or name, in the demo's isles, with its distance and bearing from the aircraft", () =>
    onBench(async (page) => {
      await openStations(page, "115.6");
      await expect.poll(() => results(page).count(), POLL).toBe(1);
      // Radial 246 at 18.0 NM: to the station 057 true, 7.4 W of variation here.
      expect(await results(page).textContent()).toMatch(
        /TXJ\s+Tamsel\s+115\.60\s+VOR-DME\s+18\.0 NM, 064 magnetic/,
      );
      for (const query of ["txj", "tamsel", "103X"]) {
        await searchField(page).fill(query);
        await expect.poll(() => results(page).first().textContent(), POLL).toContain("Tamsel");
      }
      await searchField(page).fill("tamsle");
      await sheet(page).getByRole("button", { name: "Tamsel", exact: true }).click();
      expect(await searchField(page).inputValue()).toBe("Tamsel");
      await searchField(page).fill("");
      await expect.poll(() => results(page).count(), POLL).toBe(ISLES.length);
    }));

  it("by keyboard alone, and tunes it", () =>
    onBench(async (page) => {
      await tool(page, "Stations").focus();
      await page.keyboard.press("Enter");
      await searchField(page).waitFor();
      await expect
        .poll(() => searchField(page).evaluate((field) => field.matches(":focus")), POLL)
        .toBe(true);
      await page.keyboard.type("oskerry");
      await page.keyboard.press("ArrowDown");
      await page.keyboard.press("Enter");
      await page.keyboard.press("Tab");
      await page.keyboard.press("Tab");
      await page.keyboard.press("Enter");
      await expectFaces(
        page,
        afterActions(FIRST, { kind: "tune-receiver", receiver: "NAV2", frequencyMhz: 117.3 }),
      );
      await page.keyboard.press("Escape");
      await expect.poll(() => sheet(page).count(), POLL).toBe(0);
      expect(await tool(page, "Stations").evaluate((button) => button.matches(":focus"))).toBe(true);
    }));

  it("tells no distance while the aircraft is covered", () =>
    onBench(
      async (page) => {
        await openStations(page, "HJL");
        await results(page).first().waitFor();
        expect(await results(page).first().textContent()).not.toMatch(/NM|magnetic/);
        await tool(page, "Measure").click();
        await page.getByLabel("Measure from").waitFor();
        expect(await page.locator('[aria-label="Measure from"] option').allTextContents()).not.toContain(
          "The aircraft",
        );
      },
      { scene: "22" },
    ));
});

describe("a catalogue of real stations", () => {
  it("is read beside the page, kept in the browser, asked nothing of anyone, and forgotten when told", () =>
    onBench(async (page) => {
      const asked: string[] = [];
      page.on("request", (request) => asked.push(request.url()));
      await tool(page, "Stations").click();
      await searchField(page).waitFor();
      const worker = page.waitForEvent("worker");
      await openTable(page);
      await worker;
      expect(await sheet(page).locator("[data-catalogue]").textContent()).toBe(
        "made-up.csv: 3 stations, kept in this browser.",
      );
      await sheet(page).getByRole("button", { name: "1 left out" }).click();
      const dialog = page.getByRole("dialog", { name: "made-up.csv, row by row" });
      expect(await dialog.locator("li").first().textContent()).toMatch(
        /^line 4\s+108\.10 is a localizer channel/,
      );
      await page.keyboard.press("Escape");
      await page.reload();
      await openStations(page, "alder");
      await expect.poll(() => results(page).first().textContent(), POLL).toContain("QZA");
      await sheet(page).getByRole("button", { name: "Forget it" }).click();
      await expect.poll(() => results(page).count(), POLL).toBe(0);
      await page.reload();
      await openStations(page, "alder");
      await sheet(page).getByText("No station fits").first().waitFor();
      expect(asked.filter((url) => !url.startsWith(bench.address()))).toEqual([]);
    }));

  it("is taken when it is dropped, in a station file's form too", () =>
    onBench(async (page) => {
      await tool(page, "Stations").click();
      await searchField(page).waitFor();
      const file =
        "stations: 1\nlist:\n  - { ident: QQQ, name: Quill, kind: VOR, frequency: 113.90, at: 45°N 008°E, elevation: 0, declination: 2E }\n";
      const dropped = await page.evaluateHandle((text) => {
        const transfer = new DataTransfer();
        transfer.items.add(new File([text], "mine.stations.yaml"));
        return transfer;
      }, file);
      await page.locator(".catalogue-foot").dispatchEvent("drop", { dataTransfer: dropped });
      await sheet(page).getByText("mine.stations.yaml").first().waitFor();
      await searchField(page).fill("quill");
      await expect.poll(() => results(page).first().textContent(), POLL).toContain("QQQ");
    }));

  it("that is none is explained, and the one before stays", () =>
    onBench(async (page) => {
      await tool(page, "Stations").click();
      await searchField(page).waitFor();
      await openTable(page);
      const wrong = { ...table, name: "prices.csv", buffer: Buffer.from("a,b\n1,2\n") };
      await sheet(page).locator("input[type=file]").setInputFiles(wrong);
      const note = sheet(page).getByRole("alert");
      expect(await note.textContent()).toContain("prices.csv cannot be used.");
      expect(await note.textContent()).toContain("this is not the worldwide navaid table");
      await searchField(page).fill("alder");
      await expect.poll(() => results(page).count(), POLL).toBe(1);
      await sheet(page).getByRole("button", { name: "Close this note" }).click();
      await expect.poll(() => note.count(), POLL).toBe(0);
    }));

  it("holds stations that a scene cannot, and says why", () =>
    onBench(async (page) => {
      await tool(page, "Stations").click();
      await searchField(page).waitFor();
      await openTable(page);
      await searchField(page).fill("QZN");
      await results(page).first().click();
      await sheet(page).getByText("QZN stands poleward of 80 degrees, where radials have no use.").waitFor();
      await expectFaces(page, FIRST);
    }));
});

describe("flying to a station of a catalogue", () => {
  it("brings it with its neighbours, over the world's land, and can be taken back", () =>
    onBench(async (page) => {
      const parts: string[] = [];
      page.on("request", (request) => parts.push(request.url()));
      await tool(page, "Stations").click();
      await searchField(page).waitFor();
      await openTable(page);
      await searchField(page).fill("alder");
      expect(parts.filter((url) => url.includes("land-50m"))).toEqual([]);
      await results(page).first().click();
      const published = [...ISLES, ...LISTED];
      const qza = LISTED.find(({ ident }) => ident === "QZA")!;
      const visited = visitStation(FIRST, published, qza);
      if (visited.kind === "refused") throw new Error(visited.sentence);
      const brought = afterActions(FIRST, { kind: "set-stations", stations: visited.stations });
      await worldLand(page).waitFor({ state: "attached" });
      expect(parts.some((url) => url.includes("land-50m"))).toBe(true);
      await expect
        .poll(() => page.locator('select[aria-label="NAV1 station"] option').count(), POLL)
        .toBe(brought.stations.length);
      await sheet(page).getByRole("button", { name: "Fly there" }).click();
      await sheet(page).getByRole("button", { name: "Tune NAV1" }).click();
      const begin = beginningNear(qza, brought);
      const flown = afterActions(
        brought,
        { kind: "move-aircraft", to: begin.position },
        { kind: "set-heading", heading: begin.heading },
        { kind: "set-altitude", altitudeFt: begin.altitudeFt },
      );
      const there = visitStation(flown, published, qza);
      if (there.kind === "refused") throw new Error(there.sentence);
      expect(there.stations.map(({ ident }) => ident)).toEqual(["QZA", "QZB"]);
      const expected = afterActions(
        flown,
        { kind: "set-stations", stations: there.stations },
        { kind: "tune-receiver", receiver: "NAV1", frequencyMhz: 113.9 },
      );
      await expectFaces(page, expected);
      expect(geodesicDistanceNm(expected.aircraft.position, qza.position)).toBeCloseTo(20, 6);
      expect(await results(page).first().textContent()).toContain("20.0 NM");
      await page.getByRole("button", { name: "Undo" }).click();
      await page.getByRole("button", { name: "Undo" }).click();
      await expectFaces(page, brought);
      await page.getByRole("button", { name: "Undo" }).click();
      await expectFaces(page, FIRST);
    }));

  it("has the chart framed there again by Fit, and back at the isles with another scene", () =>
    onBench(async (page) => {
      await tool(page, "Stations").click();
      await searchField(page).waitFor();
      await openTable(page);
      await searchField(page).fill("birch");
      await results(page).first().click();
      await sheet(page).getByRole("button", { name: "Fly there" }).click();
      await page.keyboard.press("Escape");
      const dart = page.getByRole("button", { name: /^Aircraft/ });
      const ground = (await page.locator(".chart-ground").boundingBox())!;
      for (let press = 0; press < 30; press++) await page.getByRole("button", { name: "Farther" }).click();
      await page.getByRole("button", { name: "Fit", exact: true }).click();
      await expect
        .poll(async () => {
          const box = (await dart.boundingBox())!;
          const middle = { x: box.x + box.width / 2 - ground.x, y: box.y + box.height / 2 - ground.y };
          return middle.x > 0 && middle.x < ground.width && middle.y > 0 && middle.y < ground.height;
        }, POLL)
        .toBe(true);
      expect(await worldLand(page).count()).toBe(1);
    }));
});

describe("measuring", () => {
  it("by drag from a station reads radial, miles and both bearings, and snaps", () =>
    onBench(async (page) => {
      await tool(page, "Measure").click();
      await page.getByLabel("Measure from").waitFor();
      const from = await onScreen(page, TXJ.position);
      const to = await onScreen(page, FIRST.aircraft.position);
      await drag(page, { x: from.x + 6, y: from.y - 5 }, { x: to.x - 5, y: to.y + 6 });
      await expect
        .poll(() => reading(page).allTextContents(), POLL)
        .toEqual(["from TXJ: radial 246, 18.0 NM", "237 true, 244 magnetic"]);
      expect((await slip(page).allTextContents()).join(" ")).toBe(
        "from TXJ: radial 246, 18.0 NM 237 true, 244 magnetic",
      );
      await expectFaces(page, FIRST);
      await sheet(page).getByRole("button", { name: "Swap ends" }).click();
      await expect
        .poll(() => reading(page).allTextContents(), POLL)
        .toEqual(["to TXJ: 18.0 NM, on its radial 246", "057 true, 064 magnetic"]);
      await sheet(page).getByRole("button", { name: "Clear" }).click();
      await expect.poll(() => page.locator(".tool-picture").count(), POLL).toBe(0);
    }));

  it("by two presses as well as by one drag", () =>
    onBench(async (page) => {
      await tool(page, "Measure").click();
      await page.getByLabel("Measure from").waitFor();
      const from = await onScreen(page, TXJ.position);
      const to = await onScreen(page, direct(TXJ.position, trueDeg(100 - 9), 12));
      await page.mouse.click(from.x, from.y);
      await page.mouse.click(to.x, to.y);
      await expect
        .poll(() => reading(page).first().textContent(), POLL)
        .toMatch(/^from TXJ: radial (100|099|101), 1[12]\.\d NM$/);
    }));

  it("in passing, with Shift held, and puts the line away at the next press", () =>
    onBench(async (page) => {
      const from = await onScreen(page, FIRST.aircraft.position);
      const to = await onScreen(page, TXJ.position);
      await page.keyboard.down("Shift");
      await drag(page, from, to);
      await page.keyboard.up("Shift");
      await expect
        .poll(async () => (await slip(page).allTextContents()).join(" "), POLL)
        .toBe("to TXJ: 18.0 NM, on its radial 246 057 true, 064 magnetic");
      await expectFaces(page, FIRST);
      await page.mouse.click(to.x + 60, to.y + 150);
      await expect.poll(() => page.locator(".tool-picture").count(), POLL).toBe(0);
    }));

  it("from lists and with a cross, by keyboard alone", () =>
    onBench(async (page) => {
      await tool(page, "Measure").focus();
      await page.keyboard.press("Enter");
      await page.getByLabel("Measure from").waitFor();
      await page.getByLabel("Measure from").selectOption("station:TXJ");
      await page.getByLabel("Measure to").selectOption("station:SRX");
      await expect
        .poll(() => reading(page).allTextContents(), POLL)
        .toEqual(["from TXJ: radial 164, 64.0 NM", "155 true, 162 magnetic, on SRX radial 344"]);
      await expect
        .poll(() => sheet(page).locator("p[role=status]").textContent(), POLL)
        .toContain("from TXJ: radial 164, 64.0 NM");
      await sheet(page).getByRole("button", { name: "By arrow keys" }).focus();
      await page.keyboard.press("Enter");
      const cross = page.locator("#chart-cross");
      await expect.poll(() => cross.evaluate((button) => button.matches(":focus")), POLL).toBe(true);
      await page.keyboard.press("Enter");
      await page.keyboard.press("Shift+ArrowRight");
      await page.keyboard.press("Shift+ArrowRight");
      await page.keyboard.press("Enter");
      const chart = await chartOn(page, resolveScene(FIRST));
      const middle = { x: chart.widthPx / 2, y: chart.heightPx / 2 };
      const milesNm = geodesicDistanceNm(
        chart.projection.toWorld(middle.x, middle.y),
        chart.projection.toWorld(middle.x + 100, middle.y),
      );
      await expect.poll(() => reading(page).first().textContent(), POLL).toBe(`${milesNm.toFixed(1)} NM`);
      await page.keyboard.press("Escape");
      await expect.poll(() => page.locator(".tool-picture").count(), POLL).toBe(0);
    }));

  it("follows the aircraft while the line lies", () =>
    onBench(async (page) => {
      await tool(page, "Measure").click();
      await page.getByLabel("Measure from").selectOption("station:TXJ");
      await page.getByLabel("Measure to").selectOption("aircraft:");
      await reading(page).first().waitFor();
      await tool(page, "Measure").focus();
      const dart = page.getByRole("button", { name: /^Aircraft/ });
      await dart.focus();
      for (let press = 0; press < 4; press++) await page.keyboard.press("Shift+ArrowLeft");
      let at = FIRST.aircraft.position;
      for (let press = 0; press < 4; press++) at = direct(at, trueDeg(270), 5);
      await expect
        .poll(() => reading(page).first().textContent(), POLL)
        .toBe(`from TXJ: radial ${radialOf(at)}, ${geodesicDistanceNm(TXJ.position, at).toFixed(1)} NM`);
    }));

  it("by finger on a phone, where the sheet lies below the chart", () =>
    onBench(
      async (page) => {
        await tool(page, "Tools").tap();
        await tool(page, "Measure").tap();
        await page.getByLabel("Measure from").waitFor();
        const chart = (await page.locator(".chart-ground").boundingBox())!;
        const below = (await sheet(page).boundingBox())!;
        expect(below.y).toBeGreaterThanOrEqual(chart.y + chart.height - 1);
        expect(chart.height).toBeGreaterThan(200);
        const touch = await page.context().newCDPSession(page);
        const send = (type: "touchStart" | "touchMove" | "touchEnd", x: number, y: number) =>
          touch.send("Input.dispatchTouchEvent", {
            type,
            touchPoints: type === "touchEnd" ? [] : [{ x, y }],
          });
        const from = await onScreen(page, TXJ.position);
        await send("touchStart", from.x + 3, from.y - 3);
        for (let step = 1; step <= 5; step++) await send("touchMove", from.x - 12 * step, from.y + 10 * step);
        await send("touchEnd", 0, 0);
        await expect
          .poll(() => reading(page).first().textContent(), POLL)
          .toMatch(/^from TXJ: radial \d{3}, \d+\.\d NM$/);
        // The finger moved neither the chart nor the aircraft.
        expect(await page.getByRole("button", { name: /^Aircraft/ }).getAttribute("aria-label")).toContain(
          "radial 246 of TXJ, 18.0 miles",
        );
        expect(await onScreen(page, TXJ.position)).toEqual(from);
        for (const button of await sheet(page).locator("button:visible, select:visible").all()) {
          const box = (await button.boundingBox())!;
          expect(box.height).toBeGreaterThanOrEqual(44);
        }
      },
      { viewport: PHONE, hasTouch: true, isMobile: true },
    ));
});

describe("placing the aircraft", () => {
  it.each([
    ["TXJ 030/25", direct(TXJ.position, trueDeg(30 - 9), 25)],
    ["hjl180012", null],
    ["10°30.0′S 002°00.0′E", latLon(-10.5, 2)],
    ["-10.5, 2", latLon(-10.5, 2)],
  ])("at %s", (text, place) =>
    onBench(async (page) => {
      await tool(page, "Place").click();
      const field = page.getByLabel("Place of the aircraft");
      await field.fill(text);
      await field.press("Enter");
      const hjl = ISLES.find(({ ident }) => ident === "HJL")!;
      const to = place ?? direct(hjl.position, trueDeg(180 - 10), 12);
      await expectFaces(page, afterActions(FIRST, { kind: "move-aircraft", to }));
      await page.getByRole("button", { name: "Undo" }).click();
      await expectFaces(page, FIRST);
    }),
  );

  it("explains in one sentence what it cannot read, and moves nothing", () =>
    onBench(async (page) => {
      await tool(page, "Place").click();
      const field = page.getByLabel("Place of the aircraft");
      const faults: [string, string][] = [
        ["TXJ 400/18", 'The radial in "TXJ 400/18" is 400; it must be 001 to 360.'],
        [
          "over there",
          '"over there" is not a position; write it like 10°18.8′S 002°03.7′E or -10.313, 2.062.',
        ],
        ["TXY 100/10", "No station of this scene has the ident TXY; did you mean TXJ?."],
      ];
      for (const [text, sentence] of faults) {
        await field.fill(text);
        await field.press("Enter");
        await expect.poll(() => page.locator("#place-fault").textContent(), POLL).toBe(sentence);
      }
      await expectFaces(page, FIRST);
    }));

  it("brings the place into sight, far away too, and draws the world's land there", () =>
    onBench(async (page) => {
      await tool(page, "Place").click();
      const field = page.getByLabel("Place of the aircraft");
      await field.fill("50°30′N 001°00′W");
      await field.press("Enter");
      await worldLand(page).waitFor({ state: "attached" });
      await expectFaces(page, afterActions(FIRST, { kind: "move-aircraft", to: latLon(50.5, -1) }));
    }));
});

describe("a station of one's own", () => {
  const nameOf = (ident: string) => new RegExp(`^Station ${ident}, your own`);

  it("is made by keyboard alone, with today's variation for its north, and received", () =>
    onBench(async (page) => {
      await tool(page, "Place").focus();
      await page.keyboard.press("Enter");
      await page.getByRole("button", { name: "New station here" }).focus();
      await page.keyboard.press("Enter");
      await expect
        .poll(
          () => page.getByRole("textbox", { name: "Ident" }).evaluate((field) => field.matches(":focus")),
          POLL,
        )
        .toBe(true);
      await page.keyboard.type("qzx");
      await page.keyboard.press("Tab");
      await page.keyboard.type("Halfway Rock");
      await page.keyboard.press("Tab");
      await page.keyboard.press("Tab");
      await page.keyboard.type("108.10");
      await page.getByRole("textbox", { name: "Stands at" }).fill("TXJ 246/10");
      expect(await page.getByRole("textbox", { name: "Declination" }).inputValue()).toBe("7W");
      await page.keyboard.press("Enter");
      await expect
        .poll(() => page.locator("#station-frequency-fault").textContent(), POLL)
        .toMatch(/^QZX frequency 108\.10 is a localizer channel/);
      await expect
        .poll(() => page.locator("#station-frequency").evaluate((field) => field.matches(":focus")), POLL)
        .toBe(true);
      await page.keyboard.press("Control+a");
      await page.keyboard.type("114.30");
      await page.keyboard.press("Enter");
      await page.getByRole("button", { name: nameOf("QZX") }).waitFor();
      await frequency(page, "NAV1").fill("qzx");
      await frequency(page, "NAV1").press("Enter");
      const station = {
        ...TXJ,
        ident: "QZX",
        name: "Halfway Rock",
        frequencyMhz: 114.3,
        dmeChannel: "90X",
        position: direct(TXJ.position, trueDeg(246 - 9), 10),
        elevationFt: 0,
        declinationDeg: -7,
        vorClass: null,
        dmeClass: null,
      };
      await expectFaces(
        page,
        afterActions(
          FIRST,
          { kind: "add-station", station },
          { kind: "tune-receiver", receiver: "NAV1", frequencyMhz: 114.3 },
        ),
      );
    }));

  async function addStation(page: Page): Promise<Locator> {
    await tool(page, "Place").click();
    await page.getByRole("button", { name: "New station here" }).click();
    await page.getByRole("textbox", { name: "Ident" }).fill("QZX");
    await page.getByRole("textbox", { name: "Frequency, MHz" }).fill("114.3");
    await page.getByRole("button", { name: "Add the station" }).click();
    const hand = page.getByRole("button", { name: nameOf("QZX") });
    await hand.waitFor();
    return hand;
  }

  it("is dragged on the chart, moved by arrow keys, changed, and taken away; no published one can be", () =>
    onBench(async (page) => {
      const hand = await addStation(page);
      expect(await page.locator(".hand-station").count()).toBe(1);
      const before = (await hand.boundingBox())!;
      const from = { x: before.x + before.width / 2, y: before.y + before.height / 2 };
      await drag(page, from, { x: from.x + 90, y: from.y + 60 });
      await expect
        .poll(async () => {
          const box = (await hand.boundingBox())!;
          return [Math.round(box.x - before.x), Math.round(box.y - before.y)];
        }, POLL)
        .toEqual([90, 60]);
      await expectFaces(page, FIRST);
      await hand.focus();
      await page.keyboard.press("ArrowLeft");
      await expect.poll(async () => (await hand.boundingBox())!.x - before.x, POLL).toBeLessThan(89);
      await page.keyboard.press("Enter");
      await page.getByRole("heading", { name: "Station QZX" }).waitFor();
      await page.getByRole("textbox", { name: "Ident" }).fill("TXJ");
      await page.getByRole("button", { name: "Save" }).click();
      await expect
        .poll(() => page.locator("#station-ident-fault").textContent(), POLL)
        .toBe("TXJ is another station of this scene; give each its own ident.");
      await page.getByRole("textbox", { name: "Ident" }).fill("QZY");
      await page.getByRole("button", { name: "Save" }).click();
      await page.getByRole("button", { name: nameOf("QZY") }).waitFor();
      await page.getByRole("button", { name: "Change QZY" }).click();
      await page.getByRole("button", { name: "Remove" }).click();
      await expect.poll(() => page.locator(".hand-station").count(), POLL).toBe(0);
      await page.getByRole("button", { name: "Undo" }).click();
      await page.getByRole("button", { name: nameOf("QZY") }).waitFor();
    }));

  it("stands where the chart is pressed", () =>
    onBench(async (page) => {
      await tool(page, "Place").click();
      await page.getByRole("button", { name: "New station here" }).click();
      await page.getByRole("button", { name: "Pick on the chart" }).click();
      const place = latLon(-10.55, 2.3);
      const at = await onScreen(page, place);
      await page.mouse.click(at.x, at.y);
      await expect
        .poll(() => page.getByRole("textbox", { name: "Stands at" }).inputValue(), POLL)
        .toMatch(/^10°3[23]\.\d′S 002°1[78]\.\d′E$/);
      await expectFaces(page, FIRST);
      await page.getByRole("button", { name: "Pick on the chart" }).press("Enter");
      await expect.poll(() => page.evaluate(() => document.activeElement?.id), POLL).toBe("chart-cross");
      await page.keyboard.press("ArrowDown");
      await page.keyboard.press("Enter");
      const chart = await chartOn(page, resolveScene(FIRST));
      const expected = latLonText(chart.projection.toWorld(chart.widthPx / 2, chart.heightPx / 2 + 10), 1);
      await expect
        .poll(() => page.getByRole("textbox", { name: "Stands at" }).inputValue(), POLL)
        .toBe(expected);
    }));
});

interface Violation {
  readonly id: string;
  readonly nodes: readonly { readonly html: string }[];
}

describe("for everyone", () => {
  it.each([
    ["light", false],
    ["dark", false],
    ["light", true],
  ] as const)("axe-core objects to nothing (%s, phone %s)", (colorScheme, phone) =>
    onBench(
      async (page) => {
        const check = async (state: string) => {
          const { violations } = await page.evaluate<{ violations: readonly Violation[] }>(
            // Evaluated by the debugger, which the content security policy of the page does not bind.
            `${axe.source};axe.run({ resultTypes: ["violations"] })`,
          );
          expect(
            violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`),
            state,
          ).toEqual([]);
        };
        if (phone) await tool(page, "Tools").click();
        await tool(page, "Stations").click();
        await searchField(page).waitFor();
        await openTable(page);
        await searchField(page).fill("qza");
        await results(page).first().click();
        await worldLand(page).waitFor({ state: "attached" });
        await check("with stations found");
        await sheet(page).getByRole("button", { name: "1 left out" }).click();
        await check("with the rows left out");
        await page.keyboard.press("Escape");
        await tool(page, "Measure").click();
        await page.getByLabel("Measure from").selectOption("station:QZA");
        await page.getByLabel("Measure to").selectOption("station:QZB");
        await check("with a line measured");
        await tool(page, "Place").click();
        await page.getByLabel("Place of the aircraft").fill("nowhere");
        await page.keyboard.press("Enter");
        await check("with a place refused");
        await page.getByRole("button", { name: "New station here" }).click();
        await page.getByRole("button", { name: "Add the station" }).click();
        await check("with an unfinished station");
        await page.getByRole("textbox", { name: "Ident" }).fill("QZX");
        await page.getByRole("textbox", { name: "Frequency, MHz" }).fill("114.3");
        await page.getByRole("button", { name: "Add the station" }).click();
        await page.getByRole("button", { name: /^Station QZX/ }).waitFor();
        await check("with a station of one's own");
      },
      { colorScheme, ...(phone ? { viewport: PHONE, hasTouch: true } : {}) },
    ),
  );
});
