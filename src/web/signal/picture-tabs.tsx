/** Chooses the picture of the signal. */

import type { JSX } from "preact";
import { PICTURE_NAMES, pictureChoice, SIGNAL_PICTURES } from "./picture-choice.ts";

export function PictureTabs(): JSX.Element | null {
  const { picture, several } = pictureChoice();
  if (several.value) return null;
  return (
    <fieldset class="tabs picture-tabs" aria-label="Picture of the signal">
      {SIGNAL_PICTURES.map((each) => (
        <button
          key={each}
          type="button"
          aria-pressed={picture.value === each}
          onClick={() => {
            picture.value = each;
          }}
        >
          {PICTURE_NAMES[each]}
        </button>
      ))}
    </fieldset>
  );
}
