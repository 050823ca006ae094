/** What a code, a link or a file holds: a run that can be started, or sentences on why not. */

import { openProblem, type ProblemSet, readProblemCode, type World } from "../../practice/index.ts";
import type { LinkWorld } from "../../scene/index.ts";
import type { Plan } from "./run.ts";

export type Offer =
  | {
      readonly kind: "set";
      readonly plan: Extract<Plan, { readonly kind: "set" }>;
      readonly notes: readonly string[];
    }
  | { readonly kind: "fault"; readonly says: readonly string[] };

/** The reader of sets brings the reader of scene files with it: fetched when first wanted. */
const reader = () => import("./set-reader.ts");

const sentence = (text: string): string => {
  const trimmed = text.trim();
  return `${trimmed.charAt(0).toUpperCase()}${trimmed.slice(1)}${/[.?!]$/.test(trimmed) ? "" : "."}`;
};
const fault = (...says: readonly string[]): Offer => ({ kind: "fault", says: says.map(sentence) });

export const setLinkIn = (text: string): string | null =>
  /(?:^|#)(p1\.[\w.-]+)/.exec(text.trim())?.[1] ?? null;

/** A code as typed, or a link to a set. Never rejects but where the page's own parts cannot be loaded. */
export async function offerOf(text: string, isles: World, links: LinkWorld): Promise<Offer> {
  const link = setLinkIn(text);
  if (link !== null) return offerOfLink(link, isles, links);
  const read = readProblemCode(text.replace(/^.*#practice=/, ""));
  if (read.kind === "fault") return fault(read.says);
  const opened = openProblem(isles, read.code);
  if (opened.kind === "fault") return fault(opened.says);
  return {
    kind: "set",
    plan: { kind: "set", title: "", note: "", codes: [read.code], link: "" },
    notes: [],
  };
}

async function offerOfLink(link: string, isles: World, links: LinkWorld): Promise<Offer> {
  const { problemSetFromLink } = await reader();
  const read = problemSetFromLink(link, links);
  return read.ok ? offerOfSet(read.set, isles, { link, notes: read.notes }) : fault(...read.faults);
}

/** The text of a set's file. */
export async function offerOfFile(
  text: string,
  name: string,
  isles: World,
  links: LinkWorld,
): Promise<Offer> {
  const { faultLine, openNothing, problemSetToLink, readProblemSet } = await reader();
  const read = readProblemSet(text, { path: name, open: openNothing, isles: links });
  // They begin with the file's name, as it is written.
  if (!read.ok) return { kind: "fault", says: read.faults.map(faultLine) };
  return offerOfSet(read.set, isles, { link: problemSetToLink(read.set, links), notes: [] });
}

const offerOfSet = (
  { title, note, problems, world }: ProblemSet,
  isles: World,
  { link, notes }: { readonly link: string; readonly notes: readonly string[] },
): Offer => ({
  kind: "set",
  plan: {
    kind: "set",
    title,
    note,
    codes: problems.map(({ code }) => code),
    link: world.mark === isles.mark && world.stations.length === isles.stations.length ? "" : link,
  },
  notes,
});

/** The stations of a set, from its link; null where they can no longer be read. */
export async function worldOfLink(link: string, links: LinkWorld): Promise<World | null> {
  const { problemSetFromLink } = await reader();
  const read = problemSetFromLink(link, links);
  return read.ok ? read.set.world : null;
}
