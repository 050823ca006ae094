/** Practice as it fills the page: the start, a run, or its end. */

import "./practice.css";
import type { ReadonlySignal } from "@preact/signals";
import type { JSX } from "preact";
import { useEffect, useMemo, useState } from "preact/hooks";
import type { Theme } from "../../draw/index.ts";
import { practiceWorld } from "../../practice/index.ts";
import { type LinkWorld, TRAINING_CAUTION } from "../../scene/index.ts";
import { EndScreen } from "./end-screen.tsx";
import { type Offer, offerOf, worldOfLink } from "./offers.ts";
import { createPractice, type Practice } from "./practice-state.ts";
import { ProblemScreen } from "./problem-screen.tsx";
import { stageOf } from "./run.ts";
import { StartScreen } from "./start-screen.tsx";
import { planTitle } from "./words.ts";

export interface PracticeScreenProps {
  readonly theme: Theme;
  readonly phone: ReadonlySignal<boolean>;
  readonly world: LinkWorld;
  /** ISO date of the isles' problems. */
  readonly date: string;
  /** What the address asked for: the link of a set or the code of a problem; empty for neither. */
  readonly wanted: string;
  readonly onBack: () => void;
  readonly onHelp: () => void;
}

/** One for the life of the page: leaving practice for the bench and coming back finds it as it was. */
let kept: Practice | null = null;

function practiceOn(world: LinkWorld, date: string): Practice {
  kept ??= createPractice({
    isles: practiceWorld({ ...world, date }),
    links: world,
    worldOfLink: (link) => worldOfLink(link, world),
  });
  return kept;
}

export function PracticeScreen(props: PracticeScreenProps): JSX.Element {
  const { theme, phone, world, date, wanted, onBack, onHelp } = props;
  const practice = useMemo(() => practiceOn(world, date), []);
  const [offer, setOffer] = useState<Offer | null>(null);
  useEffect(() => {
    if (wanted === "") return;
    practice.leave();
    void offerOf(wanted, practice.isles, world).then(setOffer);
  }, [wanted]);
  const run = practice.run.value;
  const said = practice.said.value;
  return (
    <div class="practice" data-phone={phone.value} data-stage={run === null ? "start" : stageOf(run)}>
      <header class="practice-head">
        <h1>{run === null ? "Practice" : planTitle(run.plan)}</h1>
        <div class="head-tools">
          {run === null ? (
            <>
              <a class="button" href="#sets">
                For instructors
              </a>
              <button type="button" class="button" onClick={onBack}>
                To the bench
              </button>
            </>
          ) : (
            <button type="button" class="button" onClick={practice.leave}>
              {stageOf(run) === "end" ? "Close" : "Pause"}
            </button>
          )}
          <button type="button" class="button" aria-keyshortcuts="?" onClick={onHelp}>
            Help
          </button>
        </div>
      </header>
      <main>
        {said === "" ? null : (
          <p class="practice-said fault" role="alert">
            {said}
          </p>
        )}
        {run === null ? (
          <StartScreen practice={practice} offer={offer} onOffer={setOffer} />
        ) : (
          <OpenRun practice={practice} theme={theme} phone={phone.value} />
        )}
      </main>
      {phone.value && run !== null && !run.isOver ? null : <Caution />}
    </div>
  );
}

const Caution = (): JSX.Element => (
  <footer class="practice-foot">
    <p>{TRAINING_CAUTION}</p>
  </footer>
);

interface OpenRunProps {
  readonly practice: Practice;
  readonly theme: Theme;
  readonly phone: boolean;
}

function OpenRun({ practice, theme, phone }: OpenRunProps): JSX.Element | null {
  const run = practice.run.value;
  const problem = practice.problem.value;
  const sum = practice.sum.value;
  if (run === null) return null;
  if (run.isOver)
    return sum === null ? (
      <Waiting words="Summing up…" />
    ) : (
      <EndScreen practice={practice} run={run} sum={sum} />
    );
  if (run.asked === null || problem === null) return <Waiting words="Choosing a problem…" />;
  return (
    <ProblemScreen
      practice={practice}
      run={run}
      asked={run.asked}
      problem={problem}
      theme={theme}
      phone={phone}
      caution={phone ? <Caution /> : null}
    />
  );
}

const Waiting = ({ words }: { readonly words: string }): JSX.Element => (
  <p class="practice-waiting" role="status">
    {words}
  </p>
);
