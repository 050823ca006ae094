/** A button that steps once when pressed and goes on stepping while held. */

import type { ComponentChildren, JSX } from "preact";
import { useEffect, useRef } from "preact/hooks";

const REPEAT_AFTER_MS = 420;
const REPEAT_EVERY_MS = 70;

export interface HoldButtonProps {
  readonly label: string;
  readonly onStep: () => void;
  readonly children: ComponentChildren;
}

export function HoldButton({ label, onStep, children }: HoldButtonProps): JSX.Element {
  const step = useRef(onStep);
  step.current = onStep;
  const timer = useRef(0);
  const steppedByHold = useRef(false);
  const release = () => {
    clearTimeout(timer.current);
    timer.current = 0;
  };
  useEffect(() => release, []);
  const repeat = () => {
    steppedByHold.current = true;
    step.current();
    timer.current = window.setTimeout(repeat, REPEAT_EVERY_MS);
  };
  return (
    <button
      type="button"
      class="step-button"
      aria-label={label}
      title={label}
      onPointerDown={(event) => {
        if (event.button !== 0) return;
        steppedByHold.current = false;
        timer.current = window.setTimeout(repeat, REPEAT_AFTER_MS);
      }}
      onPointerUp={release}
      onPointerCancel={release}
      onPointerLeave={release}
      onContextMenu={(event) => event.preventDefault()}
      onClick={() => {
        if (!steppedByHold.current) step.current();
        steppedByHold.current = false;
      }}
    >
      {children}
    </button>
  );
}
