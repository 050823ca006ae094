import { once } from "node:events";
import { existsSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { needlework, ROOT, startNeedlework } from "./cli.ts";

const SCENE = "demo/scenes/02-read-the-radial.yaml";

/** Starts the bench, hands over its address, ends it as Ctrl-C does, and gives what became of it. */
async function withBench(args: readonly string[], work: (address: string) => Promise<void>) {
  const child = startNeedlework(["bench", ...args]);
  let out = "";
  let err = "";
  child.stderr.on("data", (chunk) => {
    err += chunk;
  });
  const address = await new Promise<string>((resolve, reject) => {
    child.stdout.on("data", (chunk) => {
      out += chunk;
      const found = /http:\/\/\S+/.exec(out)?.[0];
      if (found !== undefined) resolve(found);
    });
    child.on("close", () => reject(new Error(`the bench ended early: ${err}`)));
  });
  const closed = once(child, "close");
  try {
    await work(address);
  } finally {
    child.kill("SIGINT");
  }
  const [code] = await closed;
  return { code: code as number | null, out, err };
}

describe("needlework bench", () => {
  it("prints its address, shows the page, and Ctrl-C ends it cleanly", async () => {
    expect(existsSync(join(ROOT, "dist/web/index.html"))).toBe(true);
    const ended = await withBench([], async (address) => {
      const page = await fetch(address);
      expect(page.status).toBe(200);
      expect(await page.text()).toContain("<title>Needlework</title>");
      expect((await fetch(`${address}/api/scene`)).status).toBe(204);
    });
    expect(ended.code).toBe(0);
    expect(ended.out).toMatch(/^The bench is open at http:\/\/127\.0\.0\.1:\d+\n$/);
    expect(ended.err).toBe("Ctrl-C ends it.\n");
  });

  it("opens on a scene, and another program on the chosen port is told in a sentence", async () => {
    const ended = await withBench([SCENE], async (address) => {
      const served = (await (await fetch(`${address}/api/scene`)).json()) as { scene: { file: string } };
      expect(served.scene.file).toBe("02-read-the-radial.yaml");
      const second = await needlework(["bench", "--port", new URL(address).port]);
      expect(second.code).toBe(2);
      expect(second.stderr).toContain(
        `port ${new URL(address).port} is taken by another program; choose another`,
      );
      expect(second.stderr.trim().split("\n")).toHaveLength(1);
    });
    expect(ended.code).toBe(0);
  });

  it("tells a scene at fault before it starts", async () => {
    const { code, stdout, stderr } = await needlework(["bench", "demo/none.yaml"]);
    expect({ code, stdout, stderr }).toEqual({
      code: 1,
      stdout: "",
      stderr: "demo/none.yaml: no such file or folder\n",
    });
  });
});
