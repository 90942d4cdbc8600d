// What start and host have in common: build the app, and load what serves it.
import { root } from "./ensure.mjs"

/** Builds the app; gives the folder it is in. */
export async function buildApp() {
  const { build } = await import("vite")
  await build({ root: `${root}/web`, configFile: `${root}/vite.config.ts`, logLevel: "warn" })
  return `${root}/dist`
}

/** A module of the project that is written in TypeScript, by its path from the top. */
export async function load(path) {
  const { runnerImport } = await import("vite")
  const { module } = await runnerImport(`${root}/${path}`, { root, configFile: false, logLevel: "error" })
  return module
}
