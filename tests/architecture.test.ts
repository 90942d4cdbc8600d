import { readdirSync, readFileSync, statSync } from "node:fs"
import { dirname, join, relative, resolve } from "node:path"
import { describe, expect, it } from "vitest"

/** The wings of the house, each with the wings it may look into. */
const maySee: Record<string, readonly string[]> = {
  geometry: [],
  presets: ["geometry"],
  "web/core": ["geometry", "presets"],
  "web/words": ["geometry", "presets", "web/core"],
  "web/drawing": ["geometry", "presets", "web/core", "web/words"],
  "web/storage": ["presets", "web/core", "web/words"],
  "web/offline": [],
  "web/session": [
    "geometry",
    "presets",
    "web/core",
    "web/words",
    "web/drawing",
    "web/storage",
    "web/offline",
  ],
  "web/canvas": ["geometry", "presets", "web/core", "web/words", "web/drawing", "web/session"],
  "web/panels": ["geometry", "presets", "web/core", "web/words", "web/drawing", "web/storage", "web/session"],
  "web/sheets": ["geometry", "presets", "web/core", "web/words", "web/drawing", "web/session", "web/storage"],
  "web/command": ["geometry", "presets", "web/core", "web/words", "web/drawing", "web/sheets", "web/session"],
}

const root = resolve(import.meta.dirname, "..")
const wings = Object.keys(maySee)

const filesUnder = (folder: string): string[] =>
  statSync(join(root, folder), { throwIfNoEntry: false })
    ? readdirSync(join(root, folder)).flatMap((name) => {
        const path = join(folder, name)
        return statSync(join(root, path)).isDirectory() ? filesUnder(path) : [path]
      })
    : []
const isCode = (file: string) => /\.tsx?$/.test(file)
const codeUnder = (folder: string) => filesUnder(folder).filter(isCode)
const textOf = (file: string) => readFileSync(join(root, file), "utf8")

/** Everything a file names to be loaded: types, side effects, late parts, styles and the addresses of workers as well. */
const importsOf = (file: string) =>
  [...textOf(file).matchAll(/(?:\bfrom\s*|\bimport\s*\(\s*|\bimport\s+|new URL\(\s*)"([^"\n]+)"/g)].map(
    ([, name]) => name,
  )

const all = ["web", "geometry", "presets"].flatMap(filesUnder)
const known = new Set(all)

/** The files of the house that a file names, from the top. */
const namedBy = (file: string) =>
  importsOf(file)
    .filter((name) => name.startsWith("."))
    .map((name) => relative(root, resolve(root, file, "..", name.replace(/\?.*$/, ""))))
    .map((path) => [path, `${path}.ts`, `${path}.tsx`, `${path}.mjs`].find((each) => known.has(each)) ?? path)

const wingOf = (path: string) => wings.find((wing) => path.startsWith(`${wing}/`))

it.each(Object.entries(maySee))("%s looks only where it may", (wing, allowed) => {
  const faults = codeUnder(wing).flatMap((file) =>
    namedBy(file)
      .filter((target) => ![wing, ...allowed].includes(wingOf(target) ?? target))
      .map((target) => `${file} -> ${target}`),
  )
  expect(faults).toEqual([])
})

describe("circles", () => {
  const links = all.filter(isCode).flatMap((file) => namedBy(file).map((target) => [file, target]))

  it("has none between files", () => {
    expect(circlesIn(links)).toEqual([])
  })

  it("has none between folders", () => {
    const between = links.map((link) => link.map(dirname)).filter(([from, to]) => from !== to)
    expect(circlesIn(between)).toEqual([])
  })

  it("would see one", () => {
    expect(
      circlesIn([
        ["a", "b"],
        ["b", "c"],
        ["c", "b"],
      ]),
    ).toEqual(["b c"])
  })
})

/** The knots that lead back to themselves, those of one circle in a row: what is left once every end is cut off. */
function circlesIn(links: readonly string[][]): string[] {
  const next = new Map<string, Set<string>>()
  for (const [from, to] of links) next.set(from, (next.get(from) ?? new Set()).add(to))
  const reached = (from: string) => {
    const seen = new Set<string>()
    const waiting = [...(next.get(from) ?? [])]
    for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
      if (seen.has(at)) continue
      seen.add(at)
      waiting.push(...(next.get(at) ?? []))
    }
    return seen
  }
  const reach = new Map([...next.keys()].map((knot) => [knot, reached(knot)]))
  const inCircle = [...next.keys()].filter((knot) => reach.get(knot)?.has(knot))
  const rows = inCircle.map((knot) =>
    inCircle
      .filter((other) => reach.get(knot)?.has(other) && reach.get(other)?.has(knot))
      .sort()
      .join(" "),
  )
  return [...new Set(rows)]
}

