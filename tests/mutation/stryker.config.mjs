import { room, rooms } from "./rooms.mjs"

/** Changes one room of the product in one place after another, and sees whether a test of that room notices. */
export default {
  testRunner: "room",
  plugins: [`${import.meta.dirname}/runner.mjs`],
  buildCommand: "node tests/mutation/build.mjs",
  mutate: [`${rooms[room].folder}/**/*.ts`],
  coverageAnalysis: "perTest",
  concurrency: 1,
  timeoutMS: 20_000,
  timeoutFactor: 4,
  dryRunTimeoutMinutes: 20,
  tempDirName: ".mutation",
  // Nothing is to be rewritten in `tsconfig.json`.
  tsconfigFile: "none",
  ignorePatterns: ["dist", "*.log"],
  reporters: ["clear-text", "json", "progress-append-only"],
  clearTextReporter: { allowColor: false, reportTests: false, logTests: false },
  jsonReporter: { fileName: `.mutation/${room}.json` },
}
