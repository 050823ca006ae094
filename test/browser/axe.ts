/** What axe-core objects to on the page, one line each. */

import axe from "axe-core";
import type { Page } from "playwright-core";

interface Violation {
  readonly id: string;
  readonly nodes: readonly { readonly html: string; readonly failureSummary?: string }[];
}

/** WCAG 2.5.3, experimental in axe-core and so off by default: who says what is written must reach the control. */
const OFF_BY_DEFAULT = { "label-content-name-mismatch": { enabled: true } };

export async function objections(page: Page): Promise<string[]> {
  const { violations } = await page.evaluate<{ violations: readonly Violation[] }>(
    // Evaluated by the debugger, which the content security policy of the page does not bind.
    `${axe.source};axe.run({ resultTypes: ["violations"], rules: ${JSON.stringify(OFF_BY_DEFAULT)} })`,
  );
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 120)} ${failureSummary ?? ""}`),
  );
}
