/**
 * How the four views lie on the table: one arrangement to prepare with, another to project, a third for a phone, where one view lies
 * below the chart at a time. Remembered in this browser.
 */

import { computed, type ReadonlySignal, type Signal, signal } from "@preact/signals";
import { VIEWS, type View } from "../../scene/index.ts";
import { remembered } from "../state/preferences.ts";
import {
  type Arrangement,
  arrangementFrom,
  bringBack,
  isSeen,
  toggleEnlarged,
  toggleShown,
} from "./arrangement.ts";

export const PRESETS = ["prepare", "project"] as const;
/** *Prepare* has every tool; *project* has large type and none. */
export type Preset = (typeof PRESETS)[number];

/** What lies below the chart on a phone: nothing when it is the chart itself. */
export type PhonePane = View | "tools";

interface Remembered {
  readonly preset: Preset;
  readonly prepare: Arrangement;
  readonly project: Arrangement;
}

export interface Layout {
  readonly preset: ReadonlySignal<Preset>;
  readonly arrangement: ReadonlySignal<Arrangement>;
  /** The window is a phone's, or as small: the chart, and one view at a time. */
  readonly phone: ReadonlySignal<boolean>;
  readonly phonePane: Signal<PhonePane>;
  /** 1 to prepare; when projecting by the size of the window, up to 2. */
  readonly typeScale: ReadonlySignal<number>;
  /** The same of one view: it grows, too, when it fills the table. */
  readonly typeScaleOf: (view: View) => number;
  /** Whether the view is to be seen: on the table, and not beneath an enlarged one. */
  readonly isSeen: (view: View) => boolean;
  /** The view last touched: what a key enlarges or puts away. */
  readonly chosen: Signal<View>;
  readonly setPreset: (preset: Preset) => void;
  readonly toggleShown: (view: View) => void;
  readonly toggleEnlarged: (view: View) => void;
  /** Brings the view back if need be, and chooses it. */
  readonly choose: (view: View) => void;
}

export interface WindowSize {
  readonly widthPx: number;
  readonly heightPx: number;
}

/** A page this large is read at arm's length at scale 1. */
const ARM_LENGTH_PX: WindowSize = { widthPx: 960, heightPx: 560 };
const LEAST_PROJECTED = 1.25;
const MOST_PROJECTED = 2;
/** Up to this width, or this height, there is no room for all at once: a phone, or a tablet held upright. The style sheets know it too. */
const PHONE_UP_TO: WindowSize = { widthPx: 900, heightPx: 500 };
/** A view that fills the table has larger type, up to so much; a chart rather shows more. */
const ENLARGED: Readonly<Record<View, number>> = { chart: 1, panel: 1.5, signal: 1.6, reasons: 1.5 };
const ROOMY = 1.25;
/** In a lower window the chart has no room to spare for the signal. */
const SIGNAL_FROM_PX = 820;

/** How many times larger than at arm's length the type of a projected page is. */
export function projectedScale({ widthPx, heightPx }: WindowSize): number {
  const fits = Math.min(widthPx / ARM_LENGTH_PX.widthPx, heightPx / ARM_LENGTH_PX.heightPx);
  return Math.min(MOST_PROJECTED, Math.max(LEAST_PROJECTED, fits));
}

export const isPhone = ({ widthPx, heightPx }: WindowSize): boolean =>
  widthPx <= PHONE_UP_TO.widthPx || heightPx <= PHONE_UP_TO.heightPx;

/** As it is for one who never arranged anything. */
export function firstLayout({ heightPx }: WindowSize): Remembered {
  const prepare = VIEWS.filter((view) => view !== "signal" || heightPx >= SIGNAL_FROM_PX);
  // The reasons give the answer away: they come when the class has guessed.
  return {
    preset: "prepare",
    prepare: { shown: prepare, enlarged: null },
    project: { shown: ["chart", "panel"], enlarged: null },
  };
}

/** The layout out of a stored text; what is spoilt in it is as it was at first. */
export function layoutFrom(text: string, first: Remembered): Remembered {
  const stored = parsed(text);
  return {
    preset: PRESETS.find((preset) => preset === stored.preset) ?? first.preset,
    prepare: arrangementFrom(stored.prepare) ?? first.prepare,
    project: arrangementFrom(stored.project) ?? first.project,
  };
}

function parsed(text: string): Readonly<Record<string, unknown>> {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === "object" && value !== null ? { ...value } : {};
  } catch {
    return {};
  }
}

const windowSize = (): WindowSize => ({ widthPx: innerWidth, heightPx: innerHeight });

export function createLayout(): Layout {
  const size = signal(windowSize());
  addEventListener("resize", () => {
    size.value = windowSize();
  });
  const first = firstLayout(size.value);
  const kept = remembered("layout", first, (text) => layoutFrom(text, first), JSON.stringify);
  const phone = computed(() => isPhone(size.value));
  const preset = computed(() => (phone.value ? "prepare" : kept.value.preset));
  const arrangement = computed(() => kept.value[preset.value]);
  const { enlarged, shown } = arrangement.value;
  const chosen = signal<View>(enlarged ?? shown[0] ?? "chart");
  const phonePane = signal<PhonePane>("panel");
  const arrange = (change: (now: Arrangement, view: View) => Arrangement, view: View) => {
    kept.value = { ...kept.value, [preset.value]: change(arrangement.value, view) };
  };
  const typeScale = computed(() => (preset.value === "project" ? projectedScale(size.value) : 1));
  return {
    preset,
    arrangement,
    phone,
    phonePane,
    chosen,
    isSeen: (view) =>
      phone.value ? view === "chart" || view === phonePane.value : isSeen(arrangement.value, view),
    typeScale,
    typeScaleOf: (view) => {
      const { enlarged, shown } = arrangement.value;
      // Without the chart beside them the others have room enough.
      const roomy = view !== "chart" && !shown.includes("chart") ? ROOMY : 1;
      const grown = phone.value ? 1 : enlarged === view ? ENLARGED[view] : roomy;
      return Math.max(typeScale.value, Math.min(grown, projectedScale(size.value)));
    },
    setPreset: (wanted) => {
      kept.value = { ...kept.value, preset: wanted };
    },
    toggleShown: (view) => arrange(toggleShown, view),
    toggleEnlarged: (view) => {
      chosen.value = view;
      arrange(toggleEnlarged, view);
    },
    choose: (view) => {
      chosen.value = view;
      if (phone.value) phonePane.value = view;
      else arrange(bringBack, view);
    },
  };
}
