/** Where practice is kept in this browser: the record of answers, and the runs that are not finished. Nothing is sent anywhere. */

import type { PracticeEvent } from "./learner-record.ts";
import { readRecord, recordText } from "./record-file.ts";
import type { Run } from "./run.ts";
import { readRuns, runsText } from "./run-file.ts";

export const RECORD_KEY = "needlework.practice";
export const RUNS_KEY = "needlework.practice.runs";

export type Store = Pick<Storage, "getItem" | "setItem">;

export interface PracticeStore {
  readonly events: () => readonly PracticeEvent[];
  readonly runs: () => readonly Run[];
  /** False where the browser refuses to keep it. */
  readonly keepEvents: (events: readonly PracticeEvent[]) => boolean;
  readonly keepRuns: (runs: readonly Run[]) => boolean;
}

/** Where the store is refused or spoilt, practice begins empty and goes on without it. */
export function createPracticeStore(store: Store | null = browserStore()): PracticeStore {
  const get = (key: string): string | null => {
    try {
      return store?.getItem(key) ?? null;
    } catch {
      return null;
    }
  };
  const put = (key: string, text: string): boolean => {
    try {
      store?.setItem(key, text);
      return store !== null;
    } catch {
      return false;
    }
  };
  return {
    events: () => {
      const text = get(RECORD_KEY);
      const read = text === null ? null : readRecord(text);
      return read?.ok ? read.events : [];
    },
    runs: () => readRuns(get(RUNS_KEY)),
    keepEvents: (events) => put(RECORD_KEY, recordText(events)),
    keepRuns: (runs) => put(RUNS_KEY, runsText(runs)),
  };
}

function browserStore(): Store | null {
  try {
    return localStorage;
  } catch {
    return null;
  }
}
