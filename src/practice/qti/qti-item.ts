/**
 * A problem as an item of QTI 3 (1EdTech Question and Test Interoperability 3.0, ASI information model): a choice among opaque names, or
 * numbers told and marked within their tolerance. What each answer tells lies in the response processing alone; the body, which is all that
 * a learner is sent, says nothing of it.
 */

import { type Answer, apart } from "../answer.ts";
import { opaqueId } from "../opaque-id.ts";
import type { Problem } from "../problem.ts";
import { DONT_KNOW, letteredOptions, optionText, sheetProblem } from "../sheet.ts";
import { type Field, fieldsOf } from "./told-figures.ts";
import { type XmlChild, type XmlElement, xml, xmlFile } from "./xml.ts";

export interface QtiPicture {
  /** From the item's own file. */
  readonly href: string;
  readonly words: string;
  readonly widthPx: number;
  readonly heightPx: number;
}

const NAMESPACE = "http://www.imsglobal.org/xsd/imsqtiasi_v3p0";
const SCHEMA = "https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqti_asiv3p0_v1p0.xsd";
export const XSI = "http://www.w3.org/2001/XMLSchema-instance";

/** Attributes of the root of every file of the namespace. */
export const QTI_ROOT = {
  xmlns: NAMESPACE,
  "xmlns:xsi": XSI,
  "xsi:schemaLocation": `${NAMESPACE} ${SCHEMA}`,
};

export const itemId = ({ code }: Problem): string => `problem-${code}`;

/** The item as a file. */
export function qtiItem(problem: Problem, pictures: readonly QtiPicture[]): string {
  const { form } = problem;
  const { question, given } = sheetProblem(problem, 1);
  const task = taskOf(problem);
  return xmlFile(
    xml(
      "qti-assessment-item",
      {
        ...QTI_ROOT,
        identifier: itemId(problem),
        title: form.title,
        adaptive: false,
        "time-dependent": false,
        "xml:lang": "en",
        "tool-name": "Needlework",
      },
      task.declarations,
      outcome("SCORE", "single", "float", ["0"], { "normal-maximum": 1 }),
      outcome("SLIP", "multiple", "identifier", []),
      outcome("SKILL", "multiple", "identifier", form.skills),
      xml(
        "qti-item-body",
        {},
        xml(
          "div",
          {},
          xml("p", {}, question),
          given.map(({ label, value }) => xml("p", {}, `${label}: ${value}`)),
          pictures.map(({ href, words, widthPx, heightPx }) =>
            xml("p", {}, xml("img", { src: href, alt: words, width: widthPx, height: heightPx })),
          ),
        ),
        task.body,
      ),
      xml("qti-response-processing", {}, task.processing),
    ),
  );
}

const outcome = (
  identifier: string,
  cardinality: "single" | "multiple",
  baseType: string,
  values: readonly string[],
  more: Readonly<Record<string, number>> = {},
): XmlElement =>
  xml(
    "qti-outcome-declaration",
    { identifier, cardinality, "base-type": baseType, ...more },
    values.length === 0
      ? null
      : xml(
          "qti-default-value",
          {},
          values.map((value) => xml("qti-value", {}, value)),
        ),
  );

interface Task {
  readonly declarations: readonly XmlElement[];
  readonly body: readonly XmlElement[];
  readonly processing: XmlElement;
}

/** Told in figures where the answer is figures; chosen otherwise, also where a map or an order would be told by hand. */
function taskOf(problem: Problem): Task {
  const { answer } = sheetProblem(problem, 1);
  const fields = answer.kind === "options" ? [] : fieldsOf(problem);
  return fields.length > 0 ? toldTask(problem, fields) : chosenTask(problem);
}

function chosenTask(problem: Problem): Task {
  const options = letteredOptions(problem).map((option) => ({
    ...option,
    text: optionText(problem, option),
    id: opaqueId(problem.code, option.letter),
  }));
  const right = options.find(({ answer }) => answer === problem.truth);
  const is = (id: string): XmlElement =>
    xml("qti-match", {}, variable("RESPONSE"), xml("qti-base-value", { "base-type": "identifier" }, id));
  const choice = (id: string, text: string): XmlElement =>
    xml("qti-simple-choice", { identifier: id, fixed: true }, text);
  return {
    declarations: [responseOf("RESPONSE", "identifier", right?.id ?? "")],
    body: [
      xml(
        "qti-choice-interaction",
        { "response-identifier": "RESPONSE", shuffle: false, "max-choices": 1 },
        options.map(({ id, text }) => choice(id, text)),
        choice(opaqueId(problem.code, DONT_KNOW), DONT_KNOW),
      ),
    ],
    processing: marking(
      is(right?.id ?? ""),
      options.filter(({ slips }) => slips.length > 0).map(({ id, slips }) => ({ when: is(id), slips })),
    ),
  };
}

