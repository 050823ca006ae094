/** Files that a person picked or dropped, as texts by path. */

import { decodeText, faultLine, largestBytes, tooBigFault } from "../../scene/index.ts";

/** One file as the browser hands it over. */
export interface GivenFile {
  /** From the folder it was dropped with; its name when it came alone. */
  readonly path: string;
  readonly file: File;
  /** Lets it be written back; null where the browser gives none. */
  readonly handle: FileSystemFileHandle | null;
}

export interface GivenTexts {
  readonly texts: ReadonlyMap<string, string>;
  /** Files that are no texts, one sentence each with the file's name. */
  readonly refused: readonly { readonly path: string; readonly line: string }[];
}

/** Their texts. What is too big is not even read. */
export async function textsOf(given: readonly GivenFile[]): Promise<GivenTexts> {
  const texts = new Map<string, string>();
  const refused: { path: string; line: string }[] = [];
  for (const { path, file } of given) {
    if (file.size > largestBytes(path)) {
      refused.push({ path, line: faultLine(tooBigFault(path, file.size)) });
      continue;
    }
    const bytes = await file.arrayBuffer().catch(() => null);
    if (bytes === null) {
      // A folder, or a file that went away between picking and reading.
      refused.push({ path, line: `${path} cannot be read; pick the file itself` });
      continue;
    }
    const decoded = decodeText(new Uint8Array(bytes), path);
    if (decoded.ok) texts.set(path, decoded.text);
    else refused.push({ path, line: faultLine(decoded.fault) });
  }
  return { texts, refused };
}

/** Files out of an input or a list: nothing but names. */
export const withoutHandles = (files: Iterable<File>): GivenFile[] =>
  [...files].map((file) => ({ path: file.webkitRelativePath || file.name, file, handle: null }));
