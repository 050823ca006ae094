/** Light, dark or high contrast: as the system says, unless chosen here. The sheet's colours are those of the pictures, from one table. */

import { computed, effect, type ReadonlySignal, type Signal, signal } from "@preact/signals";
import { THEMES, type Theme, type ThemeName } from "../../draw/index.ts";
import { remembered } from "./preferences.ts";

export const THEME_CHOICES = ["system", "light", "dark", "contrast"] as const;
export type ThemeChoice = (typeof THEME_CHOICES)[number];

export interface ThemeState {
  readonly choice: Signal<ThemeChoice>;
  readonly theme: ReadonlySignal<Theme>;
}

/** Follows the system's wish and the person's choice, and sets the page's colours to them. */
export function followTheme(): ThemeState {
  const darkWished = wished("(prefers-color-scheme: dark)");
  const contrastWished = wished("(prefers-contrast: more)");
  const choice = remembered<ThemeChoice>(
    "theme",
    "system",
    (text) => THEME_CHOICES.find((known) => known === text) ?? null,
    (value) => value,
  );
  const theme = computed(() => {
    const system: ThemeName = contrastWished.value ? "contrast" : darkWished.value ? "dark" : "light";
    return THEMES[choice.value === "system" ? system : choice.value];
  });
  effect(() => colourPage(theme.value));
  return { choice, theme };
}

/** Whether the system wishes it, now and whenever it changes its mind. */
function wished(query: string): ReadonlySignal<boolean> {
  const list = matchMedia(query);
  const matches = signal(list.matches);
  list.addEventListener("change", (event) => {
    matches.value = event.matches;
  });
  return matches;
}

function colourPage(theme: Theme): void {
  const root = document.documentElement;
  root.dataset.theme = theme.name;
  const colours: Record<string, string | null> = {
    ink: theme.ink,
    course: theme.course,
    radial: theme.radial,
    desk: theme.desk,
    paper: theme.paper,
    sea: theme.sea,
    line: theme.line,
    soft: theme.soft,
    cover: theme.cover,
    "cover-ink": theme.coverInk,
  };
  for (const [name, colour] of Object.entries(colours))
    if (colour !== null) root.style.setProperty(`--${name}`, colour);
}
