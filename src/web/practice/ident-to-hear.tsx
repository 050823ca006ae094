/** An ident to be listened to, heard and drawn in Morse code. */

import type { JSX } from "preact";
import { useEffect, useMemo } from "preact/hooks";
import type { Theme } from "../../draw/index.ts";
import type { Problem } from "../../practice/index.ts";
import { createIdentify } from "../sound/identify.ts";
import { IdentifyRow } from "../sound/identify-row.tsx";
import { createBench } from "../state/bench.ts";

export interface IdentToHearProps {
  readonly problem: Problem;
  readonly receiver: string;
  /** Whether the letters may be told: once the answer was given. */
  readonly told: boolean;
  readonly theme: Theme;
}

/** To hear the code is the question, so it sounds whatever is covered; its letters are not told. */
export function IdentToHear({ problem, receiver, told, theme }: IdentToHearProps): JSX.Element | null {
  const bench = useMemo(
    () =>
      createBench(
        { name: problem.code, origin: "demo" },
        { ...problem.case.scene, covers: told ? [] : [`${receiver}.frequency`] },
      ),
    [problem, receiver, told],
  );
  const identify = useMemo(() => createIdentify(bench), [bench]);
  useEffect(() => identify.close, [identify]);
  const reading = bench.situation.value.receivers.find(({ settings }) => settings.name === receiver);
  if (reading === undefined) return null;
  return (
    <div class="practice-ident">
      <p class="caption">Listen to {receiver}; the code is drawn too, for where no sound can be heard.</p>
      <IdentifyRow bench={bench} identify={identify} reading={reading} theme={theme} lit={false} />
    </div>
  );
}
