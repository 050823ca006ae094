/** What to call a file that leaves the bench. */

const LONGEST = 60;

/** A name that every system takes: letters, digits and dashes of any script; "scene" where nothing is left. */
export function fileStem(text: string): string {
  const stem = text
    .normalize("NFC")
    .replace(/[^\p{L}\p{M}\p{N}._-]+/gu, "-")
    .replace(/^[-.]+|[-.]+$/g, "");
  return (
    [...stem]
      .slice(0, LONGEST)
      .join("")
      .replace(/[-.]+$/, "") || "scene"
  );
}

/** The name a scene's file has or gets. */
export const sceneFileName = (name: string): string => `${fileStem(name)}.yaml`;