it("has no crowded room: at most 25 files side by side", () => {
  const counts = new Map<string, number>()
  for (const file of all) counts.set(dirname(file), (counts.get(dirname(file)) ?? 0) + 1)
  expect([...counts].filter(([, count]) => count > 25)).toEqual([])
})

it("keeps the core pure: no page, no store, no database, no clock of the system", () => {
  const impure =
    /\b(window|document|navigator|localStorage|indexedDB)\.|Date\.now|new Date\(\)|performance\.now|Math\.random/
  const faults = codeUnder("web/core").flatMap((file) => [
    ...importsOf(file)
      .filter((name) => !name.startsWith(".") && name !== "zod/mini")
      .map((name) => `${file} -> ${name}`),
    ...textOf(file)
      .split("\n")
      .filter((line) => impure.test(line) && !/^\s*(\/?\*|\/\/)/.test(line))
      .map((line) => `${file}: ${line.trim()}`),
  ])
  expect(faults).toEqual([])
})

it("remembers nothing in the core but through the one helper for it", () => {
  const memory = /\bWeakMap\b|^let |^(export )?const \w+(: .+)? = (new (Map|Set|Array)(<.*>)?\(\)|\{\})$/
  const faults = codeUnder("web/core")
    .filter((file) => file !== "web/core/memory/remembered.ts")
    .flatMap((file) =>
      textOf(file)
        .split("\n")
        .filter((line) => memory.test(line))
        .map((line) => `${file}: ${line.trim()}`),
    )
  expect(faults).toEqual([])
})

it("keeps each library behind one door, the database in storage and stores in the session", () => {
  const doors: Record<string, RegExp> = {
    "zod/mini": /^web\/core\/fields\/zod\.ts$/,
    jspdf: /^web\/sheets\/pens\/pdfPen\.ts$/,
    idb: /^web\/storage\//,
    "zustand/vanilla": /^web\/session\//,
  }
  const faults = Object.entries(doors).flatMap(([library, door]) =>
    all.filter((file) => isCode(file) && importsOf(file).includes(library) && !door.test(file)),
  )
  expect(faults).toEqual([])
})

it("opens the door of a worker in the session alone", () => {
  const doors = all.filter((file) => isCode(file) && /new (Shared)?Worker\(/.test(textOf(file)))
  expect(doors.filter((file) => !file.startsWith("web/session/"))).toEqual([])
})

it("keeps nothing at the top but the rooms, the guides and what tools need", () => {
  const made = /^\.|^node_modules$|^dist$|\.log$/
  expect(readdirSync(root).filter((name) => !made.test(name))).toEqual([
    "DEVELOPERS.md",
    "LICENSE",
    "README.md",
    "biome.json",
    "geometry",
    "package-lock.json",
    "package.json",
    "presets",
    "tests",
    "tsconfig.json",
    "vite.config.ts",
    "vitest.config.ts",
    "web",
  ])
})

it("asks which kind a section is nowhere but where kinds live: a row of each says what differs", () => {
  const home = /^(geometry\/section|web\/core\/kinds)\//
  const asked = /(kind|tool) [!=]== "(slice|weave|backcomb|left-out)"|case "(slice|weave|backcomb|left-out)"/
  const faults = all.filter((file) => isCode(file) && !home.test(file) && asked.test(textOf(file)))
  expect(faults).toEqual([])
})

it("geometry needs no library", () => {
  const outside = codeUnder("geometry").flatMap((file) =>
    importsOf(file).filter((name) => !name.startsWith(".")),
  )
  expect(outside).toEqual([])
})

it("has no file that is more than one room: at most 300 lines", () => {
  const long = all.filter((file) => isCode(file) && textOf(file).split("\n").length > 300)
  expect(long).toEqual([])
})

it("never promises what nobody can: no word of safety or certainty in the product", () => {
  const promise = /\b(guaranteed?|no damage|hypoallergenic|chemical-free|non-toxic)\b|\bsafe\b/i
  const faults = all
    .filter(isCode)
    .flatMap((file) =>
      [...textOf(file).matchAll(/"[^"\n]*"|`[^`]*`|>[^<>{}\n]+</g)]
        .filter(([text]) => promise.test(text))
        .map(([text]) => `${file}: ${text.slice(0, 80)}`),
    )
  expect(faults).toEqual([])
})
