/**
 * Covering, asking and lifting in the real Chromium, as an instructor and a learner do it: by mouse, by keyboard alone, by finger. What the
 * page says of a guess is compared with the comparison worked out here in Node.
 */

import type { Locator, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { geodesicDistanceNm, stationDeg } from "../../src/earth/index.ts";
import { reasonsFor, withheldBy } from "../../src/reason/index.ts";
import { resolveScene, type Scene, sceneFromLink, sceneToLink } from "../../src/scene/index.ts";
import { compareGuess } from "../../src/web/covers/compare-guess.ts";
import { linkWorld } from "../../src/web/link/demo-world.ts";
import { objections } from "./axe.ts";
import { benchUnderTest, type Visit } from "./bench-under-test.ts";
import { LAPTOP, PHONE } from "./browser.ts";
import { chartOn, demoScene, facesOf, facesOn } from "./demo-in-node.ts";

const FIRST = demoScene("01-which-way-to-the-course");
const MAILBOAT = demoScene("22-two-lines-one-mailboat");
const WORLD = linkWorld(FIRST);
const POLL = { timeout: 10_000 };

const bench = benchUnderTest();

const onScene = (scene: Scene, use: (page: Page) => Promise<void>, visit: Visit = {}): Promise<void> =>
  bench.visit(use, { path: `#${sceneToLink(scene, { world: WORLD })}`, ...visit });
const onFinger = { viewport: PHONE, hasTouch: true, isMobile: true } as const;

const covered = (...covers: string[]): Scene => ({ ...FIRST, covers });
const box = (page: Page, name: string): Locator => page.getByRole("checkbox", { name, exact: true });
const card = (page: Page): Locator => page.locator(".ask-card");
const press = (page: Page, name: string): Promise<void> =>
  page.getByRole("button", { name, exact: true }).click();
const verdict = (page: Page): Locator => page.locator(".verdict");
const paperNeedle = (page: Page): Locator => page.getByRole("slider", { name: /^Your guess at/ });
const strip = (page: Page, what: string): Locator => page.locator(`.table [data-cover="${what}"]`);
const expectFaces = (page: Page, scene: Scene): Promise<void> =>
  expect.poll(() => facesOn(page), POLL).toEqual(facesOf(scene));
/** The middle of what is drawn, px in the window. */
async function middle(what: Locator): Promise<{ readonly x: number; readonly y: number }> {
  const { x, y, width, height } = (await what.boundingBox())!;
  return { x: x + width / 2, y: y + height / 2 };
}

describe("the list of covers", () => {
  it("opens by C, is ticked by keyboard alone, and is taken back by undo", () =>
    onScene(FIRST, async (page) => {
      await page.keyboard.press("c");
      await expect
        .poll(() => box(page, "the chart").evaluate((each) => each === document.activeElement), POLL)
        .toBe(true);
      // To the needle of NAV1: four views, two of the aircraft, all of NAV1.
      for (let count = 0; count < 7; count++) await page.keyboard.press("Tab");
      expect(await box(page, "NAV1 needle").evaluate((each) => each === document.activeElement)).toBe(true);
      await page.keyboard.press("Space");
      await expectFaces(page, covered("NAV1.needle"));
      await page.keyboard.press("Tab");
      await page.keyboard.press("Space");
      await expectFaces(page, covered("NAV1.needle", "NAV1.flag"));
      await page.keyboard.press("Escape");
      expect(await page.locator(".cover-list").count()).toBe(0);
      expect(
        await page
          .getByRole("button", { name: /^Cover/ })
          .evaluate((each) => each === document.activeElement),
      ).toBe(true);
      await page.keyboard.press("Control+z");
      await expectFaces(page, covered("NAV1.needle"));
      await page.keyboard.press("c");
      expect(await box(page, "NAV1 needle").isChecked()).toBe(true);
      expect(await box(page, "NAV1 TO/FROM flag").isChecked()).toBe(false);
      await press(page, "Lift all covers");
      await expectFaces(page, FIRST);
      expect(await box(page, "NAV1 needle").isChecked()).toBe(false);
    }));

  it("says that a link holds what is covered, and so it does", () =>
    onScene(FIRST, async (page) => {
      await page.keyboard.press("c");
      expect(await page.locator(".cover-list").textContent()).toMatch(
        /link or a file of this scene holds all of it/,
      );
      await box(page, "the heading").check();
      await expect
        .poll(() => {
          const read = sceneFromLink(page.url(), { world: WORLD });
          return read.ok ? read.scene.covers : null;
        }, POLL)
        .toEqual(["heading"]);
    }));

  it("does not open while a C is typed", () =>
    onScene(FIRST, async (page) => {
      await page.getByRole("textbox", { name: "NAV1 frequency" }).focus();
      await page.keyboard.press("c");
      expect(await page.locator(".cover-list").count()).toBe(0);
    }));
});

describe("covering by pointing", () => {
  const begin = async (page: Page) => {
    await page.keyboard.press("c");
    await press(page, "Cover by pointing");
  };

  it("covers what is pressed, lifts a strip that is pressed, and moves nothing meanwhile", () =>
    onScene(FIRST, async (page) => {
      await begin(page);
      const needle = await middle(page.locator(".receiver .face [data-part=needle]").first());
      await page.mouse.move(needle.x, needle.y);
      expect(await page.locator(".cover-outline").textContent()).toBe("cover NAV1 needle");
      await page.mouse.click(needle.x, needle.y);
      await expectFaces(page, covered("NAV1.needle"));
      expect(await page.locator(".pointing-note [role=status]").textContent()).toBe("NAV1 needle: covered");

      const dart = await middle(page.locator(".chart-ground > svg [data-part=aircraft]"));
      await page.mouse.move(dart.x, dart.y);
      await page.mouse.down();
      await page.mouse.move(dart.x + 2, dart.y + 2);
      await page.mouse.up();
      await strip(page, "aircraft").waitFor();
      const course = await middle(page.locator(".stepper[data-tone=course]").nth(1));
      await page.mouse.click(course.x, course.y);
      await expectFaces(page, covered("NAV1.needle", "aircraft", "NAV2.course"));

      for (const what of ["needle", "aircraft"]) {
        const at = await middle(strip(page, what).first());
        await page.mouse.move(at.x, at.y);
        expect(await page.locator(".cover-outline").textContent()).toMatch(/^lift /);
        await page.mouse.click(at.x, at.y);
        await strip(page, what).waitFor({ state: "detached" });
      }
      await expectFaces(page, covered("NAV2.course"));
      await page.keyboard.press("Escape");
      expect(await page.locator(".pointing-note").count()).toBe(0);
      // The hands work again.
      await page.getByRole("button", { name: /^Aircraft/ }).press("ArrowUp");
      await expect.poll(() => page.getByRole("button", { name: "Undo" }).isEnabled(), POLL).toBe(true);
    }));

  it("covers a receiver by its ground, a view by its own, and the heading on its card", () =>
    onScene(FIRST, async (page) => {
      await begin(page);
      const name = await middle(page.locator(".receiver-name").nth(1));
      await page.mouse.click(name.x, name.y);
      await expectFaces(page, covered("NAV2"));
      const number = await middle(page.locator("#heading"));
      await page.mouse.click(number.x, number.y);
      await expectFaces(page, covered("NAV2", "heading"));
      const title = await middle(page.locator(".chain li").first());
      await page.mouse.click(title.x, title.y);
      await page.locator(".reasons .covered", { hasText: "covered: reasons" }).waitFor();
      const ground = (await page.locator(".chart-ground").boundingBox())!;
      await page.mouse.click(ground.x + ground.width * 0.3, ground.y + ground.height * 0.3);
      await strip(page, "chart").waitFor();
      await press(page, "Done");
      const dme = page.locator(".dme-row");
      expect(await dme.count()).toBe(1);
    }));

  it("works by finger", () =>
    onScene(
      FIRST,
      async (page) => {
        await press(page, "Tools");
        await page.getByRole("button", { name: /^Cover/ }).tap();
        await page.getByRole("button", { name: "Cover by pointing" }).tap();
        await press(page, "Panel");
        const needle = await middle(page.locator(".receiver .face [data-part=needle]").first());
        // A little beside, as fingers are.
        await page.touchscreen.tap(needle.x - 5, needle.y - 12);
        await expectFaces(page, covered("NAV1.needle"));
        const at = await middle(strip(page, "needle").first());
        await page.touchscreen.tap(at.x, at.y);
        await expectFaces(page, FIRST);
        await page.getByRole("button", { name: "Done" }).tap();
        expect(await page.locator(".pointing-note").count()).toBe(0);
      },
      onFinger,
    ));
});

describe("the aircraft's place", () => {
  const guess = async (page: Page, right: number, down: number) => {
    const ground = (await page.locator(".chart-ground").boundingBox())!;
    const at = {
      x: Math.round(ground.x + ground.width * right),
      y: Math.round(ground.y + ground.height * down),
    };
    await page.mouse.click(at.x, at.y);
    return at;
  };

  it("is pointed at on the chart, and told how far off, beside the truth, when the cover is lifted", () =>
    onScene(MAILBOAT, async (page) => {
      const chart = await chartOn(page, resolveScene(MAILBOAT));
      const at = await guess(page, 0.55, 0.66);
      const position = chart.projection.toWorld(at.x - chart.left, at.y - chart.top);
      const mark = await middle(page.locator(".hand-guess"));
      expect(Math.hypot(mark.x - at.x, mark.y - at.y)).toBeLessThan(1.5);
      await press(page, "This is my guess");
      expect(await page.locator(".guess-marks text").textContent()).toBe("your guess");
      expect(await page.locator(".guess-to-truth").count()).toBe(0);
      await press(page, "Lift the cover");
      const situation = resolveScene({ ...MAILBOAT, covers: [] });
      const expected = compareGuess(situation, { cover: "aircraft", answer: { kind: "place", position } });
      // The mark is read to a pixel, and a pixel is some part of a mile.
      const pixelNm = geodesicDistanceNm(
        position,
        chart.projection.toWorld(at.x - chart.left + 1, at.y - chart.top),
      );
      const said = (await verdict(page).textContent())!;
      const miles = (words: string) => Number(/^([\d.]+) NM off/.exec(words)?.[1]);
      expect(Math.abs(miles(said) - miles(expected.sentence))).toBeLessThan(2 * pixelNm + 0.1);
      expect(said.replace(/[\d.]+/g, "#")).toBe(expected.sentence.replace(/[\d.]+/g, "#"));
      expect(await page.locator(".outcome .truth dd").textContent()).toBe(expected.truth);
      // From the ring of the guess to the dart.
      const line = await page
        .locator(".guess-to-truth")
        .evaluate((each) => [each.getAttribute("x2"), each.getAttribute("y2")].map(Number));
      const dart = await middle(page.locator(".chart-ground > svg [data-part=aircraft]"));
      const ground = (await page.locator(".chart-ground").boundingBox())!;
      expect(Math.hypot(line[0]! + ground.x - dart.x, line[1]! + ground.y - dart.y)).toBeLessThan(12);
      // The reasons tell why: the steps that had been withheld are lit.
      const withheld = withheldBy(reasonsFor(situation), ["aircraft"]).filter(
        ({ receiver }) => receiver === "NAV1",
      );
      expect(await page.locator(".chain li[data-revealed=true] strong").allTextContents()).toEqual(
        withheld.map(({ title }) => title),
      );
    }));

  it("may be written instead, and what cannot be read is explained", () =>
    onScene(MAILBOAT, async (page) => {
      const field = page.getByRole("textbox", { name: /^Where is the aircraft/ });
      await field.fill("TXJ 233");
      await field.press("Enter");
      expect(await card(page).locator(".fault").textContent()).toMatch(/is no place; write ident radial\/NM/);
      await field.fill("TXJ 233/36.6");
      await page.locator(".hand-guess").waitFor();
      await field.press("Enter");
      // The focus goes along: the next press lifts the cover.
      await expect
        .poll(() => page.evaluate(() => document.activeElement?.textContent), POLL)
        .toBe("Lift the cover");
      await page.keyboard.press("Enter");
      expect(await verdict(page).textContent()).toMatch(/^Right there/);
      expect(await card(page).locator("[role=status]").last().textContent()).toMatch(/^Right there/);
    }));

  it("is moved by keys before it is given; a drag of the paper is no guess", () =>
    onScene(MAILBOAT, async (page) => {
      const ground = (await page.locator(".chart-ground").boundingBox())!;
      await page.mouse.move(ground.x + 120, ground.y + 200);
      await page.mouse.down();
      await page.mouse.move(ground.x + 180, ground.y + 240, { steps: 4 });
      await page.mouse.up();
      expect(await page.locator(".hand-guess").count()).toBe(0);
      await guess(page, 0.5, 0.5);
      const hand = page.locator(".hand-guess");
      const before = await middle(hand);
      await hand.press("Shift+ArrowRight");
      const after = await middle(hand);
      expect(after.x).toBeGreaterThan(before.x + 5);
      expect(Math.abs(after.y - before.y)).toBeLessThan(3);
    }));
});

describe("a needle", () => {
  it("is laid by keys, given, and stands in outline beside the truth on scale and face", () =>
    onScene(covered("NAV1.needle"), async (page) => {
      await press(page, "This is my guess");
      expect(await card(page).textContent()).not.toMatch(/Lift the cover/);
      await paperNeedle(page).press("ArrowLeft");
      await paperNeedle(page).press("Shift+ArrowLeft");
      await paperNeedle(page).press("Shift+ArrowLeft");
      await paperNeedle(page).press("ArrowLeft");
      expect(await paperNeedle(page).getAttribute("aria-valuetext")).toBe("3 dots left");
      await press(page, "This is my guess");
      await press(page, "Lift the cover");
      expect(await verdict(page).textContent()).toBe("The right side, 1 dot too many.");
      const [guessX, truthX] = await Promise.all([
        middle(page.locator(".receiver .guess-on-face rect").first()).then(({ x }) => x),
        middle(page.locator(".receiver .face [data-part=needle]").first()).then(({ x }) => x),
      ]);
      const dots = await page
        .locator(".receiver .face [data-part=dots]")
        .first()
        .locator("circle")
        .evaluateAll((all) => all.slice(0, 2).map((dot) => dot.getBoundingClientRect().x));
      expect((truthX - guessX) / (dots[1]! - dots[0]!)).toBeCloseTo(1, 1);
      expect(await page.locator(".ask-card .needle-scale line").count()).toBe(1);
    }));

  it("is dragged along the scale, or said to have no signal", () =>
    onScene(covered("NAV1.needle"), async (page) => {
      const scale = (await paperNeedle(page).boundingBox())!;
      await page.mouse.move(scale.x + scale.width / 2, scale.y + 30);
      await page.mouse.down();
      await page.mouse.move(scale.x + scale.width - 2, scale.y + 30, { steps: 5 });
      await page.mouse.up();
      await expect.poll(() => paperNeedle(page).getAttribute("aria-valuetext"), POLL).toBe("full right");
      await press(page, "No signal");
      expect(await paperNeedle(page).getAttribute("aria-valuetext")).toBe("no signal");
      await press(page, "This is my guess");
      await press(page, "Lift the cover");
      expect(await verdict(page).textContent()).toBe("There is a signal: the needle stands 2 dots left.");
    }));

  it("is asked about by a press on its strip", () =>
    onScene(covered("heading", "NAV1.needle"), async (page) => {
      expect(await card(page).locator("[aria-pressed=true]").textContent()).toBe("heading");
      const at = await middle(strip(page, "needle").first());
      await page.mouse.click(at.x, at.y);
      await expect
        .poll(() => paperNeedle(page).evaluate((each) => each === document.activeElement), POLL)
        .toBe(true);
    }));
});

describe("other guesses", () => {
  it("the flag of three, a course in three digits, an ident in words, each by keyboard", () =>
    onScene(covered("NAV1.flag", "NAV1.course", "NAV2.ident"), async (page) => {
      await page.getByRole("radio", { name: "OFF" }).focus();
      await page.keyboard.press("ArrowUp");
      expect(await page.getByRole("radio", { name: "FROM" }).isChecked()).toBe(true);
      await page.keyboard.press("Enter");
      await page.keyboard.press("Enter");
      expect(await verdict(page).textContent()).toBe("It says TO; you said FROM.");
      await card(page).getByRole("button", { name: "NAV1 course" }).click();
      await page.getByRole("textbox", { name: /^Which course/ }).fill("250");
      await page.keyboard.press("Enter");
      await page.keyboard.press("Enter");
      await expect.poll(() => verdict(page).textContent(), POLL).toMatch(/^The reciprocal: it is 070/);
      await card(page).getByRole("button", { name: "NAV2 ident" }).click();
      await page.getByRole("textbox", { name: /^Which ident/ }).fill("hjl");
      await page.keyboard.press("Enter");
      await page.keyboard.press("Enter");
      await expect.poll(() => verdict(page).textContent(), POLL).toBe("Right: HJL.");
      await expectFaces(page, FIRST);
    }));

  it("may be left open, made again, and are not lost by undo", () =>
    onScene(covered("NAV1.needle"), async (page) => {
      await press(page, "I don't know yet");
      expect(await card(page).locator(".given").textContent()).toMatch(/not yet known/);
      await press(page, "Guess again");
      await paperNeedle(page).press("ArrowLeft");
      await press(page, "This is my guess");
      expect(await card(page).locator(".given li").count()).toBe(2);
      await press(page, "Lift the cover");
      expect(await verdict(page).allTextContents()).toEqual([
        "You left it open; the reasons tell how it can be known.",
        "The right side, 1½ dots too few.",
      ]);
      await page.keyboard.press("Control+z");
      await expectFaces(page, covered("NAV1.needle"));
      expect(await verdict(page).count()).toBe(0);
      expect(await card(page).locator(".given li").count()).toBe(2);
      await page.keyboard.press("Control+Shift+z");
      await expect.poll(() => verdict(page).count(), POLL).toBe(2);
      await press(page, "Cover it again");
      await expectFaces(page, covered("NAV1.needle"));
      await press(page, "Lift the cover");
      await press(page, "Put the guess away");
      expect(await card(page).count()).toBe(0);
    }));

  it("are judged by what the needle stood at when they were made", () =>
    onScene(covered("NAV1.needle"), async (page) => {
      for (let count = 0; count < 4; count++) await paperNeedle(page).press("ArrowLeft");
      await press(page, "This is my guess");
      await page.getByRole("spinbutton", { name: "NAV1 course", exact: true }).fill("060");
      await press(page, "Lift the cover");
      expect(await verdict(page).textContent()).toBe("Right: 2 dots left.");
      const turned = FIRST.receivers.map((each) =>
        each.name === "NAV1" ? { ...each, course: stationDeg(60) } : each,
      );
      await expectFaces(page, { ...FIRST, receivers: turned });
    }));
});

describe("the question", () => {
  it("is edited under the title by keyboard, kept in the link, and taken back", () =>
    onScene(covered("NAV1.needle"), async (page) => {
      await page.getByRole("button", { name: "Edit the question" }).press("Enter");
      const field = page.getByRole("textbox", { name: "The question this scene asks" });
      await field.fill("Left or right?");
      await field.press("Enter");
      expect(await page.locator(".ask > p").textContent()).toBe("Left or right?");
      await expect
        .poll(() => {
          const read = sceneFromLink(page.url(), { world: WORLD });
          return read.ok ? read.scene.ask : null;
        }, POLL)
        .toBe("Left or right?");
      await page.keyboard.press("Control+z");
      await expect.poll(() => page.locator(".ask > p").textContent(), POLL).toBe(FIRST.ask);
      await page.getByRole("button", { name: "Edit the question" }).press("Enter");
      await field.fill("never mind");
      await field.press("Escape");
      expect(await page.locator(".ask > p").textContent()).toBe(FIRST.ask);
    }));

  it("is large when projected, with the card that takes the class's guess, and the reasons come with the truth", () =>
    onScene(covered("NAV1.needle"), async (page) => {
      await page.keyboard.press("p");
      const sizePx = (what: Locator) =>
        what.evaluate((each) => Number.parseFloat(getComputedStyle(each).fontSize));
      expect(await sizePx(page.locator(".ask > p"))).toBeGreaterThan(20);
      expect(await page.getByRole("button", { name: "Edit the question" }).count()).toBe(0);
      await paperNeedle(page).press("ArrowRight");
      await press(page, "This is my guess");
      expect(await page.locator(".chain").isVisible()).toBe(false);
      await press(page, "Lift the cover");
      expect(await verdict(page).textContent()).toBe("The wrong side: 2 dots left.");
      await expect.poll(() => page.locator(".chain").isVisible(), POLL).toBe(true);
    }));
});

describe("on a phone", () => {
  it("the card unfolds by a finger; a place is tapped on the chart, given and told", () =>
    onScene(
      MAILBOAT,
      async (page) => {
        const chart = (await page.locator(".chart-ground").boundingBox())!;
        const folded = (await card(page).boundingBox())!;
        expect(folded.height).toBeLessThan(70);
        await page.touchscreen.tap(chart.x + chart.width * 0.6, chart.y + chart.height * 0.6);
        // Pointing unfolds it, and leaves the chart in sight.
        await page.getByRole("button", { name: "This is my guess" }).tap();
        const unfolded = (await card(page).boundingBox())!;
        expect(unfolded.y).toBeGreaterThan(chart.y + chart.height * 0.6);
        await page.getByRole("button", { name: "Lift the cover" }).tap();
        expect(await verdict(page).textContent()).toMatch(/NM off: the aircraft is to the/);
        for (const button of await card(page).getByRole("button").all()) {
          const size = (await button.boundingBox())!;
          expect(Math.min(size.width, size.height)).toBeGreaterThanOrEqual(43);
        }
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(PHONE.width);
      },
      onFinger,
    ));
});

describe("for everyone", () => {
  it.each(["light", "dark"] as const)("axe finds nothing to object to at any stage (%s)", (colorScheme) =>
    onScene(
      covered("NAV1.needle", "aircraft", "NAV2.flag", "heading", "NAV2"),
      async (page) => {
        const check = async (state: string) => expect(await objections(page), state).toEqual([]);
        await check("a needle asked about");
        await page.keyboard.press("c");
        await page.locator(".cover-list").waitFor();
        await check("the list of covers");
        await page.keyboard.press("Escape");
        await paperNeedle(page).press("ArrowLeft");
        await press(page, "This is my guess");
        await check("guessed");
        await press(page, "Lift the cover");
        await check("guess and truth");
        for (const name of ["aircraft's place", "NAV2 TO/FROM flag", "heading", "all of NAV2"]) {
          await card(page).getByRole("button", { name, exact: true }).click();
          await check(name);
        }
        await page.keyboard.press("c");
        await press(page, "Cover by pointing");
        await check("covering by pointing");
        await page.keyboard.press("Escape");
        await page.getByRole("button", { name: "Edit the question" }).click();
        await check("editing the question");
      },
      { colorScheme, viewport: LAPTOP },
    ),
  );
});
