/** Digits typed at a thing that is no text field, such as a card: gathered until there are enough, forgotten when the hand pauses. */

import { useEffect, useState } from "preact/hooks";

/** A hand that pauses so long begins anew, ms. */
const BEGINS_ANEW_AFTER_MS = 2500;

export interface TypedDigits {
  readonly text: string;
  /** What was wrong with the digits last typed; empty when nothing. */
  readonly fault: string;
  /** Whether there is something to show. */
  readonly going: boolean;
  /** Takes a digit, Backspace or Escape while typing; false leaves the key to others. */
  readonly key: (event: KeyboardEvent) => boolean;
  readonly clear: () => void;
}

/** `take` gets the whole of them, and gives what is wrong with them or an empty text. */
export function useTypedDigits(digits: number, take: (text: string) => string): TypedDigits {
  const [text, setText] = useState("");
  const [fault, setFault] = useState("");
  const going = text !== "" || fault !== "";
  const clear = () => {
    setText("");
    setFault("");
  };
  useEffect(() => {
    if (text === "") return;
    const timer = setTimeout(() => setText(""), BEGINS_ANEW_AFTER_MS);
    return () => clearTimeout(timer);
  }, [text]);
  return {
    text,
    fault,
    going,
    clear,
    key: (event) => {
      if (event.ctrlKey || event.metaKey || event.altKey) return false;
      if (going && event.key === "Escape") clear();
      else if (text !== "" && event.key === "Backspace") setText(text.slice(0, -1));
      else if (/^\d$/.test(event.key)) {
        const now = text + event.key;
        setText(now.length < digits ? now : "");
        setFault(now.length < digits ? "" : take(now));
      } else {
        if (fault !== "") setFault("");
        return false;
      }
      event.preventDefault();
      return true;
    },
  };
}
