/** The whole page takes files that are dropped on it, and says so while they are held over it. */

import type { JSX } from "preact";
import { useEffect, useState } from "preact/hooks";
import { droppedFiles, holdsFiles } from "./dropped-files.ts";
import type { GivenFile } from "./given-files.ts";

export interface DropPlaceProps {
  readonly onDropped: (given: readonly GivenFile[]) => void;
}

export function DropPlace({ onDropped }: DropPlaceProps): JSX.Element | null {
  const [held, setHeld] = useState(false);
  useEffect(() => {
    // Moving between elements leaves one after entering the next: only the last leaving counts.
    let inside = 0;
    const onEnter = (event: DragEvent) => {
      if (!holdsFiles(event.dataTransfer)) return;
      event.preventDefault();
      inside += 1;
      setHeld(true);
    };
    const onOver = (event: DragEvent) => {
      if (!holdsFiles(event.dataTransfer)) return;
      event.preventDefault();
      if (event.dataTransfer !== null) event.dataTransfer.dropEffect = "copy";
    };
    const onLeave = (event: DragEvent) => {
      if (!holdsFiles(event.dataTransfer)) return;
      inside = Math.max(0, inside - 1);
      if (inside === 0) setHeld(false);
    };
    const onDrop = (event: DragEvent) => {
      inside = 0;
      setHeld(false);
      if (event.dataTransfer === null || !holdsFiles(event.dataTransfer)) return;
      // Or the browser would leave the bench and show the file.
      event.preventDefault();
      void droppedFiles(event.dataTransfer).then(onDropped);
    };
    addEventListener("dragenter", onEnter);
    addEventListener("dragover", onOver);
    addEventListener("dragleave", onLeave);
    addEventListener("drop", onDrop);
    return () => {
      removeEventListener("dragenter", onEnter);
      removeEventListener("dragover", onOver);
      removeEventListener("dragleave", onLeave);
      removeEventListener("drop", onDrop);
    };
  }, [onDropped]);
  return held ? (
    <div class="drop-place" aria-hidden="true">
      <p>Drop a scene file here, with the station and land files it names; or a catalogue of stations</p>
    </div>
  ) : null;
}
