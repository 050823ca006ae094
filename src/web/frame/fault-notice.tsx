/** What is wrong with a scene file, line by line. The scene on the bench stays as it is. */

import type { JSX } from "preact";
import { useEffect, useRef } from "preact/hooks";

export interface Notice {
  /** The file's name. */
  readonly name: string;
  /** What is wrong, one sentence each. */
  readonly lines: readonly string[];
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
      <h2 id="notice-title">{notice.name} cannot be opened; the present scene stays</h2>
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
