/** What is wrong with a scene file, line by line. The scene on the bench stays as it is. */

import type { JSX } from "preact";
import { useEffect, useRef } from "preact/hooks";

export interface Notice {
  /** The file's name. */
  readonly name: string;
  /** What is wrong, one sentence each. */
  readonly lines: readonly string[];
  /** What heads the sentences; that the file cannot be opened when not given. */
  readonly title?: string;
}

/** What a person is told of a scene that was read: what is wrong with it, or what to know of it; null when there is nothing to say. */
export function noticeOf(
  read: { readonly ok: true; readonly notes?: readonly string[] } | ({ readonly ok: false } & Notice) | null,
): Notice | null {
  if (read === null) return null;
  if (!read.ok) return read;
  const { notes = [] } = read;
  return notes.length === 0 ? null : { name: "", title: "Opened, with something to know", lines: notes };
}

export interface FaultNoticeProps {
  readonly notice: Notice;
  readonly onClose: () => void;
}

export function FaultNotice({ notice, onClose }: FaultNoticeProps): JSX.Element {
  const close = useRef<HTMLButtonElement>(null);
  useEffect(() => close.current?.focus(), [notice]);
  return (
    <section class="notice" role="alert" aria-labelledby="notice-title">
      <h2 id="notice-title">{notice.title ?? `${notice.name} cannot be opened; the present scene stays`}</h2>
      <ul>
        {notice.lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <button type="button" class="button" ref={close} onClick={onClose}>
        Close
      </button>
    </section>
  );
}
