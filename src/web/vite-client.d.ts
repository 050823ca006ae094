/// <reference types="vite/client" />

/** Made by the plugin in vite.web.config.ts. Numbers stand for what scenes share. */
declare module "virtual:demo-scenes" {
  type Scene = import("../scene/index.ts").Scene;
  export const DEMO: {
    readonly shared: readonly (
      | import("../radio/index.ts").Station
      | import("../radio/index.ts").Land
      | null
    )[];
    readonly entries: readonly {
      readonly key: string;
      readonly scene: Omit<Scene, "land" | "stations"> & {
        readonly land: number;
        readonly stations: readonly number[];
      };
    }[];
  };
}
