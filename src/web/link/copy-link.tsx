/** Copies the address of the whole present scene. Where the browser gives no clipboard, the address is shown to be copied by hand. */

import type { JSX } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import type { LinkView, LinkWorld } from "../../scene/index.ts";
import type { Bench } from "../state/bench.ts";
import { presentLink } from "./follow-address.ts";

export interface CopyLinkProps {
  readonly bench: Bench;
  readonly world: LinkWorld;
  readonly view?: () => LinkView | null;
  /** Tells the person in a sentence what came of it. */
  readonly say: (sentence: string) => void;
  readonly class?: string;
}

const COPIED_FOR_MS = 2400;

/** The address that opens the scene on a bench like this one. */
const addressOf = (link: string): string => `${location.origin}${location.pathname}#${link}`;

export function CopyLink({
  bench,
  world,
  view,
  say,
  class: className = "button",
}: CopyLinkProps): JSX.Element {
  const [copied, setCopied] = useState(false);
  const [byHand, setByHand] = useState<string | null>(null);
  useEffect(() => {
    if (!copied) return;
    const timer = setTimeout(() => setCopied(false), COPIED_FOR_MS);
    return () => clearTimeout(timer);
  }, [copied]);
  const copy = async () => {
    const link = presentLink({ bench, world, ...(view === undefined ? {} : { view }) });
    if (link === null) {
      say("This scene is too large for a link; save its file instead.");
      return;
    }
    try {
      await navigator.clipboard.writeText(addressOf(link));
      setCopied(true);
      say("Link copied: the whole scene is in it.");
    } catch {
      // No clipboard on an unsafe page, or the person has refused it.
      setByHand(addressOf(link));
    }
  };
  return (
    <>
      <button type="button" class={className} onClick={copy}>
        {copied ? "Copied" : "Copy link"}
      </button>
      {byHand === null ? null : <LinkByHand address={byHand} onClose={() => setByHand(null)} />}
    </>
  );
}

/** The address in a field, marked whole, for the person's own copying. */
function LinkByHand(props: { readonly address: string; readonly onClose: () => void }): JSX.Element {
  const dialog = useRef<HTMLDialogElement>(null);
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => {
    dialog.current?.showModal();
    field.current?.select();
  }, []);
  return (
    <dialog ref={dialog} class="sheet" aria-labelledby="link-title" onClose={props.onClose}>
      <header class="dialog-head">
        <h2 id="link-title">The link of this scene</h2>
        <button type="button" class="button" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </header>
      <div class="dialog-foot">
        <label class="link-by-hand">
          <span class="note">This browser does not let the bench copy. Copy it here:</span>
          <input
            ref={field}
            type="text"
            readOnly
            value={props.address}
            onFocus={(event) => event.currentTarget.select()}
          />
        </label>
      </div>
    </dialog>
  );
}
