/** The sheet or key as a PDF from the bench's own server; out of its reach the browser's printing serves. */

import type { Printed } from "./set-print.tsx";

export const PAPER_WORDS = { a4: "A4", letter: "Letter" } as const;
export type PaperSize = keyof typeof PAPER_WORDS;

/** The PDF, or one sentence on why there is none. Never rejects. */
export async function typeset(link: string, what: Printed, paper: PaperSize): Promise<Blob | string> {
  try {
    const answer = await fetch("/api/paper", {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify({ link, what, paper }),
    });
    if (answer.ok) return await answer.blob();
    const { message } = (await answer.json()) as { message: string };
    return `${message.charAt(0).toUpperCase()}${message.slice(1)}.`;
  } catch {
    return "The bench's server is out of reach, so no PDF can be made now: print instead.";
  }
}

/** What the PDF is called: nothing of the answers. */
export const pdfName = (name: string, what: Printed): string => `${name}${what === "key" ? "-key" : ""}.pdf`;
