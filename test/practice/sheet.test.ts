/** What the learner is given holds nothing of the key: on paper, as data, and in a QTI package. The key holds it all. */

import { describe, expect, it } from "vitest";
import {
  chartDescription,
  keyDocument,
  PRINT_THEME,
  panelSentence,
  sheetDocument,
  sheetPicture,
  THEMES,
} from "../../src/draw/index.ts";
import {
  type Answer,
  answerText,
  buildSet,
  DONT_KNOW,
  FORMS,
  keyData,
  keyProblems,
  letteredOptions,
  type Mode,
  makeProblem,
  optionText,
  type Problem,
  type ProblemSet,
  problemData,
  qtiPackage,
  SLIPS,
  sheetProblem,
  sheetProblems,
} from "../../src/practice/index.ts";
import { isCovered, type Situation } from "../../src/scene/index.ts";
import { PRACTICE_ISLES } from "../practice-world.ts";
import { allOf, readXml, type XmlNode } from "../xml-read.ts";

const HEAD = {
  title: "Reading",
  note: "",
  place: "The Ostrelle Isles",
  date: "1 July 2026",
  paper: "a4",
} as const;
const SIZE = { widthPx: 330, heightPx: 250, idPrefix: "p" };

function setOf(mode: Mode, count = 2 * FORMS.length): ProblemSet {
  const made = buildSet(PRACTICE_ISLES, { title: "Reading", skills: [], slips: [], count, seed: 7, mode });
  if (made.kind === "none") throw new Error(made.says);
  return made.set;
}

const SETS = { choose: setOf("choose"), tell: setOf("tell") };
const says = ({ situation }: Problem, view: "chart" | "panel") =>
  view === "chart" ? chartDescription(situation) : panelSentence(situation);

const picturesOf = ({
  drawings,
  situation,
}: Pick<ReturnType<typeof sheetProblem>, "drawings" | "situation">) =>
  drawings.map((drawing) => sheetPicture(drawing, situation, SIZE));

const paperOf = (set: ProblemSet) =>
  sheetDocument(
    HEAD,
    sheetProblems(set).map(({ situation, drawings, ...problem }) => ({
      ...problem,
      pictures: picturesOf({ situation, drawings }),
    })),
    DONT_KNOW,
  );

const qtiOf = (set: ProblemSet) =>
  qtiPackage(set, (problem) => [
    { path: `pictures/${problem.code}-panel.png`, words: "Panel.", widthPx: 4, heightPx: 3 },
  ]);

/** All that names a mistaken idea, and the reasons of the problems. */
const secretsOf = ({ problems }: ProblemSet): readonly string[] => [
  ...SLIPS.flatMap(({ id, name, refutation }) => [id, name, refutation]),
  ...problems.flatMap((problem) => problem.case.steps()),
];

const holds = (text: string, secrets: readonly string[]) => secrets.filter((secret) => text.includes(secret));

describe.each(["choose", "tell"] as const)("what a learner is given to %s", (mode) => {
  const set = SETS[mode];

  it("names no slip and gives no reason on paper, in words, pictures and file names", () => {
    const { main, files } = paperOf(set);
    const all = [main, ...files.keys(), ...files.values()].join("\n");
    expect(holds(all, secretsOf(set))).toEqual([]);
    expect([...files.keys()].filter((path) => !/^\/(data\.json|problem-\d+-\d\.svg)$/.test(path))).toEqual(
      [],
    );
  });

  it("has in its data file only what is shown", () => {
    const data: unknown = JSON.parse(paperOf(set).files.get("/data.json") ?? "");
    const keys = new Set<string>();
    const walk = (value: unknown): void => {
      if (Array.isArray(value)) value.forEach(walk);
      else if (typeof value === "object" && value !== null)
        for (const [key, inner] of Object.entries(value)) {
          keys.add(key);
          walk(inner);
        }
    };
    walk(data);
    const known =
      "title note place date paper caution dontKnow problems number code mode question given label value pictures path words answer kind options legend letter text unit figures name items";
    expect([...keys].filter((key) => !known.split(" ").includes(key))).toEqual([]);
  });

  it("names no slip and gives no reason as data", () => {
    const text = JSON.stringify(problemData(set, says));
    expect(holds(text, secretsOf(set))).toEqual([]);
  });

  it("names no slip in the body of a QTI item, nor in any file's name", () => {
    for (const [path, file] of qtiOf(set)) {
      expect(
        holds(
          path,
          SLIPS.map(({ id }) => id),
        ),
      ).toEqual([]);
      const body = /<qti-item-body>[\s\S]*<\/qti-item-body>/.exec(file)?.[0] ?? "";
      expect(path.startsWith("items/") ? body : "none").not.toBe("");
      expect(holds(body, secretsOf(set))).toEqual([]);
    }
  });
});

