/** A learner's record taken out as a file, and taken in again: added to what this browser has, never in place of it. */

import type { JSX } from "preact";
import { useId, useState } from "preact/hooks";
import { download } from "../files/download.ts";
import type { Practice } from "./practice-state.ts";
import { RECORD_FILE, readRecord, recordText } from "./record-file.ts";

export function RecordInOut({ practice }: { readonly practice: Practice }): JSX.Element {
  const [said, setSaid] = useState("");
  const id = useId();
  const { events } = practice.learnt.value;
  const takeIn = async (file: File) => {
    const read = readRecord(await file.text());
    if (!read.ok) return setSaid(read.says);
    const before = practice.learnt.value.events.length;
    practice.takeIn(read.events);
    const added = practice.learnt.value.events.length - before;
    setSaid(
      added === 0
        ? "All of this record was here already."
        : `${added} ${added === 1 ? "entry" : "entries"} taken in.`,
    );
  };
  return (
    <section class="sheet" aria-labelledby={`${id}-title`}>
      <h3 id={`${id}-title`}>My record</h3>
      <p>To go on at another device, or to show an instructor: your answers as a file.</p>
      <p class="practice-acts">
        <button
          type="button"
          class="button"
          disabled={events.length === 0}
          onClick={() => {
            download(new Blob([recordText(events)], { type: "application/json" }), RECORD_FILE);
            setSaid(`${RECORD_FILE} is among your downloads.`);
          }}
        >
          Take my record out
        </button>
        <label class="button file-button">
          Take a record in…
          <input
            type="file"
            accept=".json"
            onChange={(event) => {
              const input = event.currentTarget;
              const [file] = input.files ?? [];
              if (file !== undefined)
                void takeIn(file).finally(() => {
                  input.value = "";
                });
            }}
          />
        </label>
      </p>
      <p class="note" role="status">
        {said}
      </p>
    </section>
  );
}
