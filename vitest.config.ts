import { availableParallelism } from "node:os"
import { defineConfig } from "vitest/config"

/**
 * Through a browser on a machine that others use too: a state that is waited for comes when there is time for it, and a
 * test that failed is tried once more, by itself; the run names those that passed only then.
 */
const patient = { expect: { poll: { timeout: 30_000 } }, retry: 1 }

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: "unit",
          // The machine is theirs alone: the browsers come after, two files at a time.
          maxWorkers: availableParallelism(),
          sequence: { groupOrder: 0 },
          include: ["tests/**/*.test.ts"],
          exclude: ["tests/browser/**", "tests/engines/**", "tests/faults/**"],
          // Printing many pages is slow on a machine that others use too; what must be fast measures itself.
          testTimeout: 30_000,
        },
      },
      {
        test: {
          name: "browser",
          ...patient,
          sequence: { groupOrder: 1 },
          include: ["tests/browser/**/*.test.ts"],
          testTimeout: 120_000,
          hookTimeout: 120_000,
          // A browser waits as often as it works; with a third beside them they wait for each other.
          maxWorkers: Math.min(2, availableParallelism()),
        },
      },
      {
        test: {
          // A short slice of the campaign; the whole of it is `npm run faults`.
          name: "faults",
          ...patient,
          sequence: { groupOrder: 2 },
          include: ["tests/faults/**/*.test.ts"],
          fileParallelism: false,
          testTimeout: 3_600_000,
          hookTimeout: 120_000,
        },
      },
      {
        test: {
          name: "engines",
          ...patient,
          sequence: { groupOrder: 3 },
          include: ["tests/engines/**/*.test.ts"],
          fileParallelism: false,
          // One job through a whole engine, on a machine that may be busy with others.
          testTimeout: 600_000,
          hookTimeout: 600_000,
        },
      },
    ],
  },
})
