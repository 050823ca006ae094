import { describe, expect, it } from "vitest";
import { failureOf } from "./failure.ts";
import { CallFault, InputFault } from "./faults.ts";

describe("failureOf", () => {
  it("passes a fault of the input on as it is, with 1", () => {
    expect(failureOf(new InputFault("a.yaml:1:1 is empty"), "needlework read", false)).toEqual({
      text: "a.yaml:1:1 is empty",
      exitCode: 1,
    });
  });

  it("points from a fault of the call to the help, with 2", () => {
    expect(failureOf(new CallFault("-o needs a value"), "needlework ident", false)).toEqual({
      text: "needlework ident: -o needs a value; see needlework ident --help",
      exitCode: 2,
    });
  });

  it("says one sentence of its own fault, and shows the stack only when asked to", () => {
    const error = new TypeError("x is undefined\nand more");
    const { text, exitCode } = failureOf(error, "needlework read", false);
    expect(text).toMatch(
      /^needlework read: this should not have happened \(x is undefined\); run it again with/,
    );
    expect(text.split("\n")).toHaveLength(1);
    expect(exitCode).toBe(1);
    expect(failureOf(error, "needlework read", true).text).toContain(error.stack ?? "no stack");
    expect(failureOf("odd", "needlework", true).text).toContain("(odd)");
  });
});
