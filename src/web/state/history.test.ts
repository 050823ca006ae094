import { describe, expect, it } from "vitest";
import { beginHistory, carryOn, LONGEST_PAST, record, redo, undo } from "./history.ts";

describe("history", () => {
  it("takes back one change at a time, and brings it again", () => {
    const after = record(record(beginHistory("a"), "b", null), "c", null);
    expect(undo(after).present).toBe("b");
    expect(undo(undo(after)).present).toBe("a");
    expect(redo(undo(undo(after))).present).toBe("b");
    expect(redo(redo(undo(undo(after)))).present).toBe("c");
  });

  it("takes back a whole gesture at once", () => {
    let drag = record(beginHistory(0), 1, "drag");
    for (let at = 2; at <= 100; at++) drag = record(drag, at, "drag");
    expect(drag.past).toEqual([0]);
    expect(undo(drag).present).toBe(0);
  });

  it("keeps two gestures of the same hand apart", () => {
    const twice = record(record(beginHistory(0), 1, "drag 1"), 2, "drag 2");
    expect(undo(twice).present).toBe(1);
  });

  it("does not carry a gesture on after it was taken back", () => {
    const back = undo(record(record(beginHistory(0), 1, "drag"), 2, "next"));
    expect(undo(record(back, 5, "drag")).present).toBe(1);
  });

  it("forgets what was taken back once something else is done", () => {
    const other = record(undo(record(beginHistory("a"), "b", null)), "c", null);
    expect(redo(other)).toBe(other);
  });

  it("stays as it is at either end, and when nothing changes", () => {
    const start = beginHistory("a");
    expect(undo(start)).toBe(start);
    expect(redo(start)).toBe(start);
    expect(record(start, "a", "drag")).toBe(start);
  });

  it("takes back what went on by itself with the gesture that began it, and lets a gesture go on meanwhile", () => {
    const flight = carryOn(carryOn(record(beginHistory(0), 1, "flight"), 2), 3);
    expect(undo(flight).present).toBe(0);
    expect(redo(undo(flight)).present).toBe(3);
    const turned = record(carryOn(record(flight, 10, "turn"), 11), 20, "turn");
    expect(turned.past).toEqual([0, 3]);
    expect(undo(turned).present).toBe(3);
    expect(carryOn(undo(turned), 4).future).toEqual([]);
    expect(carryOn(flight, 3)).toBe(flight);
  });

  it("forgets the oldest first", () => {
    let long = beginHistory(0);
    for (let at = 1; at <= LONGEST_PAST + 10; at++) long = record(long, at, null);
    expect(long.past).toHaveLength(LONGEST_PAST);
    expect(long.past[0]).toBe(10);
  });
});
