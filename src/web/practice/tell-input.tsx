/** Where an answer is told instead of chosen: dialled, typed, pointed at or put in order. Every one of them writes the same draft text. */

import type { JSX } from "preact";
import type { Flag } from "../../panel/index.ts";
import { NEEDLES, type Problem } from "../../practice/index.ts";
import { HoldButton } from "../input/hold-button.tsx";
import {
  FLAG_WORDS,
  moved,
  orderDraft,
  orderOf,
  panelDraft,
  panelOf,
  partsOf,
  rowDraft,
  stepped,
  steppedDirection,
  windDraft,
} from "./draft.ts";

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

interface DialProps {
  readonly name: string;
  /** Whether the name is written beside it: where there are several. */
  readonly shown?: boolean;
  readonly draft: string;
  readonly onDraft: (draft: string) => void;
}

const DirectionDial = ({ name, shown = false, draft, onDraft }: DialProps): JSX.Element => (
  <StepRow
    name={name}
    shown={shown}
    draft={draft}
    onDraft={onDraft}
    digits={3}
    steps={[1, 10]}
    unit=""
    step={steppedDirection}
    stepWords={(by) => `${by} ${by === 1 ? "degree" : "degrees"}`}
  />
);

/** Small and large step, and where a first step begins, by unit. */
const NUMBER_STEPS = {
  NM: { steps: [0.1, 1], start: 10, words: "miles" },
  kt: { steps: [1, 10], start: 100, words: "knots" },
  min: { steps: [0.5, 5], start: 10, words: "minutes" },
  ft: { steps: [100, 1000], start: 3000, words: "feet" },
  degrees: { steps: [1, 10], start: 10, words: "degrees" },
} as const;

function NumberDial({
  name,
  shown = false,
  unit,
  draft,
  onDraft,
}: DialProps & { readonly unit: keyof typeof NUMBER_STEPS }): JSX.Element {
  const { steps, start, words } = NUMBER_STEPS[unit];
  return (
    <StepRow
      name={name}
      shown={shown}
      draft={draft}
      onDraft={onDraft}
      digits={5}
      steps={steps}
      unit={unit}
      step={(typed, by) => stepped(typed, by, start)}
      stepWords={(by) => `${by} ${words}`}
    />
  );
}

interface StepRowProps extends DialProps {
  readonly digits: number;
  readonly steps: readonly [number, number];
  readonly unit: string;
  readonly step: (typed: string, by: number) => string;
  readonly stepWords: (by: number) => string;
}

/** A number between its steps: large, small, typed, small, large. Arrow keys step too. */
function StepRow({
  name,
  shown,
  draft,
  onDraft,
  digits,
  steps,
  unit,
  step,
  stepWords,
}: StepRowProps): JSX.Element {
  const [small, large] = steps;
  const button = (by: number) => (
    <HoldButton
      label={`${name} ${by < 0 ? "down" : "up"} ${stepWords(Math.abs(by))}`}
      onStep={() => onDraft(step(draft, by))}
    >
      {`${by < 0 ? "−" : "+"}${Math.abs(by)}`}
    </HoldButton>
  );
  return (
    <div class="practice-dial">
      {shown ? <span class="caption">{name}</span> : null}
      {button(-large)}
      {button(-small)}
      <span class="practice-dial-value">
        <input
          class="ask-field"
          type="text"
          inputMode="decimal"
          autocomplete="off"
          maxLength={digits}
          style={{ width: `${Math.max(4, digits) + 1}ch` }}
          aria-label={unit === "" ? name : `${name}, ${unit}`}
          value={draft}
          onInput={(event) => onDraft(event.currentTarget.value)}
          onKeyDown={(event) => {
            const by = { ArrowUp: small, ArrowDown: -small, PageUp: large, PageDown: -large }[event.key];
            if (by === undefined) return;
            event.preventDefault();
            onDraft(step(draft, event.shiftKey && Math.abs(by) === small ? Math.sign(by) * large : by));
          }}
        />
        {unit === "" ? null : <span class="unit">{unit === "degrees" ? "°" : unit}</span>}
      </span>
      {button(small)}
      {button(large)}
    </div>
  );
}

interface OrderListProps {
  readonly items: readonly { readonly letter: string; readonly text: string }[];
  readonly draft: string;
  readonly onDraft: (draft: string) => void;
}

/** A list put in order by buttons: nothing needs to be dragged. */
function OrderList({ items, draft, onDraft }: OrderListProps): JSX.Element {
  const order = orderOf(
    draft,
    items.map(({ letter }) => letter),
  );
  const textOf = (letter: string): string => items.find((item) => item.letter === letter)?.text ?? "";
  const move = (letter: string, by: -1 | 1) => onDraft(orderDraft(moved(order, letter, by)));
  return (
    <ol class="practice-order">
      {order.map((letter, at) => (
        <li key={letter}>
          <span class="order-place">{at + 1}</span>
          <span class="order-text">{textOf(letter)}</span>
          <button
            type="button"
            class="button"
            aria-label={`Up: ${textOf(letter)}`}
            disabled={at === 0}
            onClick={() => move(letter, -1)}
          >
            ↑
          </button>
          <button
            type="button"
            class="button"
            aria-label={`Down: ${textOf(letter)}`}
            disabled={at === order.length - 1}
            onClick={() => move(letter, 1)}
          >
            ↓
          </button>
        </li>
      ))}
    </ol>
  );
}
