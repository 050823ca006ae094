/**
 * The browser's file pickers, where it has them: what they give can be written back to the very file. Elsewhere, and where a page may
 * not use them (inside another page), files are picked by an input and saved as downloads.
 */

import { type GivenFile, withoutHandles } from "./given-files.ts";

interface PickerType {
  readonly description: string;
  readonly accept: Readonly<Record<string, readonly string[]>>;
}

/** The part of the File System Access API that TypeScript's page types leave out. */
interface Pickers {
  showOpenFilePicker?: (options: {
    multiple: boolean;
    types: readonly PickerType[];
    id: string;
  }) => Promise<readonly FileSystemFileHandle[]>;
  showSaveFilePicker?: (options: {
    suggestedName: string;
    types: readonly PickerType[];
    id: string;
  }) => Promise<FileSystemFileHandle>;
}

interface Permissions {
  queryPermission?: (wanted: { mode: "readwrite" }) => Promise<PermissionState>;
  requestPermission?: (wanted: { mode: "readwrite" }) => Promise<PermissionState>;
}

const pickers = (): Pickers => window as unknown as Pickers;

const ENDINGS = [".yaml", ".yml", ".csv"];
const SCENE_FILES: PickerType = { description: "Scene", accept: { "application/yaml": [".yaml", ".yml"] } };
const ALL_FILES: PickerType = {
  description: "Scene, station and land files",
  accept: { "application/yaml": [".yaml", ".yml"], "text/csv": [".csv"] },
};
/** So that the browser opens the folder last used here. */
const FOLDER = "needlework-scenes";

const isAbort = (error: unknown): boolean => error instanceof DOMException && error.name === "AbortError";

/** Lets a person pick files; empty when he turned away. */
export async function pickFiles(): Promise<readonly GivenFile[]> {
  const open = pickers().showOpenFilePicker;
  if (open !== undefined)
    try {
      const handles = await open.call(window, { multiple: true, types: [ALL_FILES], id: FOLDER });
      return Promise.all(
        handles.map(async (handle) => ({ path: handle.name, file: await handle.getFile(), handle })),
      );
    } catch (error) {
      if (isAbort(error)) return [];
    }
  return pickByInput();
}

function pickByInput(): Promise<readonly GivenFile[]> {
  return new Promise((resolve) => {
    const input = document.createElement("input");
    input.type = "file";
    input.multiple = true;
    input.accept = ENDINGS.join();
    input.hidden = true;
    const done = (files: readonly GivenFile[]) => {
      input.remove();
      resolve(files);
    };
    input.addEventListener("change", () => done(withoutHandles(input.files ?? [])));
    input.addEventListener("cancel", () => done([]));
    document.body.append(input);
    input.click();
  });
}

/** A file of the person's choice to write to: "none" where the browser has no such picker, null when he turned away. */
export async function pickPlace(suggestedName: string): Promise<FileSystemFileHandle | "none" | null> {
  const save = pickers().showSaveFilePicker;
  if (save === undefined) return "none";
  try {
    return await save.call(window, { suggestedName, types: [SCENE_FILES], id: FOLDER });
  } catch (error) {
    return isAbort(error) ? null : "none";
  }
}

/** Whether the page may write to the file, asking if need be. */
export async function mayWrite(handle: FileSystemFileHandle): Promise<boolean> {
  const { queryPermission, requestPermission } = handle as unknown as Permissions;
  const wanted = { mode: "readwrite" } as const;
  if (queryPermission === undefined || (await queryPermission.call(handle, wanted)) === "granted")
    return true;
  return (await requestPermission?.call(handle, wanted)) === "granted";
}

/** Puts the text in the file's place, all of it or none. */
export async function writeTo(handle: FileSystemFileHandle, text: string): Promise<void> {
  const writable = await handle.createWritable();
  await writable.write(text);
  await writable.close();
}
