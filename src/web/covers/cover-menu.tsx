/** The list of what can be covered, ticked where it is; by mouse, touch and key, opened by C from anywhere. */

import { useComputed } from "@preact/signals";
import type { JSX } from "preact";
import { useEffect, useId, useRef, useState } from "preact/hooks";
import type { Bench } from "../state/bench.ts";
import { askingOf } from "./asking.ts";
import { type CoverGroup, coverGroups } from "./cover-words.ts";

/** Where a C is a letter, or belongs to something that lies over the table. */
const TYPING =
  "input:not([type=checkbox], [type=radio], [type=range]), select, textarea, [contenteditable], dialog[open]";

export function CoverMenu({ bench }: { readonly bench: Bench }): JSX.Element {
  const [isOpen, setOpen] = useState(false);
  const whole = useRef<HTMLDivElement>(null);
  const button = useRef<HTMLButtonElement>(null);
  const list = useRef<HTMLDivElement>(null);
  const id = useId();
  const covers = useComputed(() => bench.scene.value.covers).value;
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const wanted = event.key.toLowerCase() === "c" && !(event.ctrlKey || event.metaKey || event.altKey);
      const typing = event.target instanceof Element && event.target.closest(TYPING) !== null;
      if (!wanted || typing || event.defaultPrevented) return;
      event.preventDefault();
      if (isOpen) button.current?.focus();
      setOpen(!isOpen);
    };
    addEventListener("keydown", onKey);
    return () => removeEventListener("keydown", onKey);
  }, [isOpen]);
  useEffect(() => {
    if (!isOpen) return;
    list.current?.querySelector<HTMLElement>("input")?.focus();
    const onPress = (event: PointerEvent) => {
      if (event.target instanceof Node && whole.current?.contains(event.target) !== true) setOpen(false);
    };
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== "Escape") return;
      event.preventDefault();
      event.stopPropagation();
      setOpen(false);
      button.current?.focus();
    };
    addEventListener("pointerdown", onPress, true);
    addEventListener("keydown", onKey, true);
    return () => {
      removeEventListener("pointerdown", onPress, true);
      removeEventListener("keydown", onKey, true);
    };
  }, [isOpen]);
  return (
    <div class="cover-menu" ref={whole}>
      <button
        type="button"
        class="button"
        ref={button}
        aria-expanded={isOpen}
        aria-controls={`${id}-list`}
        aria-keyshortcuts="C"
        title="Hide a part of the scene, to ask about it (C)"
        onClick={() => setOpen(!isOpen)}
      >
        Cover{covers.length === 0 ? "" : ` (${covers.length})`}
      </button>
      {isOpen ? (
        <section class="sheet cover-list" id={`${id}-list`} aria-label="Covers" ref={list}>
          <p class="note">
            What is covered is left out of the pictures, the words and the reasons, here and in a figure.
          </p>
          <div class="cover-groups">
            {coverGroups(bench.scene.value).map((group) => (
              <Group key={group.title} bench={bench} group={group} />
            ))}
          </div>
          <p class="ask-buttons">
            <button
              type="button"
              class="button"
              onClick={() => {
                askingOf(bench).pointing.value = true;
                setOpen(false);
              }}
            >
              Cover by pointing
            </button>
            <button
              type="button"
              class="button"
              disabled={covers.length === 0}
              onClick={() => bench.act({ kind: "lift-covers" })}
            >
              Lift all covers
            </button>
          </p>
          <p class="note">
            A link or a file of this scene holds all of it, what is covered too: who takes it apart finds the
            answer there.
          </p>
        </section>
      ) : null}
    </div>
  );
}

function Group({ bench, group }: { readonly bench: Bench; readonly group: CoverGroup }): JSX.Element {
  const { covers } = bench.scene.value;
  return (
    <fieldset>
      <legend>{group.title}</legend>
      {group.coverables.map(({ cover, short, long }) => (
        <label key={cover}>
          <input
            type="checkbox"
            checked={covers.includes(cover)}
            aria-label={long}
            onChange={(event) =>
              bench.act({ kind: event.currentTarget.checked ? "put-cover" : "lift-cover", cover })
            }
          />
          {short}
        </label>
      ))}
    </fieldset>
  );
}
