/** What is remembered of a scene that was worked on, and its text form in the browser's store. */

export type RecentWork =
  /** A scene file with the files it draws on, but for those that are always at hand. */
  | {
      readonly kind: "text";
      readonly path: string;
      readonly text: string;
      readonly files: readonly (readonly [path: string, text: string])[];
    }
  /** The whole scene in a link, without the address before it. */
  | { readonly kind: "link"; readonly link: string };

export interface RecentEntry {
  readonly id: string;
  /** The file's or the demo scene's name, without ending. */
  readonly name: string;
  readonly title: string;
  /** When it was last worked on, ISO instant. */
  readonly when: string;
  readonly work: RecentWork;
}

export const MOST_ENTRIES = 12;
const VERSION = 1;

export const recentText = (entries: readonly RecentEntry[]): string =>
  JSON.stringify({ version: VERSION, entries });

/** The entries of a stored text. What is no entry is left out; a text that is no store has none. Never throws. */
export function recentFrom(text: string | null): readonly RecentEntry[] {
  if (text === null) return [];
  try {
    const stored: unknown = JSON.parse(text);
    if (!isRecord(stored) || stored.version !== VERSION || !Array.isArray(stored.entries)) return [];
    const ids = new Set<string>();
    return stored.entries
      .filter(isEntry)
      .filter(({ id }) => !ids.has(id) && ids.add(id))
      .slice(0, MOST_ENTRIES);
  } catch {
    // Another program's text, or half of ours.
    return [];
  }
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const isEntry = (value: unknown): value is RecentEntry =>
  isRecord(value) &&
  ["name", "title", "when"].every((key) => typeof value[key] === "string") &&
  // It begins ids of pictures.
  /^[\w-]{1,60}$/.test(String(value.id)) &&
  !Number.isNaN(Date.parse(String(value.when))) &&
  isWork(value.work);

function isWork(work: unknown): work is RecentWork {
  if (!isRecord(work)) return false;
  if (work.kind === "link") return typeof work.link === "string";
  const isPair = (pair: unknown): boolean =>
    Array.isArray(pair) && pair.length === 2 && pair.every((part) => typeof part === "string");
  return (
    work.kind === "text" &&
    typeof work.path === "string" &&
    typeof work.text === "string" &&
    Array.isArray(work.files) &&
    work.files.every(isPair)
  );
}
