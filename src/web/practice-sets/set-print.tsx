/** The set on paper, by the browser's own printing: the sheet with its pictures, two problems to a page, or the key. It stands in the page only to be printed. */

import type { JSX } from "preact";
import { sheetPicture } from "../../draw/index.ts";
import {
  DONT_KNOW,
  keyProblems,
  type ProblemSet,
  type SheetAnswer,
  sheetProblems,
} from "../../practice/index.ts";
import { TRAINING_CAUTION } from "../../scene/index.ts";

const HEIGHT_PX = 250;
const PAIR_PX = 330;
const ALONE_PX = 674;

export type Printed = "sheet" | "key";

export function SetPrint({ set, what }: { readonly set: ProblemSet; readonly what: Printed }): JSX.Element {
  const title = set.title === "" ? "Problems" : set.title;
  return (
    <div class="set-print" data-what={what}>
      <header>
        <h1>{what === "key" ? `Key: ${title}` : title}</h1>
        {what === "sheet" ? (
          <p class="print-name">Name ____________________________ Date ______________</p>
        ) : null}
        {what === "sheet" && set.note !== "" ? <p>{set.note}</p> : null}
      </header>
      {what === "sheet" ? <SheetPages set={set} /> : <KeyPages set={set} />}
      <footer>{TRAINING_CAUTION}</footer>
    </div>
  );
}

function SheetPages({ set }: { readonly set: ProblemSet }): JSX.Element {
  return (
    <>
      {sheetProblems(set).map(({ number, code, title, question, given, drawings, answer, situation }) => (
        <section key={code} class="print-problem">
          <h2>
            <span class="print-number">{number}</span> {title} <span class="print-code">{code}</span>
          </h2>
          <p>{question}</p>
          {given.length === 0 ? null : (
            <p class="print-given">{given.map(({ label, value }) => `${label} ${value}`).join(" · ")}</p>
          )}
          <div class="print-pictures">
            {drawings.map((drawing, at) => {
              const { svg, words } = sheetPicture(drawing, situation, {
                widthPx: drawings.length === 1 ? ALONE_PX : PAIR_PX,
                heightPx: HEIGHT_PX,
                idPrefix: `print-${number}-${at + 1}`,
              });
              return (
                <div key={words} role="img" aria-label={words} dangerouslySetInnerHTML={{ __html: svg }} />
              );
            })}
          </div>
          <Answers answer={answer} />
        </section>
      ))}
    </>
  );
}

function Answers({ answer }: { readonly answer: SheetAnswer }): JSX.Element {
  const box = "\u2610";
  if (answer.kind === "options")
    return (
      <p class="print-answers">
        {answer.options.map(({ letter, text }) => (
          <span key={letter}>
            {box} {letter} {text}
          </span>
        ))}
        <span>
          {box} {DONT_KNOW}
        </span>
      </p>
    );
  return (
    <>
      {answer.kind === "order" ? (
        <ol class="print-items">
          {answer.items.map(({ letter, text }) => (
            <li key={letter}>
              {letter} {text}
            </li>
          ))}
        </ol>
      ) : null}
      <p class="print-answers">
        {answer.kind === "row" ? (
          answer.figures.map(({ label, unit }) => (
            <span key={label}>
              {label} ________ {unit}
            </span>
          ))
        ) : (
          <span>Answer ______________________ {answer.kind === "quantity" ? answer.unit : ""}</span>
        )}
        <span>
          {box} {DONT_KNOW}
        </span>
      </p>
    </>
  );
}

function KeyPages({ set }: { readonly set: ProblemSet }): JSX.Element {
  return (
    <>
      {keyProblems(set).map(({ number, code, title, right, answers, steps }) => (
        <section key={code} class="print-key">
          <h2>
            <span class="print-number">{number}</span> {title}: {right} <span class="print-code">{code}</span>
          </h2>
          <ul>
            {answers
              .filter(({ isRight }) => !isRight)
              .map(({ letter, text, ideas }) => (
                <li key={`${letter ?? ""}${text}`}>
                  {letter} {text}:{" "}
                  {ideas.length === 0 ? "no idea we know of" : ideas.map((idea) => `“${idea}”`).join(", ")}
                </li>
              ))}
          </ul>
          <ol>
            {steps.map((step) => (
              <li key={step}>{step}</li>
            ))}
          </ol>
        </section>
      ))}
    </>
  );
}
