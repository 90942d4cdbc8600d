// npm test: install, find or install the browsers, then types, lint, build and every test; one closing line.
import { readFileSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { ensureInstalled, runTool } from "./ensure.mjs"
import { findOrInstallBrowser } from "./findBrowser.mjs"
import { findOrInstallEngines } from "./findEngines.mjs"

ensureInstalled()
process.env.CHROME_PATH = await findOrInstallBrowser()
Object.assign(process.env, findOrInstallEngines())

const report = join(tmpdir(), `partline-tests-${process.pid}.json`)
const steps = [
  ["types", () => runTool("typescript/bin/tsc", [])],
  ["lint", () => runTool("@biomejs/biome/bin/biome", ["check", "--error-on-warnings"])],
  ["build", () => runTool("vite/bin/vite.js", ["build", "--logLevel", "warn"])],
  [
    "tests",
    () =>
      runTool("vitest/vitest.mjs", [
        "run",
        "--reporter=default",
        "--reporter=json",
        "--reporter=./web/setup/secondTry.mjs",
        `--outputFile.json=${report}`,
      ]),
  ],
]

let failedSteps = 0
for (const [name, run] of steps) {
  try {
    run()
    console.log(`${name}: done`)
  } catch {
    failedSteps += 1
    console.error(`${name}: failed`)
  }
}
const { passed, failed, skipped } = readReport()
const brokenOtherwise = failed === 0 ? failedSteps : failedSteps - 1
const skippedToo = skipped > 0 ? `, ${skipped} skipped` : ""
console.log(`${passed} passed, ${failed + brokenOtherwise} failed${skippedToo}`)
process.exit(failedSteps === 0 && passed > 0 ? 0 : 1)

function readReport() {
  try {
    const { numPassedTests, numFailedTests, numPendingTests } = JSON.parse(readFileSync(report, "utf8"))
    return { passed: numPassedTests, failed: numFailedTests, skipped: numPendingTests }
  } catch {
    return { passed: 0, failed: 0, skipped: 0 }
  } finally {
    rmSync(report, { force: true })
  }
}
