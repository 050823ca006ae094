/** The set's name and the ways to hand it out: a link that opens in Practice, a file, paper. */

import type { JSX } from "preact";
import { useState } from "preact/hooks";
import { type ProblemSet, problemSetToLink, writeProblemSet } from "../../practice/index.ts";
import { type LinkWorld, LONGEST_LINK } from "../../scene/index.ts";
import { download } from "../files/download.ts";
import type { SetDesk } from "./set-desk.ts";
import type { Printed } from "./set-print.tsx";
import { PAPER_WORDS, type PaperSize, pdfName, typeset } from "./typeset.ts";

export interface HandOutProps {
  readonly desk: SetDesk;
  readonly set: ProblemSet;
  readonly world: LinkWorld;
  readonly onPrint: (what: Printed) => void;
}

export function HandOut({ desk, set, world, onPrint }: HandOutProps): JSX.Element {
  const [said, setSaid] = useState("");
  const [paper, setPaper] = useState<PaperSize>("a4");
  const link = problemSetToLink(set, world);
  const address = `${location.origin}${location.pathname}#${link}`;
  const tooLong = link.length > LONGEST_LINK;
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(address);
      setSaid("Copied: whoever opens it finds the set in Practice.");
    } catch {
      setSaid("This browser lets no page copy: take the link from the line beside.");
    }
  };
  const name = `${fileName(set.title)}.yaml`;
  const save = async (what: Printed) => {
    setSaid("Typesetting…");
    const made = await typeset(link, what, paper);
    if (typeof made === "string") return setSaid(made);
    const file = pdfName(fileName(set.title), what);
    download(made, file);
    setSaid(`${file} is among your downloads.`);
  };
  return (
    <section class="sheet set-hand" aria-label="Hand out">
      <div>
        <h2>{set.title}</h2>
        {set.note === "" ? null : <p>{set.note}</p>}
        <p class="caption">
          {set.problems.length === 1 ? "One problem" : `${set.problems.length} problems`} on {set.world.name}
        </p>
      </div>
      <p class="practice-acts">
        <button type="button" class="button primary" disabled={tooLong} onClick={() => void copy()}>
          Copy the link
        </button>
        <a class="button" href={`#${link}`}>
          Try it in Practice
        </a>
        <button
          type="button"
          class="button"
          onClick={() => {
            download(new Blob([writeProblemSet(set, { isles: world })], { type: "application/yaml" }), name);
            setSaid(`${name} is among your downloads.`);
          }}
        >
          Save as a file
        </button>
        <button type="button" class="button" disabled={!desk.canUndo.value} onClick={desk.undo}>
          Undo
        </button>
        <button type="button" class="button" disabled={!desk.canRedo.value} onClick={desk.redo}>
          Redo
        </button>
      </p>
      <p class="practice-acts set-paper">
        <label class="set-paper-size">
          <span>Paper</span>
          <select
            value={paper}
            onChange={(event) => setPaper(event.currentTarget.value === "letter" ? "letter" : "a4")}
          >
            {Object.entries(PAPER_WORDS).map(([size, words]) => (
              <option key={size} value={size}>
                {words}
              </option>
            ))}
          </select>
        </label>
        {(["sheet", "key"] as const).map((what) => (
          <button key={what} type="button" class="button" disabled={tooLong} onClick={() => void save(what)}>
            The {what} as PDF
          </button>
        ))}
        {(["sheet", "key"] as const).map((what) => (
          <button key={what} type="button" class="button" onClick={() => onPrint(what)}>
            Print the {what}
          </button>
        ))}
      </p>
      <p class="note" role="status">
        {tooLong ? "These stations make the link too long: hand out the file." : said}
      </p>
    </section>
  );
}

/** Letters and digits of the title, for a file. */
const fileName = (title: string): string =>
  title
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "") || "problems";
