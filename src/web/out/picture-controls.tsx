/** How large a picture is made, and whether the ground around the sheets is left empty. Remembered from one time to the next. */

import type { Signal } from "@preact/signals";
import type { JSX } from "preact";
import { useEffect, useMemo, useState } from "preact/hooks";
import { remembered } from "../state/preferences.ts";
import type { PictureLook } from "./make-picture.ts";
import { pictureSize, SIZE_CHOICES, type SizeChoice, sizeText } from "./picture-size.ts";

export interface LookState {
  readonly size: Signal<SizeChoice>;
  readonly transparent: Signal<boolean>;
  /** As chosen, for the screen as it is now. */
  readonly now: () => PictureLook;
}

export const usePictureLook = (): LookState =>
  useMemo(() => {
    const size = remembered<SizeChoice>(
      "picture-size",
      "wide",
      (text) => SIZE_CHOICES.find((known) => known === text) ?? null,
      (value) => value,
    );
    const transparent = remembered<boolean>(
      "picture-transparent",
      false,
      (text) => text === "yes",
      (value) => (value ? "yes" : "no"),
    );
    return {
      size,
      transparent,
      now: () => ({ ...pictureSize(size.value, window), transparent: transparent.value }),
    };
  }, []);

const WORDS: Readonly<Record<SizeChoice, string>> = {
  wide: "Slide 16:9",
  slide: "Slide 4:3",
  screen: "As on screen",
};

export function PictureControls({ look }: { readonly look: LookState }): JSX.Element {
  const { size, transparent } = look;
  const screen = useScreen();
  return (
    <>
      <label class="pick">
        <span class="unseen">Size of the picture</span>
        <select
          value={size.value}
          onChange={(event) => {
            const wanted = event.currentTarget.value;
            size.value = SIZE_CHOICES.find((known) => known === wanted) ?? "wide";
          }}
        >
          {SIZE_CHOICES.map((choice) => (
            <option key={choice} value={choice}>
              {`${WORDS[choice]}, ${sizeText(pictureSize(choice, screen))}`}
            </option>
          ))}
        </select>
      </label>
      <label class="tick">
        <input
          type="checkbox"
          checked={transparent.value}
          onChange={(event) => {
            transparent.value = event.currentTarget.checked;
          }}
        />
        <span>Empty ground</span>
      </label>
    </>
  );
}

/** The window's size, followed while it changes. */
function useScreen(): Parameters<typeof pictureSize>[1] {
  const read = () => ({
    innerWidth: window.innerWidth,
    innerHeight: window.innerHeight,
    devicePixelRatio: window.devicePixelRatio,
  });
  const [screen, setScreen] = useState(read);
  useEffect(() => {
    const onResize = () => setScreen(read());
    addEventListener("resize", onResize);
    return () => removeEventListener("resize", onResize);
  }, []);
  return screen;
}
