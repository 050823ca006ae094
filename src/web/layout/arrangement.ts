/** Which views lie on the table, and which of them fills it. Plain data; the table always holds at least one view. */

import { VIEWS, type View } from "../../scene/index.ts";

export interface Arrangement {
  /** Those not put away, in the order of `VIEWS`. */
  readonly shown: readonly View[];
  /** The one that fills the table; the others wait beneath it. */
  readonly enlarged: View | null;
}

export const isShown = ({ shown }: Arrangement, view: View): boolean => shown.includes(view);

/** Whether the view is to be seen: on the table, and not beneath an enlarged one. */
export const isSeen = (arrangement: Arrangement, view: View): boolean =>
  arrangement.enlarged === null ? isShown(arrangement, view) : arrangement.enlarged === view;

/** The last view on the table stays where it is. */
export function putAway(arrangement: Arrangement, view: View): Arrangement {
  const shown = arrangement.shown.filter((each) => each !== view);
  if (shown.length === 0 || shown.length === arrangement.shown.length) return arrangement;
  return { shown, enlarged: arrangement.enlarged === view ? null : arrangement.enlarged };
}

/** Lays the view on the table where it can be seen: while another one fills the table, this one takes its place. */
export function bringBack(arrangement: Arrangement, view: View): Arrangement {
  const { shown, enlarged } = arrangement;
  const covered = enlarged !== null && enlarged !== view;
  if (shown.includes(view) && !covered) return arrangement;
  return {
    shown: VIEWS.filter((each) => each === view || shown.includes(each)),
    enlarged: covered ? view : enlarged,
  };
}

/** The view fills the table; one that fills it shrinks back. */
export const toggleEnlarged = (arrangement: Arrangement, view: View): Arrangement =>
  arrangement.enlarged === view
    ? { ...arrangement, enlarged: null }
    : { shown: bringBack(arrangement, view).shown, enlarged: view };

/** A view that can be seen is put away, any other is brought back. */
export const toggleShown = (arrangement: Arrangement, view: View): Arrangement =>
  isSeen(arrangement, view) ? putAway(arrangement, view) : bringBack(arrangement, view);

/** An arrangement out of what was stored, whatever that is; null when it is none. */
export function arrangementFrom(stored: unknown): Arrangement | null {
  if (typeof stored !== "object" || stored === null || !("shown" in stored)) return null;
  const listed: unknown = stored.shown;
  if (!Array.isArray(listed)) return null;
  const shown = VIEWS.filter((view) => listed.includes(view));
  if (shown.length === 0) return null;
  const filling: unknown = "enlarged" in stored ? stored.enlarged : null;
  return { shown, enlarged: shown.find((view) => view === filling) ?? null };
}
