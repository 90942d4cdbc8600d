import { resolve } from "node:path"
import { describe, expect, it } from "vitest"
import { fileGroups } from "../../../web/setup/grouped"

type Imports = { now?: readonly string[]; late?: readonly string[] }

/** A small app beside the real names of what is loaded early: each module with what it names, now or by a call. */
const app: Record<string, Imports> = {
  "main.tsx": {
    now: ["react"],
    late: ["startUp.ts", "canvas/hand/keyboard.ts", "one.tsx", "words/en/words.ts"],
  },
  react: { late: ["two.tsx"] },
  "startUp.ts": { now: ["react", "shelf", "both", "screen-too"] },
  "canvas/hand/keyboard.ts": { now: ["keys", "both"] },
  "one.tsx": { now: ["only-one", "of-screens", "screen-too"], late: ["words/de/words.ts"] },
  "two.tsx": { now: ["of-screens", "react"] },
  "words/en/words.ts": { now: ["words/en/chair/alarm.ts", "numbers"] },
  "words/de/words.ts": { now: ["words/en/chair/alarm.ts"] },
}

const web = resolve(import.meta.dirname, "../../../web")
const idOf = (name: string) => resolve(web, name)
const graph = {
  getModuleInfo(id: string) {
    const { now = [], late = [] } = app[id.slice(web.length + 1)] ?? {}
    return { importedIds: now.map(idOf), dynamicallyImportedIds: late.map(idOf) }
  },
}

const groups = fileGroups()
const fileOf = (name: string) => groups.flatMap((group) => group.name(idOf(name), graph) ?? [])

describe("the files of a build", () => {
  it.each([
    ["main.tsx", "index"],
    ["react", "index"],
    ["shelf", "startUp"],
    ["keys", "hands"],
    ["both", "common"],
    ["screen-too", "common"],
    ["numbers", "common"],
    ["of-screens", "later"],
  ])("%s goes into %s", (name, file) => expect(fileOf(name)).toEqual([file]))

  it.each(["only-one", "one.tsx", "words/en/words.ts", "words/en/chair/alarm.ts", "words/de/words.ts"])(
    "%s is left where the bundler puts it",
    (name) => expect(fileOf(name)).toEqual([]),
  )

  it("come first where others are made of them", () => {
    const rank = (file: string) => groups.find(({ debugName }) => debugName === file)?.priority ?? 0
    expect(rank("index")).toBeGreaterThan(rank("common"))
    for (const file of ["startUp", "hands", "bar", "list"]) expect(rank("common")).toBeGreaterThan(rank(file))
  })
})
