/**
 * The line under the title: what the scene asks. Whoever prepares the scene edits it in place. What the scene is about often holds the
 * answer: it is not there while anything is covered.
 */

import { useComputed } from "@preact/signals";
import type { JSX } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import type { Bench } from "../state/bench.ts";
import { LONGEST_ASK } from "./cover-actions.ts";

export interface AskLineProps {
  readonly bench: Bench;
  /** Whether the question may be edited here: preparing, not projecting. */
  readonly editable: boolean;
}

export function AskLine({ bench, editable }: AskLineProps): JSX.Element {
  const about = useComputed(() => bench.scene.value.about).value;
  const ask = useComputed(() => bench.scene.value.ask).value;
  const covers = useComputed(() => bench.scene.value.covers).value;
  const [editing, setEditing] = useState(false);
  const edit = useRef<HTMLButtonElement>(null);
  const edited = useRef(false);
  useEffect(() => {
    if (!editing && edited.current) edit.current?.focus();
    edited.current = editing;
  }, [editing]);
  if (editable && editing)
    return (
      <AskEditor
        ask={ask}
        onDone={(text) => {
          if (text !== null) bench.act({ kind: "set-ask", ask: text });
          setEditing(false);
        }}
      />
    );
  const covered = covers.length > 0;
  const line = ask !== "" ? ask : covered ? "" : about;
  return (
    <div class="ask">
      <p>{line}</p>
      {ask === "" || about === "" || covered ? null : <About about={about} />}
      {editable ? (
        <button
          type="button"
          class="quiet ask-edit"
          aria-label={ask === "" ? "Ask a question" : "Edit the question"}
          ref={edit}
          onClick={() => setEditing(true)}
        >
          {ask === "" ? "Ask" : "Edit"}
        </button>
      ) : null}
    </div>
  );
}

/** What the scene shows: behind a word, for the one who wants it. */
const About = ({ about }: { readonly about: string }): JSX.Element => (
  <details class="more">
    <summary>About this scene</summary>
    <p class="sheet">{about}</p>
  </details>
);

interface AskEditorProps {
  readonly ask: string;
  /** With the new question; null when it stays as it was. */
  readonly onDone: (text: string | null) => void;
}

function AskEditor({ ask, onDone }: AskEditorProps): JSX.Element {
  const field = useRef<HTMLInputElement>(null);
  const [text, setText] = useState(ask);
  useEffect(() => field.current?.focus(), []);
  return (
    <form
      class="ask ask-editor"
      onSubmit={(event) => {
        event.preventDefault();
        onDone(text);
      }}
      onKeyDown={(event) => {
        if (event.key !== "Escape") return;
        event.preventDefault();
        event.stopPropagation();
        onDone(null);
      }}
    >
      <input
        ref={field}
        type="text"
        aria-label="The question this scene asks"
        placeholder="Which way is the course, and how far off it are you?"
        maxLength={LONGEST_ASK}
        value={text}
        onInput={(event) => setText(event.currentTarget.value)}
      />
      <button type="submit" class="button">
        Ask this
      </button>
    </form>
  );
}
