/** The end of a run: what is secure, which idea to work on, what to do next. No percentages, no ranking. */

import type { JSX } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { FORMS, SKILL_IDS, type SkillId, type SlipId, skillOf, slipOf } from "../../practice/index.ts";
import type { Learnt } from "./learner-record.ts";
import type { Practice } from "./practice-state.ts";
import { lengthOf, type Run } from "./run.ts";
import { scopeOf, WHOLE_COURSE } from "./scopes.ts";
import type { Path, Sum } from "./sum-up.ts";
import { isPractised, nextThing, nextWords, placeWords, skillRows } from "./words.ts";

export interface EndScreenProps {
  readonly practice: Practice;
  readonly run: Run;
  readonly sum: Sum;
}

export function EndScreen({ practice, run, sum }: EndScreenProps): JSX.Element {
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => title.current?.focus({ preventScroll: true }), []);
  const learnt = practice.learnt.value;
  const guessing = sum.standing.kind === "just-guessing";
  const met = skillsMet(run);
  const secure = skillRows(learnt, sum.path).filter(
    ({ skill, place }) => met.includes(skill.id) && (place === "mastered" || place === "secure-today"),
  );
  const named = (wanted: "likely" | "maybe"): readonly SlipId[] =>
    sum.standing.kind === "slips"
      ? sum.standing.slips.flatMap(({ slip, standing }) => (standing === wanted ? [slip] : []))
      : [];
  const [likely, maybe] = [named("likely"), named("maybe")];
  return (
    <div class="practice-end">
      <h2 ref={title} tabIndex={-1}>
        {run.turns.length === 0 ? "Nothing was asked" : "Done for now"}
      </h2>
      {run.turns.length === 0 ? (
        <p class="practice-lead">
          {lengthOf(run) === 0 ? "Nothing is due." : "No fresh problem of this kind was found."}
        </p>
      ) : (
        <p class="practice-lead">
          {answeredWords(run)}
          {run.plan.kind === "find" && run.plan.scope === WHOLE_COURSE
            ? " This was a first look only: it is surer of an idea when you look into one part by itself."
            : ""}
        </p>
      )}
      <section class="sheet" aria-labelledby="end-secure">
        <h3 id="end-secure">What is secure</h3>
        {secure.length === 0 ? (
          <p>
            Nothing yet: a skill is secure once it was right several times, in more than one kind of problem.
          </p>
        ) : (
          <ul>
            {secure.map((row) => (
              <li key={row.skill.id}>
                {row.skill.title}: <strong>{placeWords(row)}</strong>
              </li>
            ))}
          </ul>
        )}
      </section>
      <section class="sheet" aria-labelledby="end-idea">
        <h3 id="end-idea">What to work on</h3>
        {guessing ? (
          <p>
            Many of these answers look like guesses, so no idea is named. That is no shame: go back one step,
            and say “I don't know yet” where you do not.
          </p>
        ) : likely.length + maybe.length === 0 ? (
          <p>No mistaken idea shows in these answers.</p>
        ) : (
          <>
            {likely.map((slip) => (
              <Idea key={slip} slip={slip} lead="You most likely hold this idea" />
            ))}
            {maybe.map((slip) => (
              <Idea key={slip} slip={slip} lead="Perhaps you hold this idea" />
            ))}
          </>
        )}
      </section>
      <section class="sheet" aria-labelledby="end-next">
        <h3 id="end-next">What to do next</h3>
        <NextActs
          practice={practice}
          run={run}
          learnt={learnt}
          path={sum.path}
          wanted={guessing ? stepBack(met) : ideasSkill(likely[0] ?? maybe[0], met)}
          named={guessing ? null : [...likely, ...maybe]}
        />
      </section>
    </div>
  );
}

function answeredWords({ turns }: Run): string {
  const right = turns.filter(({ verdict }) => verdict === "right").length;
  const answered = `${turns.length} ${turns.length === 1 ? "problem" : "problems"} answered`;
  return right === 0 ? `${answered}.` : `${answered}, ${right === turns.length ? "all" : right} right.`;
}

/** The skills that the run's problems practised. */
const skillsMet = ({ turns }: Run): readonly SkillId[] => {
  const forms = new Set<string>(turns.map(({ form }) => form));
  const met = new Set<SkillId>(FORMS.filter(({ id }) => forms.has(id)).flatMap(({ skills }) => [...skills]));
  return SKILL_IDS.filter((id) => met.has(id));
};

function Idea({ slip, lead }: { readonly slip: SlipId; readonly lead: string }): JSX.Element {
  const { name, refutation, remedy } = slipOf(slip);
  return (
    <div class="practice-slip">
      <p>
        {lead}: <strong>“{name}.”</strong>
      </p>
      <p>{refutation}</p>
      <p class="note">To see it: {remedy}</p>
    </div>
  );
}

/** The first skill that the earliest one met builds on. */
function stepBack(met: readonly SkillId[]): SkillId | null {
  const [first] = met;
  if (first === undefined) return null;
  return skillOf(first).needs.find(isPractised) ?? first;
}

/** A skill that the idea stands in the way of: one just met, if any. */
function ideasSkill(slip: SlipId | undefined, met: readonly SkillId[]): SkillId | null {
  if (slip === undefined) return null;
  const attached: readonly SkillId[] = slipOf(slip).skills;
  return attached.find((skill) => met.includes(skill)) ?? attached.find(isPractised) ?? null;
}

interface NextActsProps {
  readonly practice: Practice;
  readonly run: Run;
  readonly learnt: Learnt;
  readonly path: Path;
  readonly wanted: SkillId | null;
  /** Ideas that were named; null where none may be, since the answers look like guesses. */
  readonly named: readonly SlipId[] | null;
}

const GO_BACK = "Go back to what this builds on, and come up again from there:";

function NextActs({ practice, run, learnt, path, wanted, named }: NextActsProps): JSX.Element {
  const own = run.plan.kind === "skill" ? run.plan.skill : null;
  const skill = wanted ?? own ?? nextOpenSkill(learnt, path);
  return (
    <>
      <p>{named === null ? GO_BACK : own === null ? null : nextWords(nextThing(learnt, own, path), named)}</p>
      {run.plan.kind === "find" && run.plan.scope === WHOLE_COURSE && wanted !== null ? (
        <p>Look into the part that it belongs to, or practise the skill by itself.</p>
      ) : null}
      <p class="practice-acts">
        {skill === null ? null : (
          <button
            type="button"
            class="button primary"
            onClick={() => practice.start({ kind: "skill", skill })}
          >
            Practise “{skillOf(skill).title}”
          </button>
        )}
        {run.plan.kind === "find" && scopeOf(run.plan.scope) !== null ? (
          <button type="button" class="button" onClick={() => practice.start(run.plan)}>
            Look again
          </button>
        ) : null}
        <button type="button" class="button" onClick={practice.leave}>
          Back to the start
        </button>
      </p>
    </>
  );
}

/** In teaching order the first that is open and not secure. */
const nextOpenSkill = (learnt: Learnt, path: Path): SkillId | null =>
  skillRows(learnt, path).find(({ place }) => place === "not-yet")?.skill.id ?? null;
