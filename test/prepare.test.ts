import { mkdirSync, mkdtempSync, readFileSync, rmSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { buildDist, distIsFresh, inputFiles } from "../scripts/dist.mjs";
import { withLock } from "../scripts/lock.mjs";
import { installModules, modulesAreFresh, npmInstalledTheSame } from "../scripts/modules.mjs";
import { nodeComplaint, OLDEST_NODE } from "../scripts/node-version.mjs";
import { runChild } from "../scripts/run-child.mjs";

let root = "";
const path = (name: string) => join(root, name);
const put = (name: string, text: string) => {
  mkdirSync(join(path(name), ".."), { recursive: true });
  writeFileSync(path(name), text);
};

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), "needlework-"));
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

describe("the build's freshness", () => {
  // With no entry of any part there is nothing to compile, and only the marks are made.
  beforeEach(async () => {
    put("src/radio/ident.ts", "export const a = 1;");
    put("demo/scenes/one.yaml", "scene: 1");
    put("package-lock.json", "{}");
    await buildDist(root);
  });

  it("holds after a build", () => {
    expect(distIsFresh(root)).toBe(true);
  });

  it.each([
    ["a source changes", () => put("src/radio/ident.ts", "export const a = 2;")],
    ["a source is added", () => put("src/radio/morse.ts", "")],
    ["a source is removed", () => rmSync(path("src/radio/ident.ts"))],
    ["a demo file changes", () => put("demo/scenes/one.yaml", "scene: 2")],
    ["the lock file changes", () => put("package-lock.json", "{ }")],
    ["the stamp is cut short", () => put("dist/.stamp.json", '{"quick":')],
    ["dist is gone", () => rmSync(path("dist"), { recursive: true })],
  ])("ends when %s", (_, change) => {
    change();
    expect(distIsFresh(root)).toBe(false);
  });

  it("outlives a change of times alone, and then is quick to see again", () => {
    const before = readFileSync(path("dist/.stamp.json"), "utf8");
    utimesSync(path("src/radio/ident.ts"), 1, 1);
    expect(distIsFresh(root)).toBe(true);
    expect(readFileSync(path("dist/.stamp.json"), "utf8")).not.toBe(before);
    expect(distIsFresh(root)).toBe(true);
  });

  it("does not hang on tests", () => {
    put("src/radio/ident.test.ts", "");
    expect(distIsFresh(root)).toBe(true);
    expect(inputFiles(root)).not.toContain(join("src", "radio", "ident.test.ts"));
  });
});

describe("the packages' freshness", () => {
  const lock = (packages: object) => JSON.stringify({ packages: { "": { name: "x" }, ...packages } });
  const yaml = { version: "2.9.1", integrity: "sha512-a" };
  const install = (packages: object) => put("node_modules/.package-lock.json", JSON.stringify({ packages }));

  it("needs the stamp of the present lock file", async () => {
    put("package-lock.json", lock({ "node_modules/yaml": yaml }));
    expect(modulesAreFresh(root)).toBe(false);
    install({ "node_modules/yaml": yaml });
    await installModules(root);
    expect(modulesAreFresh(root)).toBe(true);
    put("package-lock.json", lock({ "node_modules/yaml": { ...yaml, version: "2.9.2" } }));
    expect(modulesAreFresh(root)).toBe(false);
  });

  it.each([
    ["the same packages", { "node_modules/yaml": yaml }, true],
    [
      "no optional package of another system",
      { "node_modules/yaml": yaml, "node_modules/o": undefined },
      true,
    ],
    ["another version", { "node_modules/yaml": { ...yaml, version: "2.9.0" } }, false],
    ["other contents of one version", { "node_modules/yaml": { ...yaml, integrity: "sha512-b" } }, false],
    ["a package too few", {}, false],
    ["a package too many", { "node_modules/yaml": yaml, "node_modules/zod": yaml }, false],
  ])("sees what npm installed: %s", (_, installed, same) => {
    put(
      "package-lock.json",
      lock({ "node_modules/yaml": yaml, "node_modules/o": { ...yaml, optional: true } }),
    );
    install(installed);
    expect(npmInstalledTheSame(root)).toBe(same);
  });

  it("is not there without npm's record", () => {
    put("package-lock.json", lock({}));
    expect(npmInstalledTheSame(root)).toBe(false);
  });
});

describe("the lock", () => {
  it("lets one work at a time, across processes", async () => {
    const log = path("log");
    put("log", "");
    const lockModule = fileURLToPath(new URL("../scripts/lock.mjs", import.meta.url));
    const script = `
      import { appendFileSync } from "node:fs";
      import { setTimeout as sleep } from "node:timers/promises";
      import { withLock } from ${JSON.stringify(lockModule)};
      await withLock(${JSON.stringify(path("a/lock"))}, async () => {
        appendFileSync(${JSON.stringify(log)}, "(");
        await sleep(50);
        appendFileSync(${JSON.stringify(log)}, ")");
      });`;
    const run = () => runChild(process.execPath, ["--input-type=module", "--eval", script], { cwd: root });
    const ended = await Promise.all([run(), run(), run()]);
    expect(ended.map(({ code, output }) => ({ code, output }))).toEqual(
      Array(3).fill({ code: 0, output: "" }),
    );
    expect(readFileSync(log, "utf8")).toBe("()()()");
  });

  it("is taken over from an owner that has gone", async () => {
    const gone = await runChild(process.execPath, ["--print", "process.pid"], { cwd: root });
    put("lock", gone.stdout.trim());
    expect(await withLock(path("lock"), async () => "done")).toBe("done");
  });

  it("is given back when the work fails", async () => {
    await expect(withLock(path("lock"), () => Promise.reject(new Error("no")))).rejects.toThrow("no");
    expect(await withLock(path("lock"), async () => "done")).toBe("done");
  });
});

describe("the Node version", () => {
  it.each(["20.19.0", "20.20.2", "22.0.0", "24.1.0"])("%s will do", (version) => {
    expect(nodeComplaint(version)).toBeNull();
  });
  it.each(["12.22.0", "18.20.4", "20.18.9"])("%s is refused in one sentence", (version) => {
    expect(nodeComplaint(version)).toContain(
      `needs Node ${OLDEST_NODE} or newer, and this is Node ${version}`,
    );
  });
  it("agrees with package.json", () => {
    const text = readFileSync(new URL("../package.json", import.meta.url), "utf8");
    expect((JSON.parse(text) as { engines: { node: string } }).engines.node).toBe(`>=${OLDEST_NODE}`);
  });
});
