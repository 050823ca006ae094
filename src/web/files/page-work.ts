/**
 * Which recent work this page was on, kept while its tab lives: a reload finds the scene in the address, and here the text it came
 * from, so that one piece of work stays one.
 */

export interface PageWork {
  /** Of the entry of recent work. */
  readonly id: string;
  /** The link of the scene that it then held. */
  readonly link: string;
}

const KEY = "needlework.work";

export function rememberPageWork(work: PageWork): void {
  try {
    sessionStorage.setItem(KEY, JSON.stringify(work));
  } catch {
    // Refused or full: after a reload the scene is a new piece of work.
  }
}

/** Null where nothing is remembered, or nothing that makes sense. */
export function pageWorkBefore(): PageWork | null {
  try {
    const work: unknown = JSON.parse(sessionStorage.getItem(KEY) ?? "null");
    if (typeof work !== "object" || work === null || !("id" in work) || !("link" in work)) return null;
    return typeof work.id === "string" && typeof work.link === "string"
      ? { id: work.id, link: work.link }
      : null;
  } catch {
    return null;
  }
}
