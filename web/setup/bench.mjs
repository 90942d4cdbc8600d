// npm run bench: build, then measure in real Chromium and in Node; prints the table that DEVELOPERS.md keeps.
import { ensureInstalled, root, runTool } from "./ensure.mjs"
import { findOrInstallBrowser } from "./findBrowser.mjs"

ensureInstalled()
process.env.CHROME_PATH = await findOrInstallBrowser()
runTool("vite/bin/vite.js", ["build", "--logLevel", "warn"])
const { runnerImport } = await import("vite")
const { module } = await runnerImport(`${root}/tests/bench/run.ts`, {
  root,
  configFile: false,
  logLevel: "error",
})
console.log(module.table)
process.exit(0)
