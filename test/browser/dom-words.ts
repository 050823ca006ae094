/** All that a page says, seen and unseen: every text, every attribute that holds words, every value typed or chosen. */

import type { Page } from "playwright-core";

/** Attributes that place and paint things, and say nothing. */
const GEOMETRY =
  "d transform x y x1 x2 y1 y2 cx cy r rx ry dx dy width height points viewBox style fill stroke offset opacity";

/** One line for each text and attribute. `scope` keeps to a part of the page. */
export const domWords = (page: Page, scope = "html"): Promise<string> =>
  page.evaluate(
    ([within, geometry]) => {
      const skip = new Set(geometry!.split(" "));
      const lines: string[] = [document.title];
      for (const root of document.querySelectorAll(within!)) {
        for (const element of [root, ...root.querySelectorAll("*")]) {
          if (element.matches("script, style, link, meta, noscript")) continue;
          for (const { name, value } of element.attributes)
            if (!skip.has(name) && !/^(stroke|fill|font|text|clip|paint)-/.test(name))
              lines.push(`${name}=${value}`);
          if (element instanceof HTMLInputElement) lines.push(`value=${element.value}`);
          for (const node of element.childNodes)
            if (node.nodeType === Node.TEXT_NODE) lines.push(node.textContent ?? "");
        }
        lines.push(root.textContent ?? "");
      }
      return lines.join("\n");
    },
    [scope, GEOMETRY],
  );

/** The whole page as it is drawn, places and paint and all, with what is typed and chosen. */
export const domWhole = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const lines: string[] = [document.title];
    for (const element of document.body.querySelectorAll("*")) {
      const attributes = [...element.attributes].map(({ name, value }) => `${name}=${value}`).sort();
      const value = element instanceof HTMLInputElement ? element.value : "";
      const own = [...element.childNodes]
        .filter((node) => node.nodeType === Node.TEXT_NODE)
        .map((node) => node.textContent);
      lines.push(`<${element.tagName} ${attributes.join(" ")}> ${value} ${own.join("|")}`);
    }
    return lines.join("\n");
  });

/** Where two texts part, line by line; "none" when they are the same. */
export function firstDifference(one: string, other: string): string {
  if (one === other) return "none";
  const [a, b] = [one.split("\n"), other.split("\n")];
  const at = a.findIndex((line, index) => line !== b[index]);
  return `${a[at]?.slice(0, 300)}  |  ${b[at]?.slice(0, 300)}`;
}
