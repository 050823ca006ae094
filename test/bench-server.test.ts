import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { FastifyInstance } from "fastify";
import { afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { benchPaper } from "../src/cli/bench-paper.ts";
import { readIsles } from "../src/cli/isles.ts";
import { readText } from "../src/cli/text-files.ts";
import { buildSet, problemSetToLink } from "../src/practice/index.ts";
import { openNothing, readScene } from "../src/scene/index.ts";
import { buildServer, listenOnLoopback, PortRefused, type SceneSource } from "../src/server/index.ts";
import { PRACTICE_ISLES } from "./practice-world.ts";

const STATIONS = `stations: 1
list:
  - { ident: HJL, name: Haldrey, kind: VOR, frequency: 113.90, at: [-10.33, 1.45], elevation: 1240, declination: 10W }
`;
const SCENE = `scene: 1
title: First
date: 2026-06-01
stations: ../all.stations.yaml
aircraft: { at: HJL 090/10, heading: 090, altitude: 3500, tas: 100 }
receivers:
  - { name: NAV1, tune: HJL, course: 070 }
`;

let root = "";
let app: FastifyInstance;
const told: unknown[] = [];
const put = (name: string, text: string) => {
  mkdirSync(join(root, name, ".."), { recursive: true });
  writeFileSync(join(root, name), text);
};
const get = (url: string, headers: Record<string, string> = {}) => app.inject({ url, headers });

async function start(scenePath: string | null) {
  const today = () => "2026-06-01";
  const scene = scenePath === null ? null : { path: join(root, scenePath), readText, today };
  app = await buildServer({
    webFolder: join(root, "web"),
    scene,
    paper: benchPaper,
    tellFault: (error) => told.push(error),
  });
}

beforeEach(async () => {
  root = mkdtempSync(join(tmpdir(), "needlework-"));
  told.length = 0;
  put("web/index.html", "<!doctype html><title>Bench</title>");
  put("web/assets/main-abc123.js", "export {};");
  put("web/.secret", "secret");
  put("outside.txt", "secret");
  put("own/all.stations.yaml", STATIONS);
  put("own/scenes/one.yaml", SCENE);
  await start("own/scenes/one.yaml");
});
afterEach(async () => {
  await app.close();
  rmSync(root, { recursive: true });
});

describe("the page", () => {
  it("is served at the root and asked for anew each time", async () => {
    const answer = await get("/");
    expect(answer.statusCode).toBe(200);
    expect(answer.headers["content-type"]).toContain("text/html");
    expect(answer.headers["cache-control"]).toBe("no-cache");
  });

  it("has parts that may be kept for ever, since their names carry their content", async () => {
    const answer = await get("/assets/main-abc123.js");
    expect(answer.headers["content-type"]).toContain("javascript");
    expect(answer.headers["cache-control"]).toBe("public, max-age=31536000, immutable");
  });

  it("is answered by not modified when the browser has it", async () => {
    const etag = String((await get("/")).headers.etag);
    expect((await get("/", { "if-none-match": etag })).statusCode).toBe(304);
  });

  it("may load nothing from elsewhere, nor be framed", async () => {
    for (const url of ["/", "/assets/main-abc123.js", "/api/scene", "/none"]) {
      const { headers } = await get(url);
      const policy = String(headers["content-security-policy"]);
      expect(policy).toContain("default-src 'none'");
      expect(policy).toContain("frame-ancestors 'none'");
      expect(policy).not.toContain("unsafe");
      expect(policy).not.toMatch(/https?:|\*/);
      expect(headers["x-content-type-options"]).toBe("nosniff");
    }
  });

  it.each([
    "/../outside.txt",
    "/%2e%2e/outside.txt",
    "/..%2foutside.txt",
    "/assets/..%2f..%2foutside.txt",
    "/assets/%2e%2e/%2e%2e/outside.txt",
    "/..%5coutside.txt",
    "//etc/passwd",
    "/.secret",
    "/none.html",
    "/assets/",
  ])("does not give %s", async (url) => {
    const answer = await get(url);
    expect(answer.statusCode).toBe(404);
    expect(answer.json()).toEqual({ code: "not-found", message: "there is nothing at this address" });
  });
});

describe("the host", () => {
  it.each(["127.0.0.1:4173", "localhost:4173", "LOCALHOST", "[::1]:80"])(
    "%s is this machine",
    async (host) => {
      expect((await get("/", { host })).statusCode).toBe(200);
    },
  );
  it.each([
    "evil.example",
    "localhost.evil.example",
    "127.0.0.1.evil.example:4173",
    "127.0.0.2",
    "evil.example:127",
  ])("%s is refused, for the page and the data", async (host) => {
    for (const url of ["/", "/api/scene", "/assets/main-abc123.js"]) {
      const answer = await get(url, { host });
      expect(answer.statusCode).toBe(403);
      expect(answer.json()).toMatchObject({ code: "bad-host" });
    }
  });
});

describe("the scene", () => {
  const served = async () => (await get("/api/scene")).json() as SceneSource;

  it("comes with the files that it names, by their paths from it", async () => {
    const answer = await get("/api/scene");
    expect(answer.headers["cache-control"]).toBe("no-store");
    expect(answer.json()).toEqual({
      scene: { file: "one.yaml", text: SCENE },
      files: [{ path: "../all.stations.yaml", text: STATIONS }],
    });
  });

  it("is read anew when the file changes", async () => {
    put("own/scenes/one.yaml", SCENE.replace("First", "Second"));
    expect((await served()).scene.text).toContain("title: Second");
    put("own/all.stations.yaml", `# moved\n${STATIONS}`);
    expect((await served()).files[0]?.text).toContain("# moved");
  });

  it("follows files through files, wherever they lie", async () => {
    put("elsewhere/more.stations.yaml", STATIONS);
    const nested = `stations: 1\ninclude: more.stations.yaml\n`;
    put("elsewhere/nested.stations.yaml", nested);
    const absolute = join(root, "elsewhere/nested.stations.yaml");
    put("own/scenes/one.yaml", SCENE.replace("../all.stations.yaml", absolute));
    const folder = join(root, "elsewhere").replace(/^\//, "");
    expect((await served()).files.map((file) => file.path)).toEqual([
      `${folder}/nested.stations.yaml`,
      `${folder}/more.stations.yaml`,
    ]);
  });

  it("is given even when it is at fault, so that the page can say why", async () => {
    put("own/scenes/one.yaml", SCENE.replace("course: 070", "course: 999"));
    const { scene } = await served();
    expect(readScene(scene.text, { path: scene.file, open: openNothing }).ok).toBe(false);
  });

  it("is refused in a sentence when it is gone or no text", async () => {
    rmSync(join(root, "own/scenes/one.yaml"));
    const gone = await get("/api/scene");
    expect(gone.statusCode).toBe(422);
    expect(gone.json()).toEqual({ code: "scene-unreadable", message: "one.yaml: no such file or folder" });
    put("own/scenes/one.yaml", "%PDF-1.7\u0000");
    expect((await get("/api/scene")).json()).toMatchObject({ code: "scene-unreadable" });
  });

  it("is none when the bench was started without", async () => {
    await app.close();
    await start(null);
    const answer = await get("/api/scene");
    expect({ status: answer.statusCode, body: answer.body }).toEqual({ status: 204, body: "" });
  });
});

describe("a request of another form", () => {
  it("is refused with code and message", async () => {
    expect((await get("/api/scene?path=/etc/passwd")).json()).toMatchObject({ code: "bad-request" });
    const post = await app.inject({ method: "POST", url: "/api/scene" });
    expect(post.statusCode).toBe(404);
    expect(post.json()).toMatchObject({ code: "not-found" });
  });

  it("that brings the server itself down to a fault says nothing of its inside, and the terminal is told", async () => {
    await app.close();
    const path = join(root, "own/scenes/one.yaml");
    const readNothing = () => {
      throw new Error("inner words");
    };
    app = await buildServer({
      webFolder: join(root, "web"),
      scene: { path, readText: readNothing, today: () => "2026-06-01" },
      paper: benchPaper,
      tellFault: (error) => told.push(error),
    });
    const answer = await get("/api/scene");
    expect(answer.statusCode).toBe(500);
    expect(answer.json()).toEqual({
      code: "server-fault",
      message: "the server failed; its terminal says why",
    });
    expect(told).toEqual([new Error("inner words")]);
  });
});

describe("listening", () => {
  it("is on this machine alone, and a taken port is told", async () => {
    const address = await listenOnLoopback(app, null);
    expect(address).toMatch(/^http:\/\/127\.0\.0\.1:\d+$/);
    const port = Number(new URL(address).port);
    const other = await buildServer({
      webFolder: join(root, "web"),
      scene: null,
      paper: benchPaper,
      tellFault: () => undefined,
    });
    await expect(listenOnLoopback(other, port)).rejects.toThrow(PortRefused);
    await other.close();
  });

  it("takes a free port when the usual one is taken", async () => {
    const [one, two] = await Promise.all(
      [0, 1].map(() =>
        buildServer({
          webFolder: join(root, "web"),
          scene: null,
          paper: benchPaper,
          tellFault: () => undefined,
        }),
      ),
    );
    const first = await listenOnLoopback(one!, null);
    const second = await listenOnLoopback(two!, null);
    expect(second).not.toBe(first);
    await Promise.all([one!.close(), two!.close()]);
  });
});

describe("paper", () => {
  const built = buildSet(PRACTICE_ISLES, {
    skills: ["centre-and-read"],
    slips: [],
    count: 2,
    seed: 1,
    mode: "choose",
  });
  if (built.kind === "none") throw new Error(built.says);
  let link = "";
  beforeAll(async () => {
    link = problemSetToLink(built.set, await readIsles());
  });
  const ask = (body: unknown) =>
    app.inject({
      method: "POST",
      url: "/api/paper",
      headers: { host: "127.0.0.1" },
      payload: body as object,
    });

  it.each(["sheet", "key"])("is typeset from the link of a set: the %s", async (what) => {
    const answer = await ask({ link, what, paper: "letter" });
    expect(answer.statusCode).toBe(200);
    expect(answer.headers["content-type"]).toBe("application/pdf");
    expect(answer.rawPayload.subarray(0, 5).toString()).toBe("%PDF-");
  });

  it("is refused in a sentence where the link or the wish is broken", async () => {
    const broken = await ask({ link: "p1.nonsense", what: "sheet", paper: "a4" });
    expect(broken.statusCode).toBe(422);
    expect(broken.json()).toEqual({ code: "set-unreadable", message: expect.stringContaining("link") });
    const odd = await ask({ link, what: "answers", paper: "a4" });
    expect(odd.statusCode).toBe(400);
    expect(told).toEqual([]);
  });
});
