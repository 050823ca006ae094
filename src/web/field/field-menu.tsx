/** The button that colours the chart. What it opens comes when it is first pressed. */

import type { JSX } from "preact";
import { useEffect, useId, useRef, useState } from "preact/hooks";
import { type FieldChoice, KIND_NAMES } from "../../draw/index.ts";
import type { Scene } from "../../scene/index.ts";
import type { FieldParts } from "./field-state.ts";

export interface FieldMenuProps {
  readonly scene: Scene;
  /** As `choiceFor` gives it. */
  readonly choice: FieldChoice;
  /** The receiver that a field is of at first. */
  readonly attended: string;
  readonly onChoose: (choice: FieldChoice) => void;
  /** Null until they have come. */
  readonly parts: FieldParts | null;
  readonly onOpen: () => void;
}

export function FieldMenu({ scene, choice, attended, onChoose, parts, onOpen }: FieldMenuProps): JSX.Element {
  const [isOpen, setOpen] = useState(false);
  const whole = useRef<HTMLDivElement>(null);
  const button = useRef<HTMLButtonElement>(null);
  const id = useId();
  useEffect(() => {
    if (!isOpen) return;
    const onPress = (event: PointerEvent) => {
      if (event.target instanceof Node && whole.current?.contains(event.target) !== true) setOpen(false);
    };
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== "Escape") return;
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
    <div class="tool-row field-menu" ref={whole}>
      <button
        type="button"
        data-on={choice !== null}
        ref={button}
        aria-expanded={isOpen}
        aria-controls={`${id}-panel`}
        title="Colour the chart by what the needle would show at every place"
        onClick={() => {
          if (!isOpen) onOpen();
          setOpen(!isOpen);
        }}
      >
        Field{choice === null ? "" : `: ${KIND_NAMES[choice.kind]}`}
      </button>
      {isOpen && parts !== null ? (
        <parts.FieldPanel
          id={`${id}-panel`}
          scene={scene}
          choice={choice}
          attended={attended}
          onChoose={onChoose}
        />
      ) : null}
    </div>
  );
}
