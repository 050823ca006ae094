/** One quiet line that tells how something ended: "Link copied". Read out by a screen reader, gone after a while. */

import { type ReadonlySignal, signal } from "@preact/signals";

export interface SaidLine {
  readonly text: string;
  /** Grows with every saying, so that the same words are heard again. */
  readonly count: number;
}

export interface Said {
  readonly line: ReadonlySignal<SaidLine>;
  /** Says one or more sentences as one line, each beginning with a capital and ending in a full stop. */
  readonly say: (...sentences: readonly string[]) => void;
  readonly hush: () => void;
}

/** Long enough to read the line twice. */
const LEAST_MS = 6_000;
const MS_PER_LETTER = 90;

export function createSaid(): Said {
  const line = signal<SaidLine>({ text: "", count: 0 });
  let timer: ReturnType<typeof setTimeout> | undefined;
  const put = (text: string) => {
    clearTimeout(timer);
    line.value = { text, count: line.value.count + 1 };
    if (text !== "") timer = setTimeout(() => put(""), LEAST_MS + text.length * MS_PER_LETTER);
  };
  return {
    line,
    say: (...sentences) => put(sentences.map(asSentence).join(" ")),
    hush: () => put(""),
  };
}

function asSentence(text: string): string {
  const [first = "", ...rest] = text;
  // A file's name keeps its letters as they are.
  const start = /^\S*[./]\S*/.test(text) ? first : first.toUpperCase();
  const whole = start + rest.join("");
  return /[.?!…]$/.test(whole) ? whole : `${whole}.`;
}
