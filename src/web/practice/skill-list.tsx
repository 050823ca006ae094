/** The path: every skill by its part of the course, with where it stands in words. */

import type { JSX } from "preact";
import { SKILL_BANDS } from "../../practice/index.ts";
import type { Practice } from "./practice-state.ts";
import { BAND_TITLES } from "./scopes.ts";
import { placeWords, type SkillRow, skillRows } from "./words.ts";

export function SkillList({ practice }: { readonly practice: Practice }): JSX.Element {
  const rows = skillRows(practice.learnt.value, practice.path.value ?? {});
  return (
    <section class="practice-skills" aria-labelledby="skills-title">
      <h3 id="skills-title">Practise a skill</h3>
      <p class="note">
        Six problems at a time, about five minutes. Skills open as those they build on become secure.
      </p>
      <div class="practice-bands">
        {SKILL_BANDS.map((band) => (
          <section key={band} class="sheet" aria-labelledby={`band-${band}`}>
            <h4 id={`band-${band}`}>{BAND_TITLES[band]}</h4>
            <ul>
              {rows
                .filter(({ skill }) => skill.band === band)
                .map((row) => (
                  <SkillItem key={row.skill.id} row={row} practice={practice} />
                ))}
            </ul>
          </section>
        ))}
      </div>
    </section>
  );
}

function SkillItem({ row, practice }: { readonly row: SkillRow; readonly practice: Practice }): JSX.Element {
  const { skill, place } = row;
  const start = () => practice.start({ kind: "skill", skill: skill.id });
  return (
    <li data-place={place}>
      <span class="skill-title">{skill.title}</span>
      <span class="skill-place">{placeWords(row)}</span>
      {place === "flown" ? null : (
        <button
          type="button"
          class={place === "locked" ? "quiet" : "button"}
          aria-label={place === "locked" ? `Open anyway: ${skill.title}` : `Practise: ${skill.title}`}
          onClick={start}
        >
          {place === "locked" ? "Open anyway" : "Practise"}
        </button>
      )}
    </li>
  );
}