function toldTask(problem: Problem, fields: readonly Field[]): Task {
  const { truth, slipAnswers, code } = problem;
  const told = (answer: Answer): XmlElement => {
    const each = fields.map((field) => within(field, field.of(answer) ?? 0));
    const [only] = each;
    return each.length === 1 && only !== undefined ? only : xml("qti-and", {}, each);
  };
  // Ideas with one answer are told of together.
  const groups: { readonly answer: Answer; readonly slips: string[] }[] = [];
  for (const { slip, answer } of slipAnswers) {
    const same = groups.find((group) => apart(answer, group.answer, problem.case.tolerance) <= 1);
    if (same) same.slips.push(slip);
    else groups.push({ answer, slips: [slip] });
  }
  return {
    declarations: [
      ...fields.map((field) => responseOf(field.identifier, "float", figureText(field.of(truth) ?? 0))),
      xml("qti-response-declaration", {
        identifier: "NOT_YET",
        cardinality: "multiple",
        "base-type": "identifier",
      }),
    ],
    body: [
      ...fields.map(({ identifier, label, unit, isDirection }) =>
        xml(
          "p",
          {},
          `${label} `,
          xml("qti-text-entry-interaction", {
            "response-identifier": identifier,
            "expected-length": isDirection ? 3 : 6,
          }),
          ` ${unit}`,
        ),
      ),
      xml(
        "qti-choice-interaction",
        { "response-identifier": "NOT_YET", shuffle: false, "max-choices": 1 },
        xml("qti-simple-choice", { identifier: opaqueId(code, DONT_KNOW), fixed: true }, DONT_KNOW),
      ),
    ],
    processing: marking(
      told(truth),
      groups.map(({ answer, slips }) => ({ when: told(answer), slips })),
    ),
  };
}

const responseOf = (identifier: string, baseType: string, value: string): XmlElement =>
  xml(
    "qti-response-declaration",
    { identifier, cardinality: "single", "base-type": baseType },
    xml("qti-correct-response", {}, xml("qti-value", {}, value)),
  );

const variable = (identifier: string): XmlElement => xml("qti-variable", { identifier });

/** Right scores 1; a wrong answer that ideas explain names them. */
function marking(
  right: XmlElement,
  told: readonly { readonly when: XmlElement; readonly slips: readonly string[] }[],
): XmlElement {
  const set = (identifier: string, value: XmlChild): XmlElement =>
    xml("qti-set-outcome-value", { identifier }, value);
  return xml(
    "qti-response-condition",
    {},
    xml("qti-response-if", {}, right, set("SCORE", xml("qti-base-value", { "base-type": "float" }, "1"))),
    told.map(({ when, slips }) =>
      xml(
        "qti-response-else-if",
        {},
        when,
        set(
          "SLIP",
          xml(
            "qti-multiple",
            {},
            slips.map((slip) => xml("qti-base-value", { "base-type": "identifier" }, slip)),
          ),
        ),
      ),
    ),
  );
}

/** The response within its tolerance of a figure; of a direction also 360 degrees lower and higher, so that 359 is near 001. */
function within({ identifier, isDirection, tolerance }: Field, figure: number): XmlElement {
  const near = (value: number): XmlElement =>
    xml(
      "qti-equal",
      {
        "tolerance-mode": "absolute",
        tolerance: `${figureText(tolerance)} ${figureText(tolerance)}`,
        "include-lower-bound": true,
        "include-upper-bound": true,
      },
      variable(identifier),
      xml("qti-base-value", { "base-type": "float" }, figureText(value)),
    );
  if (!isDirection) return near(figure);
  return xml("qti-or", {}, [figure - 360, figure, figure + 360].map(near));
}

/** Without the crumbs of binary fractions, never in powers of ten. */
const figureText = (value: number): string => String(Number(value.toFixed(6)) + 0);
