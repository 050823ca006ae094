/** Light or dark: as the system says, unless chosen here. The sheet's colours are those of the pictures, from one table. */

import { computed, effect, type ReadonlySignal, type Signal, signal } from "@preact/signals";
import { THEMES, type Theme, type ThemeName } from "../../draw/index.ts";
import { remembered } from "./preferences.ts";

export const THEME_CHOICES = ["system", "light", "dark"] as const;
export type ThemeChoice = (typeof THEME_CHOICES)[number];

export interface ThemeState {
  readonly choice: Signal<ThemeChoice>;
  readonly theme: ReadonlySignal<Theme>;
}

/** Follows the system's wish and the person's choice, and sets the page's colours to them. */
export function followTheme(): ThemeState {
  const darkWished = matchMedia("(prefers-color-scheme: dark)");
  const systemDark = signal(darkWished.matches);
  darkWished.addEventListener("change", (event) => {
    systemDark.value = event.matches;
  });
  const choice = remembered<ThemeChoice>(
    "theme",
    "system",
    (text) => THEME_CHOICES.find((known) => known === text) ?? null,
    (value) => value,
  );
  const theme = computed(() => {
    const name: ThemeName = choice.value === "system" ? (systemDark.value ? "dark" : "light") : choice.value;
    return THEMES[name];
  });
  effect(() => colourPage(theme.value));
  return { choice, theme };
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
