/** What leaves the bench: the link, the scene's file, pictures, print. A sheet laid over the table; every end is told in one line. */

import type { ComponentChildren, JSX } from "preact";
import { useEffect, useId, useRef } from "preact/hooks";
import { demoWorld } from "../files/demo-world.ts";
import { download } from "../files/download.ts";
import { fileStem } from "../files/file-name.ts";
import type { SceneDesk } from "../files/scene-desk.ts";
import { CopyLink } from "../link/copy-link.tsx";
import type { Bench } from "../state/bench.ts";
import { canCopyPictures, copyPicture } from "./clipboard.ts";
import { makePicture, type PictureKind } from "./make-picture.ts";
import { PictureControls, usePictureLook } from "./picture-controls.tsx";
import type { Said } from "./said.ts";
import { SaidLine } from "./said-line.tsx";
import type { Shown } from "./shown.ts";

export interface ShareMenuProps {
  readonly bench: Bench;
  readonly desk: SceneDesk;
  readonly said: Said;
  /** How often the menu was asked for; each time it opens. */
  readonly asked: number;
  /** What files of the present scene are called, without their endings. */
  readonly name: () => string;
  /** What a picture shows, read when one is made. */
  readonly shown: () => Shown;
  readonly print: () => void;
}

export function ShareMenu({ bench, desk, said, asked, name, shown, print }: ShareMenuProps): JSX.Element {
  const dialog = useRef<HTMLDialogElement>(null);
  const busy = useRef(false);
  const look = usePictureLook();
  useEffect(() => {
    if (asked === 0 || dialog.current?.open === true) return;
    said.hush();
    dialog.current?.showModal();
  }, [asked]);
  useEffect(() => {
    // A press beside the sheet puts it away, as Escape does.
    const sheet = dialog.current;
    const onPress = (event: MouseEvent) => {
      if (event.target === sheet) sheet?.close();
    };
    sheet?.addEventListener("click", onPress);
    return () => sheet?.removeEventListener("click", onPress);
  }, []);
  const close = () => dialog.current?.close();

  /** One thing at a time: a second press while a picture is made is let pass. */
  const run = async (doing: string, work: () => Promise<readonly string[]>) => {
    if (busy.current) return;
    busy.current = true;
    said.say(`${doing}…`);
    try {
      said.say(...(await work()));
    } catch (error) {
      said.say(`that did not work: ${error instanceof Error ? error.message : String(error)}`);
    } finally {
      busy.current = false;
    }
  };
  const savePicture = (kind: PictureKind) =>
    run(`Making the ${kind.toUpperCase()}`, async () => {
      const { blob, note } = await makePicture(kind, shown(), look.now());
      const file = `${fileStem(name())}.${kind}`;
      download(blob, file);
      return [`${file} saved`, ...(note === null ? [] : [note])];
    });
  const copyPng = () =>
    run("Copying the picture", async () => {
      const png = makePicture("png", shown(), look.now()).then(({ blob }) => blob);
      return [
        (await copyPicture(png))
          ? "Picture copied"
          : "The browser did not let the picture be copied; save the PNG instead",
      ];
    });
  const printIt = () => {
    close();
    print();
  };
  const open = () => {
    close();
    void desk.pick();
  };
  return (
    <dialog ref={dialog} class="sheet share" aria-labelledby="share-title">
      <header class="dialog-head">
        <h2 id="share-title">Share, save, print</h2>
        <button type="button" class="button" onClick={close}>
          Close
        </button>
      </header>
      <div class="share-parts">
        <Part title="Link" note="The whole scene is in it. Nothing is sent anywhere.">
          <CopyLink bench={bench} world={demoWorld()} view={() => shown().chartView} say={said.say} />
        </Part>
        <Part title="Scene file" note="Plain text: your comments and the order of keys stay as they are.">
          <Action onPress={desk.save} keys="Control+S">
            Save scene
          </Action>
          <Action onPress={open} keys="Control+O">
            Open scene…
          </Action>
        </Part>
        <Part title="Picture" note="The views as they are on the screen, covers and all.">
          <PictureControls look={look} />
          <span class="share-break" />
          <Action onPress={() => savePicture("png")}>PNG</Action>
          <Action onPress={() => savePicture("svg")}>SVG</Action>
          <Action onPress={() => savePicture("pdf")}>PDF</Action>
          {canCopyPictures() ? <Action onPress={copyPng}>Copy picture</Action> : null}
        </Part>
        <Part title="Paper" note="One landscape page, in ink on white.">
          <Action onPress={printIt} keys="Control+P">
            Print
          </Action>
        </Part>
      </div>
      <SaidLine said={said} />
    </dialog>
  );
}

interface PartProps {
  readonly title: string;
  readonly note: string;
  readonly children: ComponentChildren;
}

function Part({ title, note, children }: PartProps): JSX.Element {
  const id = useId();
  return (
    <section class="share-part" aria-labelledby={id}>
      <h3 id={id}>{title}</h3>
      <p class="note">{note}</p>
      <div class="share-actions">{children}</div>
    </section>
  );
}

interface ActionProps {
  readonly onPress: () => unknown;
  /** The keys that do the same, as `aria-keyshortcuts` has them. */
  readonly keys?: string;
  readonly children: string;
}

const Action = ({ onPress, keys, children }: ActionProps): JSX.Element => (
  <button type="button" class="button" aria-keyshortcuts={keys} onClick={() => void onPress()}>
    {children}
    {keys === undefined ? null : (
      <span class="keys" aria-hidden="true">
        {keys.replace("Control+", "Ctrl ")}
      </span>
    )}
  </button>
);
