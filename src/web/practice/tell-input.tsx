/** Where an answer is told instead of chosen: dialled, typed, pointed at or put in order. Every one of them writes the same draft text. */

import type { JSX } from "preact";
import type { Flag } from "../../panel/index.ts";
import { NEEDLES, type Problem } from "../../practice/index.ts";
import { FLAG_WORDS, panelDraft, panelOf, partsOf, rowDraft, windDraft } from "./draft.ts";
import { OrderList } from "./order-list.tsx";
import { DirectionDial, NumberDial } from "./step-dial.tsx";

export interface TellInputProps {
  readonly problem: Problem;
  readonly draft: string;
  readonly onDraft: (draft: string) => void;
}

export function TellInput({ problem, draft, onDraft }: TellInputProps): JSX.Element {
  const { truth } = problem;
  const { figures = [], items = [], words = [] } = problem.case;
  switch (truth.kind) {
    case "direction":
      return <DirectionDial name="Direction" draft={draft} onDraft={onDraft} />;
    case "quantity":
      return (
        <NumberDial
          name={truth.unit === "degrees" ? "Degrees" : "Number"}
          unit={truth.unit}
          draft={draft}
          onDraft={onDraft}
        />
      );
    case "word":
      return <Choice legend="Your answer" choices={words} chosen={draft} onChoose={onDraft} />;
    case "panel": {
      const panel = panelOf(draft);
      return (
        <div class="practice-panel-input">
          <Choice
            legend="The flag shows"
            choices={Object.values(FLAG_WORDS)}
            chosen={panel.flag === null ? "" : FLAG_WORDS[panel.flag]}
            onChoose={(word) => {
              const flag = (Object.keys(FLAG_WORDS) as Flag[]).find((known) => FLAG_WORDS[known] === word);
              onDraft(panelDraft({ ...panel, flag: flag ?? null }));
            }}
          />
          <Choice
            legend="The needle stands"
            choices={NEEDLES}
            chosen={panel.needle ?? ""}
            onChoose={(word) =>
              onDraft(panelDraft({ ...panel, needle: NEEDLES.find((known) => known === word) ?? null }))
            }
          />
        </div>
      );
    }
    case "place":
      return (
        <label class="practice-typed">
          <span>Tap the chart, or write ident radial/NM</span>
          <input
            class="ask-field"
            type="text"
            autocomplete="off"
            autocapitalize="characters"
            spellcheck={false}
            placeholder="such as TXJ 246/18"
            value={draft}
            onInput={(event) => onDraft(event.currentTarget.value)}
          />
        </label>
      );
    case "wind": {
      const [from = "", speed = ""] = partsOf(draft, "/", 2);
      return (
        <div class="practice-dials">
          <DirectionDial
            name="Wind from"
            shown
            draft={from}
            onDraft={(next) => onDraft(windDraft(next, speed))}
          />
          <NumberDial
            name="Wind speed"
            shown
            unit="kt"
            draft={speed}
            onDraft={(next) => onDraft(windDraft(from, next))}
          />
        </div>
      );
    }
    case "row": {
      const parts = partsOf(draft, ";", figures.length);
      const set = (at: number, next: string) =>
        onDraft(rowDraft(parts.map((part, each) => (each === at ? next : part))));
      return (
        <div class="practice-row">
          {figures.map(({ name, label, unit }, at) => (
            <label key={name} class="practice-typed">
              <span>{label}</span>
              <span class="practice-figure">
                <input
                  class="ask-field"
                  type="text"
                  inputMode="decimal"
                  autocomplete="off"
                  value={parts[at] ?? ""}
                  onInput={(event) => set(at, event.currentTarget.value)}
                />
                <span class="unit">{unit}</span>
              </span>
            </label>
          ))}
        </div>
      );
    }
    case "order":
      return <OrderList items={items} draft={draft} onDraft={onDraft} />;
  }
}

interface ChoiceProps {
  readonly legend: string;
  readonly choices: readonly string[];
  readonly chosen: string;
  readonly onChoose: (choice: string) => void;
}

function Choice({ legend, choices, chosen, onChoose }: ChoiceProps): JSX.Element {
  return (
    <fieldset class="practice-choice">
      <legend>{legend}</legend>
      {choices.map((choice) => (
        <label key={choice}>
          <input type="radio" name={legend} checked={choice === chosen} onChange={() => onChoose(choice)} />
          <span>{choice}</span>
        </label>
      ))}
    </fieldset>
  );
}
