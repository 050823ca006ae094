/** The catalogue file: opened here or dropped here, what it held, what was left out of it, and how to have it forgotten. */

import type { JSX } from "preact";
import { useRef, useState } from "preact/hooks";
import {
  catalogueBeingRead,
  catalogueFault,
  clearCatalogueFault,
  forgetCatalogue,
  openCatalogue,
  takeCatalogue,
} from "./catalogue-state.ts";
import { LeftOutDialog } from "./left-out-dialog.tsx";

export function CatalogueFoot({ date }: { readonly date: string }): JSX.Element {
  const [over, setOver] = useState(false);
  const picker = useRef<HTMLInputElement>(null);
  const open = openCatalogue.value;
  const reading = catalogueBeingRead.value;
  const fault = catalogueFault.value;
  const take = (files: FileList | null | undefined) => {
    if (files && files.length > 0) void takeCatalogue([...files], date);
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: a file may be dropped here; the button below does the same by keys
    <footer
      class="catalogue-foot"
      data-over={over}
      onDragOver={(event) => {
        if (!event.dataTransfer?.types.includes("Files")) return;
        event.preventDefault();
        event.stopPropagation();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        event.preventDefault();
        event.stopPropagation();
        setOver(false);
        take(event.dataTransfer?.files);
      }}
    >
      {fault === null ? null : (
        <div class="catalogue-fault" role="alert">
          <p>
            <b>{fault.name} cannot be used.</b>
          </p>
          <ul>
            {fault.lines.slice(0, 6).map((line) => (
              <li key={line}>{line}</li>
            ))}
            {fault.lines.length > 6 ? <li>and {fault.lines.length - 6} more</li> : null}
          </ul>
          <button type="button" class="button" onClick={clearCatalogueFault}>
            Close this note
          </button>
        </div>
      )}
      <p role="status" data-catalogue="">
        {reading !== null ? (
          `Reading ${reading}…`
        ) : open === null ? (
          "The demo’s isles and this scene are searched. For the world, open a navaid table (CSV) or a station file of your own; it stays in this browser."
        ) : (
          <>
            <b>{open.catalogue.name}</b>: {open.catalogue.stations.length.toLocaleString("en")} stations
            {open.kept ? ", kept in this browser" : ", for this visit only: the browser would not keep it"}.
          </>
        )}
      </p>
      <div class="tool-buttons">
        <button
          type="button"
          class="button"
          disabled={reading !== null}
          onClick={() => picker.current?.click()}
        >
          {open === null ? "Open a catalogue…" : "Open another…"}
        </button>
        <input
          ref={picker}
          class="unseen"
          type="file"
          multiple
          tabIndex={-1}
          accept=".csv,.yaml,.yml"
          aria-label="Catalogue file"
          onChange={(event) => {
            const input = event.currentTarget;
            take(input.files);
            input.value = "";
          }}
        />
        {open === null ? null : (
          <>
            <LeftOutDialog catalogue={open.catalogue} />
            <button type="button" class="button" onClick={() => void forgetCatalogue()}>
              Forget it
            </button>
          </>
        )}
      </div>
    </footer>
  );
}