/** The same moment with other readings where its covers hide them. */
function otherUnderCovers(situation: Situation): Situation {
  const { covers } = situation.scene;
  return {
    ...situation,
    receivers: situation.receivers.map((reading) => {
      const hidden = (part: "needle" | "flag" | "dme") =>
        covers.includes("panel") || isCovered(covers, reading.settings.name, part);
      const deviationDeg = reading.deviationDeg === null ? null : reading.deviationDeg > 0 ? -6 : 6;
      return {
        ...reading,
        ...(hidden("needle") && reading.settings.face !== "rmi" ? { deviationDeg } : {}),
        ...(hidden("flag") && reading.flag !== "OFF" ? { flag: reading.flag === "TO" ? "FROM" : "TO" } : {}),
        ...(hidden("dme") && reading.dme !== null
          ? { dme: { ...reading.dme, distanceNm: reading.dme.distanceNm + 7, groundspeedKt: 41 } }
          : {}),
      };
    }),
  } as Situation;
}

describe("a picture on paper", () => {
  it("is the same whatever stands under the covers of the panel", () => {
    let hidden = 0;
    for (const problem of [...SETS.choose.problems, ...SETS.tell.problems]) {
      const { drawings, situation } = sheetProblem(problem, 1);
      const other = otherUnderCovers(situation);
      if (JSON.stringify(other.receivers) !== JSON.stringify(situation.receivers)) hidden += 1;
      const panels = drawings.filter(({ kind }) => kind !== "chart");
      expect(picturesOf({ drawings: panels, situation: other })).toEqual(
        picturesOf({ drawings: panels, situation }),
      );
    }
    expect(hidden).toBeGreaterThan(8);
  });

  it("has an empty instrument for a view that is covered, and a blank for a part of one", () => {
    const kinds = (id: (typeof FORMS)[number]["id"]) => {
      const made = makeProblem(PRACTICE_ISLES, id, "choose", 3);
      if (made.kind === "none") throw new Error(made.says);
      return sheetProblem(made.problem, 1);
    };
    expect(kinds("read-radial").drawings.map(({ kind }) => kind)).toEqual(["panel", "blank-rose"]);
    const { drawings, situation } = kinds("clearance-course");
    expect(drawings.map(({ kind }) => kind)).toEqual(["chart", "panel"]);
    const [, panel] = picturesOf({ drawings, situation });
    expect(panel?.svg).toContain('data-blank="course"');
    expect(panel?.svg).toContain('data-blank="TO/FROM"');
    // The needle is drawn in among the dots, which no box may hide.
    expect(panel?.svg.match(/data-blank="[^"]*"/g)).toEqual(['data-blank="TO/FROM"', 'data-blank="course"']);
    expect(panel?.svg).not.toContain("covered: ");
    const onScreen = sheetPicture({ kind: "panel" }, situation, { ...SIZE, theme: THEMES.light });
    expect(onScreen.svg).toContain("covered: course");
  });

  it("has the places to choose from on its chart, each where its option says, and none to tell", () => {
    const at = (mode: Mode) => {
      const made = makeProblem(PRACTICE_ISLES, "place-dot", mode, 5);
      if (made.kind === "none") throw new Error(made.says);
      return made.problem;
    };
    const problem = at("choose");
    const { drawings, situation } = sheetProblem(problem, 1);
    const [chart] = drawings;
    if (chart?.kind !== "chart") throw new Error("no chart");
    expect(chart.marks.map(({ letter, position }) => ({ letter, answer: position }))).toEqual(
      letteredOptions(problem).map(({ letter, answer }) => ({
        letter,
        answer: answer.kind === "place" ? answer.position : null,
      })),
    );
    const { svg } = sheetPicture(chart, situation, SIZE);
    const marks = [...svg.matchAll(/data-mark="(\w)" transform="translate\(([\d.-]+) ([\d.-]+)\)"/g)];
    expect(marks.map(([, letter]) => letter)).toEqual(chart.marks.map(({ letter }) => letter));
    for (const [, , x = "", y = ""] of marks) {
      expect(Math.abs(Number(x) - SIZE.widthPx / 2)).toBeLessThan(SIZE.widthPx * 0.4);
      expect(Math.abs(Number(y) - SIZE.heightPx / 2)).toBeLessThan(SIZE.heightPx * 0.4);
    }
    expect(sheetProblem(at("tell"), 1).drawings[0]).toEqual({ kind: "chart", marks: [] });
  });

  it("is drawn in shades of one ink", () => {
    for (const problem of SETS.choose.problems)
      for (const { svg } of picturesOf(sheetProblem(problem, 1)))
        for (const [, red, green, blue] of svg.matchAll(/#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})\b/g))
          expect([green, blue]).toEqual([red, red]);
    expect(PRINT_THEME.course).not.toBe(PRINT_THEME.radial);
  });
});

/** Forms whose very point is that the answer stands there: the pointer stays where it is seen, and the selector where it stood. */
const SHOWN: readonly string[] = ["rmi-after-twist", "course-after"];

describe("the words of a problem", () => {
  const SEEDS = Array.from({ length: 24 }, (_, seed) => seed);

  it.each(
    FORMS.filter(
      ({ answers, modes }) =>
        (answers === "direction" || answers === "quantity") && (modes as readonly string[]).includes("tell"),
    ).filter(({ id }) => !SHOWN.includes(id)),
  )("of the form $id do not give the answer away", ({ id }) => {
    const told = SEEDS.filter((seed) => {
      const made = makeProblem(PRACTICE_ISLES, id, "tell", seed);
      if (made.kind === "none") throw new Error(made.says);
      const { problem } = made;
      const { title, question, given } = sheetProblem(problem, 1);
      const views = problem.case.views.map((view) => says(problem, view));
      const words = [title, question, ...given.map(({ value }) => value), ...views].join(" ");
      return new RegExp(`(?<![\\d.])${answerText(problem.truth).replace(".", "\\.")}(?![\\d.])`).test(words);
    });
    // An answer may stand there by chance, or where who has it right reads a number off and others turn it round.
    expect(told.length / SEEDS.length).toBeLessThan(0.6);
  });

  it("do not give the answer away by its place among the options", () => {
    const places = SEEDS.map((seed) => {
      const made = makeProblem(PRACTICE_ISLES, "read-radial", "choose", seed);
      if (made.kind === "none") throw new Error(made.says);
      const { problem } = made;
      return letteredOptions(problem).findIndex(({ answer }) => answer === problem.truth);
    });
    expect(new Set(places).size).toBeGreaterThanOrEqual(3);
  });
});

describe("the key", () => {
  it("has the answer, what each wrong one tells in plain words, and the reasons", () => {
    for (const set of Object.values(SETS)) {
      const text = keyDocument(HEAD, keyProblems(set)).files.get("/data.json") ?? "";
      for (const problem of set.problems) {
        expect(text).toContain(JSON.stringify(answerText(problem.truth)).slice(1, -1));
        for (const step of problem.case.steps()) expect(text).toContain(JSON.stringify(step).slice(1, -1));
      }
      for (const key of keyProblems(set)) {
        expect(key.answers.filter(({ isRight }) => isRight)).toHaveLength(1);
        for (const { ideas } of key.answers)
          for (const idea of ideas) expect(SLIPS.map(({ name }) => name)).toContain(idea);
      }
      expect(keyProblems(set).some(({ answers }) => answers.some(({ ideas }) => ideas.length > 0))).toBe(
        true,
      );
    }
  });

  it("names the options of the data by the same ids", () => {
    const data = problemData(SETS.choose, says);
    for (const [at, { options, code }] of keyData(SETS.choose).entries()) {
      expect(data[at]?.code).toBe(code);
      const ids = data[at]?.options.map(({ id }) => id) ?? [];
      expect(new Set(ids).size).toBe(ids.length);
      expect(options.map(({ id }) => id)).toEqual(ids.slice(0, -1));
    }
  });
});

/** Marks a response by an item's own processing, as a delivery engine would. */
function marked(item: XmlNode, responses: Readonly<Record<string, string | number>>) {
  const outcomes: Record<string, readonly string[]> = { SCORE: ["0"], SLIP: [] };
  const value = (node: XmlNode): string | number | undefined =>
    node.name === "qti-variable" ? responses[node.attributes.identifier ?? ""] : node.text;
  const holdsTrue = (node: XmlNode): boolean => {
    const [first, second] = node.children;
    switch (node.name) {
      case "qti-and":
        return node.children.every(holdsTrue);
      case "qti-or":
        return node.children.some(holdsTrue);
      case "qti-match":
        return first !== undefined && second !== undefined && value(first) === value(second);
      case "qti-equal": {
        if (first === undefined || second === undefined) return false;
        const [below, above] = (node.attributes.tolerance ?? "").split(" ").map(Number);
        const away = Number(value(first)) - Number(value(second));
        return away >= -(below ?? 0) - 1e-6 && away <= (above ?? 0) + 1e-6;
      }
      default:
        throw new Error(`unknown test ${node.name}`);
    }
  };
  for (const branch of allOf(item, "qti-response-condition")[0]?.children ?? []) {
    const [when, ...sets] = branch.children;
    if (when === undefined || !holdsTrue(when)) continue;
    for (const set of sets)
      outcomes[set.attributes.identifier ?? ""] = allOf(set, "qti-base-value").map(({ text }) => text);
    break;
  }
  return outcomes;
}

/** What a learner with this answer would enter; null for a kind that is chosen. */
function entered(answer: Answer): Readonly<Record<string, number>> | null {
  switch (answer.kind) {
    case "direction":
      return { RESPONSE: answer.deg === 0 ? 360 : answer.deg };
    case "quantity":
      return { RESPONSE: answer.value };
    case "wind":
      return { FROM: answer.fromDeg, SPEED: answer.speedKt };
    case "row":
      return answer.figures;
    default:
      return null;
  }
}

describe("a QTI item", () => {
  it("scores the truth 1, and names the slips behind each wrong option", () => {
    const files = qtiOf(SETS.choose);
    for (const problem of SETS.choose.problems.filter(({ mode }) => mode === "choose")) {
      const item = readXml(files.get(`items/problem-${problem.code}.xml`) ?? "");
      const choices = allOf(item, "qti-simple-choice");
      const options = letteredOptions(problem);
      const texts = options.map((option) => optionText(problem, option));
      expect(choices.map(({ text }) => text)).toEqual([...texts, DONT_KNOW]);
      for (const [at, { attributes }] of choices.entries()) {
        const option = options[at];
        const isRight = option?.answer === problem.truth;
        const outcomes = marked(item, { RESPONSE: attributes.identifier ?? "" });
        expect(outcomes).toEqual({ SCORE: [isRight ? "1" : "0"], SLIP: option?.slips ?? [] });
      }
    }
  });

  it("takes figures within their tolerance, round by north too, and names the slips behind others", () => {
    const files = qtiOf(SETS.tell);
    let tried = 0;
    for (const problem of SETS.tell.problems) {
      const item = readXml(files.get(`items/problem-${problem.code}.xml`) ?? "");
      if (allOf(item, "qti-text-entry-interaction").length === 0) continue;
      tried += 1;
      expect(marked(item, entered(problem.truth) ?? {}).SCORE).toEqual(["1"]);
      const { deg } = problem.case.tolerance;
      if (problem.truth.kind === "direction" && deg !== undefined)
        for (const [away, score] of [
          [deg, "1"],
          [-deg, "1"],
          [deg + 0.5, "0"],
          [-deg - 0.5, "0"],
        ] as const) {
          const RESPONSE = (problem.truth.deg + away + 360) % 360;
          expect(marked(item, { RESPONSE }).SCORE).toEqual([score]);
        }
      for (const { slip, answer } of problem.slipAnswers) {
        const outcomes = marked(item, entered(answer) ?? {});
        expect(outcomes.SCORE).toEqual(["0"]);
        expect(outcomes.SLIP).toContain(slip);
      }
    }
    expect(tried).toBeGreaterThan(5);
  });

  it("keeps to the rules of the specification that hold for every package", () => {
    const set = { ...SETS.choose, title: "5 < 6 & “7”", note: "a\u0000b" };
    const files = qtiOf(set);
    const manifest = readXml(files.get("imsmanifest.xml") ?? "");
    expect(manifest.attributes.xmlns).toBe("http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1");
    expect(allOf(manifest, "schema")[0]?.text).toBe("QTI Package");
    expect(allOf(manifest, "schemaversion")[0]?.text).toBe("3.0.0");
    const resources = allOf(manifest, "resource");
    const hrefs = resources.map(({ attributes }) => attributes.href);
    expect([...files.keys()].filter((path) => path !== "imsmanifest.xml" && !hrefs.includes(path))).toEqual(
      [],
    );
    for (const { attributes, children } of resources) {
      expect(attributes.type).toMatch(/^imsqti_(item|test)_xmlv3p0$/);
      expect(children[0]).toMatchObject({ name: "file", attributes: { href: attributes.href } });
    }
    const test = readXml(files.get("test.xml") ?? "");
    expect(test.attributes.title).toBe("5 < 6 & “7”");
    const refs = allOf(test, "qti-assessment-item-ref").map(({ attributes }) => attributes.href ?? "");
    expect(refs).toEqual(set.problems.map(({ code }) => `items/problem-${code}.xml`));
    for (const href of refs) {
      const item = readXml(files.get(href) ?? "");
      expect(item.name).toBe("qti-assessment-item");
      expect(item.attributes).toMatchObject({
        xmlns: "http://www.imsglobal.org/xsd/imsqtiasi_v3p0",
        adaptive: "false",
        "time-dependent": "false",
      });
      // The order of an item's parts is fixed: responses, outcomes, body, processing.
      const order = item.children.map(({ name }) => PARTS.indexOf(name));
      expect(order).toEqual([...order].sort());
      expect(order).not.toContain(-1);
      const outcomes = allOf(item, "qti-outcome-declaration").map(({ attributes }) => attributes.identifier);
      expect(outcomes).toEqual(["SCORE", "SLIP", "SKILL"]);
      const declared = allOf(item, "qti-response-declaration").map(({ attributes }) => attributes.identifier);
      const asked = [...allOf(item, "qti-choice-interaction"), ...allOf(item, "qti-text-entry-interaction")];
      expect(asked.map(({ attributes }) => attributes["response-identifier"]).sort()).toEqual(
        [...declared].sort(),
      );
      // Identifiers are names: a letter first.
      for (const { attributes } of allOf(item, "qti-simple-choice"))
        expect(attributes.identifier).toMatch(/^[A-Za-z_][\w.-]*$/);
      for (const image of allOf(item, "img")) expect(image.attributes.alt).not.toBe("");
    }
  });
});

const PARTS = [
  "qti-response-declaration",
  "qti-outcome-declaration",
  "qti-item-body",
  "qti-response-processing",
];
