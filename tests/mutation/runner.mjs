import { readFileSync, writeFileSync } from "node:fs"
import { Script } from "node:vm"
import { commonTokens, declareClassPlugin, PluginKind, tokens } from "@stryker-mutator/api/plugin"
import {
  DryRunStatus,
  determineHitLimitReached,
  TestStatus,
  toMutantRunResult,
} from "@stryker-mutator/api/test-runner"
import {
  ASYMMETRIC_MATCHERS_OBJECT,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
} from "@vitest/expect"
import * as chai from "chai"
import { testsOf } from "./rooms.mjs"

for (const plugin of [JestExtend, JestChaiExpect, JestAsymmetricMatchers]) chai.use(plugin)

const expect = Object.assign(
  (value, message) => chai.expect(value, message),
  chai.expect,
  globalThis[ASYMMETRIC_MATCHERS_OBJECT],
)

/** What the product changes under a mutant, and what it tells of it. */
globalThis.__stryker__ ??= {}
const seen = globalThis.__stryker__

/** A test that takes the processor longer is not run on mutants: hundreds would wait for it. Its room is held without it. */
const mostMs = 1000
const quickList = "built/quick.json"
const onLoading = "while the file is loaded"

/**
 * Runs the built tests of a room within its own process: the code of a file is compiled once and evaluated anew for each
 * mutant, so that nothing a plan remembered under one is found under the next.
 */
class RoomRunner {
  static inject = tokens(commonTokens.options)

  capabilities() {
    return { reloadEnvironment: true }
  }

  async init() {
    this.files = testsOf().map((name, i) => ({ name, script: compiled(`built/${i}.js`) }))
  }

  async dryRun() {
    seen.activeMutant = undefined
    seen.hitCount = undefined
    const tests = []
    for (const file of this.files) {
      seen.currentTestId = onLoading
      const all = await collected(file)
      seen.currentTestId = undefined
      const loaded = Object.entries(seen.mutantCoverage?.perTest[onLoading] ?? {})
      delete seen.mutantCoverage?.perTest[onLoading]
      for (const test of all) {
        seen.currentTestId = test.id
        const before = process.cpuUsage()
        const done = await outcome(test)
        const { user, system } = process.cpuUsage(before)
        seen.currentTestId = undefined
        if ((user + system) / 1000 <= mostMs) {
          tests.push(done)
          countAlso(loaded, test.id)
        } else delete seen.mutantCoverage?.perTest[test.id]
      }
    }
    // Another process may run the mutants.
    writeFileSync(quickList, JSON.stringify(tests.map(({ id, timeSpentMs }) => [id, timeSpentMs])))
    return { status: DryRunStatus.Complete, tests, mutantCoverage: seen.mutantCoverage }
  }

  async mutantRun({ activeMutant, testFilter, hitLimit }) {
    this.took ??= new Map(JSON.parse(readFileSync(quickList, "utf8")))
    const wanted = new Set(testFilter ?? this.took.keys())
    Object.assign(seen, { activeMutant: activeMutant.id, hitCount: 0, hitLimit })
    const result = await this.firstFailure(wanted)
    const limited = determineHitLimitReached(seen.hitCount, hitLimit)
    return toMutantRunResult(limited ?? result)
  }

  /** One failure is enough: the files whose tests take long are seldom come to. */
  quickestFirst(wanted) {
    const tookMs = ({ name }) =>
      [...this.took].reduce((sum, [id, ms]) => (isOf(id, name) && wanted.has(id) ? sum + ms : sum), 0)
    return this.files
      .filter(({ name }) => [...wanted].some((id) => isOf(id, name)))
      .map((file) => ({ file, ms: tookMs(file) }))
      .sort((a, b) => a.ms - b.ms)
      .map(({ file }) => file)
  }

  async firstFailure(wanted) {
    const tests = []
    for (const file of this.quickestFirst(wanted)) {
      const all = await collected(file).catch((error) => error)
      if (!Array.isArray(all))
        return { status: DryRunStatus.Complete, tests: [...tests, failed(file.name, all)] }
      for (const test of all.filter(({ id }) => wanted.has(id))) {
        tests.push(await outcome(test))
        if (tests.at(-1).status === TestStatus.Failed) return { status: DryRunStatus.Complete, tests }
      }
    }
    return { status: DryRunStatus.Complete, tests }
  }
}

/** A file is loaded anew for each mutant: what it reaches on loading is reached by each of its tests, and by no other. */
function countAlso(loaded, testId) {
  const { perTest } = seen.mutantCoverage ?? {}
  if (!perTest) return
  perTest[testId] ??= {}
  for (const [mutant, times] of loaded) perTest[testId][mutant] = (perTest[testId][mutant] ?? 0) + times
}

const isOf = (id, name) => id.startsWith(`${name}#`)

/** A file of tests as a function that registers them: its imports are asked of the caller, and it may wait. */
function compiled(file) {
  const code = readFileSync(file, "utf8")
    .replaceAll(/^import \* as (\S+) from ("[^"]+");?$/gm, "const $1 = await need($2);")
    .replaceAll(/^import (\w+) from ("[^"]+");?$/gm, "const $1 = (await need($2)).default;")
    .replaceAll(
      /^import \{(.*)\} from ("[^"]+");?$/gm,
      (_, names, from) => `const {${names.replaceAll(" as ", ": ")}} = await need(${from});`,
    )
    .replaceAll(/^export \{.*\};?$/gm, "")
  return new Script(`(async (need) => {${code}\n})`, { filename: file })
}

/** The tests of a file, registered by its own calls. */
async function collected({ name, script }) {
  const tests = []
  const path = []
  const each =
    (one) =>
    (rows) =>
    (title, work, ...rest) => {
      for (const [i, row] of rows.entries())
        one(`${title} ${i}`, () => work(...(Array.isArray(row) ? row : [row])), ...rest)
    }
  const both = (one) => Object.assign(one, { each: each(one) })
  const it = both((title, work) => {
    tests.push({ id: `${name}#${[...path, title].join(" ")} ${tests.length}`, work })
  })
  const describe = both((title, body) => {
    path.push(title)
    body()
    path.pop()
  })
  await script.runInThisContext()((from) =>
    from === "vitest" ? { describe, it, test: it, expect } : import(from),
  )
  return tests
}

async function outcome({ id, work }) {
  const start = performance.now()
  const timed = () => ({ id, name: id, timeSpentMs: performance.now() - start })
  try {
    await work()
    return { ...timed(), status: TestStatus.Success }
  } catch (error) {
    return { ...timed(), status: TestStatus.Failed, failureMessage: String(error) }
  }
}

const failed = (id, error) => ({
  id,
  name: id,
  timeSpentMs: 0,
  status: TestStatus.Failed,
  failureMessage: String(error),
})

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, "room", RoomRunner)]
