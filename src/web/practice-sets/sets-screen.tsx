/** The instructor's desk as it fills the page: wishes, the set, the problem looked at, and the ways to hand it out. */

import "../practice/practice.css";
import "./sets.css";
import type { JSX } from "preact";
import { useEffect, useMemo, useState } from "preact/hooks";
import type { Theme } from "../../draw/index.ts";
import {
  type ProblemSet,
  practiceWorld,
  problemSetFromLink,
  problemSetToLink,
  readProblemSet,
} from "../../practice/index.ts";
import { faultLine, type LinkWorld, openNothing, type Scene, TRAINING_CAUTION } from "../../scene/index.ts";
import { HandOut } from "./hand-out.tsx";
import { createSetDesk, type SetDesk } from "./set-desk.ts";
import { type Printed, SetPrint } from "./set-print.tsx";
import { SetProblem } from "./set-problem.tsx";
import { WishFormView } from "./wish-form.tsx";

export interface SetsScreenProps {
  readonly theme: Theme;
  readonly world: LinkWorld;
  /** ISO date of the isles' problems. */
  readonly date: string;
  readonly benchScene: () => Scene;
  readonly onBack: () => void;
  readonly onHelp: () => void;
}

/** One for the life of the page. */
let kept: SetDesk | null = null;

function deskOn({ world, date, benchScene }: SetsScreenProps): SetDesk {
  kept ??= createSetDesk({
    isles: practiceWorld({ ...world, date }),
    links: world,
    benchScene,
    toLink: (set) => problemSetToLink(set, world),
    fromLink: (link) => {
      const read = problemSetFromLink(link, world);
      return read.ok ? read.set : null;
    },
    store: browserStore(),
    seed: () => Math.floor(Math.random() * 2 ** 32),
  });
  return kept;
}

function browserStore(): Storage | null {
  try {
    return localStorage;
  } catch {
    // A browser that keeps nothing for this page.
    return null;
  }
}

export function SetsScreen(props: SetsScreenProps): JSX.Element {
  const { theme, world, benchScene, onBack, onHelp } = props;
  const desk = useMemo(() => deskOn(props), []);
  const [keyShown, setKeyShown] = useState(false);
  const [printed, setPrinted] = useState<Printed | null>(null);
  const set = desk.set.value;
  const at = desk.at.value;
  useEffect(() => {
    document.title = "Problem sets · Needlework";
  }, []);
  useEffect(() => {
    if (printed === null) return;
    const done = () => setPrinted(null);
    addEventListener("afterprint", done, { once: true });
    print();
    return () => removeEventListener("afterprint", done);
  }, [printed]);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "z") return;
      if (event.target instanceof HTMLInputElement || event.target instanceof HTMLTextAreaElement) return;
      event.preventDefault();
      if (event.shiftKey) desk.redo();
      else desk.undo();
    };
    addEventListener("keydown", onKey);
    return () => removeEventListener("keydown", onKey);
  }, []);
  const openFile = async (file: File) => {
    const read = readProblemSet(await file.text(), { path: file.name, open: openNothing, isles: world });
    if (read.ok) desk.open(read.set, []);
    else desk.say(read.faults.map(faultLine));
  };
  return (
    <div class="practice sets">
      <header class="practice-head">
        <h1>Problem sets</h1>
        <div class="head-tools">
          <a class="button" href="#practice">
            To practice
          </a>
          <button type="button" class="button" onClick={onBack}>
            To the bench
          </button>
          <button type="button" class="button" aria-keyshortcuts="?" onClick={onHelp}>
            Help
          </button>
        </div>
      </header>
      <main>
        <div class="set-side">
          <WishFormView desk={desk} benchTitle={benchScene().title} />
          <section class="sheet set-open" aria-labelledby="set-open-title">
            <h2 id="set-open-title">Or open one</h2>
            <label class="button file-button">
              Open a set's file…
              <input
                type="file"
                accept=".yaml,.yml"
                onChange={(event) => {
                  const input = event.currentTarget;
                  const [file] = input.files ?? [];
                  if (file !== undefined)
                    void openFile(file).finally(() => {
                      input.value = "";
                    });
                }}
              />
            </label>
          </section>
        </div>
        <div class="set-work">
          <ul class="set-notes" role="status">
            {desk.notes.value.map((note) => (
              <li key={note}>{note}</li>
            ))}
          </ul>
          {set === null ? (
            <NoSet />
          ) : (
            <>
              <HandOut desk={desk} set={set} world={world} onPrint={setPrinted} />
              <div class="set-open-set">
                <SetList desk={desk} set={set} at={at} />
                <SetProblem
                  desk={desk}
                  set={set}
                  at={at}
                  theme={theme}
                  keyShown={keyShown}
                  onKey={setKeyShown}
                />
              </div>
            </>
          )}
        </div>
      </main>
      <footer class="practice-foot">
        <p>{TRAINING_CAUTION}</p>
      </footer>
      {set === null || printed === null ? null : <SetPrint set={set} what={printed} />}
    </div>
  );
}

const NoSet = (): JSX.Element => (
  <section class="sheet set-none" aria-label="How it goes">
    <h2>Problems that say which idea is missing</h2>
    <ol>
      <li>Say at the left what to practise, how many problems, and press Make the set.</li>
      <li>Look through it as a learner sees it; have the key shown; put another problem in a place.</li>
      <li>Hand it out: a link that opens in Practice, a file, or a printed sheet with its key apart.</li>
    </ol>
    <p>
      Every answer is computed, and every wrong option is what a mistaken idea leads to. The same wishes and
      seed give the same set.
    </p>
  </section>
);

interface SetListProps {
  readonly desk: SetDesk;
  readonly set: ProblemSet;
  readonly at: number;
}

function SetList({ desk, set, at }: SetListProps): JSX.Element {
  const [code, setCode] = useState("");
  return (
    <nav class="sheet set-list" aria-label="Problems of the set">
      <ol>
        {set.problems.map((problem, place) => (
          <li key={problem.code}>
            <button
              type="button"
              aria-current={place === at ? "true" : undefined}
              onClick={() => desk.look(place)}
            >
              <span class="set-number">{place + 1}</span> {problem.form.title}
            </button>
          </li>
        ))}
      </ol>
      <form
        class="set-add"
        onSubmit={(event) => {
          event.preventDefault();
          desk.add(code);
          setCode("");
        }}
      >
        <label class="practice-typed">
          <span>Add a problem by its code</span>
          <input
            class="ask-field"
            type="text"
            autocomplete="off"
            spellcheck={false}
            placeholder="such as 4K7-Q2M-9XD"
            value={code}
            onInput={(event) => setCode(event.currentTarget.value)}
          />
        </label>
        <button type="submit" class="button">
          Add
        </button>
      </form>
    </nav>
  );
}
