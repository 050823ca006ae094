export { buildServer, type ServerSettings } from "./app.ts";
export { listenOnLoopback, PortRefused } from "./listen.ts";
export type { PaperSource, PaperWanted } from "./paper-route.ts";
export type { SceneSettings, SceneSource } from "./scene-source.ts";
