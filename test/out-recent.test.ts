/** Recent work: at most twelve entries, the newest first; a store that is spoilt, full or refused costs nothing but memory. */

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { createRecent, RECENT_KEY, type Store } from "../src/web/files/recent.ts";
import { type RecentEntry, recentFrom, recentText } from "../src/web/files/recent-entry.ts";

const entry = (id: string, more: Partial<RecentEntry> = {}): RecentEntry => ({
  id,
  name: `scene-${id}`,
  title: `Scene ${id}`,
  when: "2026-07-01T10:00:00.000Z",
  work: { kind: "link", link: `s1.${id}` },
  ...more,
});

/** A store as a browser's: texts only, and only so many characters. */
function storeOf(
  most = Number.POSITIVE_INFINITY,
  texts = new Map<string, string>(),
): Store & { texts: typeof texts } {
  return {
    texts,
    getItem: (key) => texts.get(key) ?? null,
    setItem: (key, text) => {
      if (text.length > most) throw new DOMException("full", "QuotaExceededError");
      texts.set(key, text);
    },
    removeItem: (key) => void texts.delete(key),
  };
}

const ids = (recent: ReturnType<typeof createRecent>): string[] => recent.entries.value.map(({ id }) => id);

describe("recent work", () => {
  it("is there again for the next page, the newest first", () => {
    const store = storeOf();
    const recent = createRecent(store);
    recent.keep(entry("a"));
    recent.keep(entry("b"));
    recent.keep(entry("a", { title: "Changed", work: { kind: "link", link: "s1.other" } }));
    expect(ids(recent)).toEqual(["a", "b"]);
    expect(createRecent(store).entries.value).toEqual(recent.entries.value);
    expect(recent.entries.value[0]?.title).toBe("Changed");
  });

  it("holds twelve, and forgets the oldest first", () => {
    const recent = createRecent(storeOf());
    for (let count = 1; count <= 14; count++) recent.keep(entry(String(count)));
    expect(ids(recent)).toHaveLength(12);
    expect(ids(recent)[11]).toBe("3");
  });

  it("holds the same work once", () => {
    const recent = createRecent(storeOf());
    recent.keep(entry("a"));
    recent.keep(entry("b", { work: entry("a").work }));
    expect(ids(recent)).toEqual(["b"]);
  });

  it("forgets one, and all", () => {
    const store = storeOf();
    const recent = createRecent(store);
    recent.keep(entry("a"));
    recent.keep(entry("b"));
    recent.forget("a");
    expect(ids(recent)).toEqual(["b"]);
    recent.forgetAll();
    expect(ids(recent)).toEqual([]);
    expect(store.texts.has(RECENT_KEY)).toBe(false);
  });

  it("keeps what another page has kept meanwhile", () => {
    const store = storeOf();
    const [one, other] = [createRecent(store), createRecent(store)];
    one.keep(entry("a"));
    other.keep(entry("b"));
    expect(ids(other)).toEqual(["b", "a"]);
  });

  it("gives up the oldest where the store is full", () => {
    const room = recentText([entry("a"), entry("b"), entry("c")]).length;
    const recent = createRecent(storeOf(room));
    for (const id of ["1", "2", "3", "4", "5"]) recent.keep(entry(id));
    expect(ids(recent)).toEqual(["5", "4", "3"]);
    const tiny = createRecent(storeOf(10));
    tiny.keep(entry("a"));
    expect(ids(tiny)).toEqual([]);
  });

  it("remembers for the life of the page where there is no store", () => {
    const recent = createRecent(null);
    recent.keep(entry("a"));
    expect(ids(recent)).toEqual(["a"]);
  });

  it("lives on where the store throws at every turn", () => {
    const refuse = (): never => {
      throw new DOMException("refused", "SecurityError");
    };
    const recent = createRecent({ getItem: refuse, setItem: refuse, removeItem: refuse });
    recent.keep(entry("a"));
    recent.forgetAll();
    expect(ids(recent)).toEqual([]);
  });
});

describe("a spoilt store", () => {
  it.each([
    "",
    "null",
    "[]",
    "{",
    '{"version":2,"entries":[]}',
    '{"version":1}',
    '{"version":1,"entries":[1,null,{}]}',
    recentText([entry("a b")]),
    recentText([entry("a", { when: "yesterday" })]),
    recentText([entry("a", { work: { kind: "text", path: "a", text: "b", files: [["c"]] } as never })]),
  ])("%j holds nothing", (text) => {
    expect(recentFrom(text)).toEqual([]);
  });

  it("gives the entries that are sound", () => {
    const text = JSON.stringify({ version: 1, entries: [{ id: 3 }, entry("a"), entry("a"), entry("b")] });
    expect(recentFrom(text).map(({ id }) => id)).toEqual(["a", "b"]);
  });

  it("never throws, whatever stands in it", () => {
    fc.assert(
      fc.property(fc.oneof(fc.json(), fc.string()), (text) => {
        const recent = createRecent(storeOf(undefined, new Map([[RECENT_KEY, text]])));
        recent.keep(entry("a"));
        expect(ids(recent)[0]).toBe("a");
      }),
      { numRuns: 300 },
    );
  });
});
