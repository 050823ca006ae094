/** System, light, dark or high contrast. */

import type { JSX } from "preact";
import { THEME_CHOICES, type ThemeChoice, type ThemeState } from "../state/theme-choice.ts";

const WORDS: Readonly<Record<ThemeChoice, string>> = {
  system: "Theme: auto",
  light: "Theme: light",
  dark: "Theme: dark",
  contrast: "High contrast",
};

export function ThemeSwitch({ choice }: Pick<ThemeState, "choice">): JSX.Element {
  return (
    <label class="pick">
      <span class="unseen">Light or dark</span>
      <select
        value={choice.value}
        onChange={(event) => {
          const wanted = event.currentTarget.value;
          choice.value = THEME_CHOICES.find((known) => known === wanted) ?? "system";
        }}
      >
        {THEME_CHOICES.map((known) => (
          <option key={known} value={known}>
            {WORDS[known]}
          </option>
        ))}
      </select>
    </label>
  );
}
