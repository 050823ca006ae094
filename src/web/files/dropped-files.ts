/** Files out of a drop, those of a dropped folder with their paths in it. */

import type { GivenFile } from "./given-files.ts";

/** A folder with more files than this is some other folder. */
const MOST_FILES = 400;
const OURS = /\.(ya?ml|csv)$/i;

interface MayHaveHandle {
  getAsFileSystemHandle?: () => Promise<FileSystemHandle | null>;
}

/** Whether what is dragged over the page holds files. */
export const holdsFiles = (transfer: DataTransfer | null): boolean =>
  transfer?.types.includes("Files") ?? false;

/** Call it while the drop is handled: later the browser has forgotten what was dropped. */
export async function droppedFiles(transfer: DataTransfer): Promise<readonly GivenFile[]> {
  const items = [...transfer.items].filter(({ kind }) => kind === "file");
  // All asked for before the first is waited for.
  const asked = items.map((item) => ({
    handle: (item as MayHaveHandle).getAsFileSystemHandle?.().catch(() => null) ?? Promise.resolve(null),
    entry: item.webkitGetAsEntry(),
    file: item.getAsFile(),
  }));
  const given: GivenFile[] = [];
  for (const { handle, entry, file } of asked) {
    if (entry?.isDirectory === true) await gather(given, entry as FileSystemDirectoryEntry, `${entry.name}/`);
    else if (file !== null) {
      const found = await handle;
      given.push({
        path: file.name,
        file,
        handle: found?.kind === "file" ? (found as FileSystemFileHandle) : null,
      });
    }
  }
  return given;
}

/** Our kinds of files in a folder and the folders in it. */
async function gather(into: GivenFile[], folder: FileSystemDirectoryEntry, path: string): Promise<void> {
  const reader = folder.createReader();
  for (;;) {
    const entries = await new Promise<FileSystemEntry[]>((resolve) => {
      reader.readEntries(resolve, () => resolve([]));
    });
    if (entries.length === 0 || into.length >= MOST_FILES) return;
    for (const entry of entries.sort((a, b) => (a.name < b.name ? -1 : 1))) {
      if (entry.isDirectory) await gather(into, entry as FileSystemDirectoryEntry, `${path}${entry.name}/`);
      else if (OURS.test(entry.name) && into.length < MOST_FILES) {
        const file = await new Promise<File | null>((resolve) => {
          (entry as FileSystemFileEntry).file(resolve, () => resolve(null));
        });
        if (file !== null) into.push({ path: `${path}${entry.name}`, file, handle: null });
      }
    }
  }
}
