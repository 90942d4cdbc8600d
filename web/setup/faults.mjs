// npm run faults: build, then the whole campaign of kills, mutated files, missing parts, full disks and two tabs. Minutes long.
import { ensureInstalled, runTool } from "./ensure.mjs"
import { findOrInstallBrowser } from "./findBrowser.mjs"

ensureInstalled()
process.env.CHROME_PATH = await findOrInstallBrowser()
process.env.PARTLINE_FAULTS = "long"
runTool("vite/bin/vite.js", ["build", "--logLevel", "warn"])
runTool("vitest/vitest.mjs", ["run", "--project", "faults"])
