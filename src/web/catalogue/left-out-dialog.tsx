/** The rows of a catalogue that could not be used, and those that were used with a doubt, each with its line and the reason. */

import type { JSX } from "preact";
import { useRef } from "preact/hooks";
import type { Catalogue } from "./read-catalogue.ts";

/** More lines than this nobody reads; the count says how many there are. */
const MOST_LINES = 400;

export function LeftOutDialog({ catalogue }: { readonly catalogue: Catalogue }): JSX.Element | null {
  const dialog = useRef<HTMLDialogElement>(null);
  const { name, skipped, notes } = catalogue;
  if (skipped.length + notes.length === 0) return null;
  const noted = notes.map(({ line, ident, note }) => ({ line, reason: `${ident}: ${note}` }));
  return (
    <>
      <button type="button" class="button" onClick={() => dialog.current?.showModal()}>
        {skipped.length === 0 ? "Notes" : `${skipped.length.toLocaleString("en")} left out`}
      </button>
      <dialog ref={dialog} class="sheet" aria-labelledby="left-out-title">
        <header class="dialog-head">
          <h2 id="left-out-title">{name}, row by row</h2>
          <button type="button" class="button" onClick={() => dialog.current?.close()}>
            Close
          </button>
        </header>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a long list is read by scrolling, with keys too */}
        <section class="left-out" tabIndex={0} aria-label="Rows">
          <Rows title="Left out" rows={skipped} />
          <Rows title="Kept, with a note" rows={noted} />
        </section>
      </dialog>
    </>
  );
}

interface RowsProps {
  readonly title: string;
  readonly rows: readonly { readonly line: number; readonly reason: string }[];
}

function Rows({ title, rows }: RowsProps): JSX.Element | null {
  if (rows.length === 0) return null;
  return (
    <>
      <h3>
        {title}: {rows.length.toLocaleString("en")}
      </h3>
      <ul>
        {rows.slice(0, MOST_LINES).map(({ line, reason }) => (
          <li key={`${line} ${reason}`}>
            <span class="digits">line {line}</span> {reason}
          </li>
        ))}
        {rows.length > MOST_LINES ? (
          <li>and {(rows.length - MOST_LINES).toLocaleString("en")} more</li>
        ) : null}
      </ul>
    </>
  );
}
