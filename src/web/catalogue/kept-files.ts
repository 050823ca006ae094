/**
 * The files of the last catalogue, kept in this browser and nowhere else. The files themselves are kept, not what was read from them,
 * so that a later edition reads them by its own rules. Where storage is refused nothing is kept, and the caller is told.
 */

import type { CatalogueFile } from "./read-catalogue.ts";

const DATABASE = "needlework-catalogue";
const STORE = "files";
const KEY = "catalogue";

function open(): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(DATABASE, 1);
    request.onupgradeneeded = () => request.result.createObjectStore(STORE);
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

async function inStore<T>(
  mode: IDBTransactionMode,
  work: (store: IDBObjectStore) => IDBRequest<T>,
): Promise<T> {
  const database = await open();
  try {
    return await new Promise<T>((resolve, reject) => {
      const transaction = database.transaction(STORE, mode);
      const request = work(transaction.objectStore(STORE));
      transaction.oncomplete = () => resolve(request.result);
      transaction.onabort = () => reject(transaction.error);
      transaction.onerror = () => reject(transaction.error);
    });
  } finally {
    database.close();
  }
}

/** Whether the files are kept; false where the browser refuses. */
export const keepFiles = (files: readonly CatalogueFile[]): Promise<boolean> =>
  inStore("readwrite", (store) => store.put(files, KEY)).then(
    () => true,
    () => false,
  );

/** The files kept; null when there are none, or none can be had. */
export const keptFiles = (): Promise<readonly CatalogueFile[] | null> =>
  inStore<readonly CatalogueFile[] | undefined>("readonly", (store) => store.get(KEY)).then(
    (files) => files ?? null,
    () => null,
  );

export const forgetFiles = (): Promise<void> =>
  inStore("readwrite", (store) => store.delete(KEY)).then(
    () => undefined,
    () => undefined,
  );
