import { readdirSync, readFileSync, statSync } from "node:fs"
import { join, relative, resolve } from "node:path"
import { expect, it } from "vitest"

/** Rooms of the house, each with the rooms it may look into. */
const maySee: Record<string, readonly string[]> = {
  geometry: [],
  presets: ["geometry"],
  "web/plan": ["geometry", "presets"],
  "web/service": ["geometry", "presets", "web/plan"],
  "web/canvas": ["geometry", "presets", "web/plan", "web/service"],
  "web/panels": ["geometry", "presets", "web/plan", "web/service"],
  "web/sheets": ["geometry", "presets", "web/plan", "web/service"],
  "web/command": ["geometry", "presets", "web/plan", "web/service", "web/sheets"],
}

const root = resolve(import.meta.dirname, "..")

const filesUnder = (folder: string): string[] =>
  readdirSync(join(root, folder)).flatMap((name) => {
    const path = join(folder, name)
    return statSync(join(root, path)).isDirectory() ? filesUnder(path) : /\.tsx?$/.test(name) ? [path] : []
  })

const importsOf = (file: string) =>
  [...readFileSync(join(root, file), "utf8").matchAll(/(?:from|import\()\s*"([^"]+)"/g)].map(
    ([, name]) => name,
  )

const roomOf = (path: string) => Object.keys(maySee).find((room) => path.startsWith(`${room}/`))

it.each(Object.entries(maySee))("%s looks only where it may", (room, allowed) => {
  const faults = filesUnder(room).flatMap((file) =>
    importsOf(file)
      .filter((name) => name.startsWith("."))
      .map((name) => relative(root, resolve(root, file, "..", name)))
      .filter((target) => ![room, ...allowed].includes(roomOf(target) ?? target))
      .map((target) => `${file} -> ${target}`),
  )
  expect(faults).toEqual([])
})

it("keeps each library behind one door", () => {
  const doors: Record<string, string> = {
    "zod/mini": "web/plan/zod.ts",
    jspdf: "web/sheets/pdfPen.ts",
  }
  const files = Object.keys(maySee).flatMap(filesUnder)
  for (const [library, door] of Object.entries(doors))
    expect(files.filter((file) => importsOf(file).includes(library))).toEqual([door])
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

it("geometry needs no library", () => {
  const outside = filesUnder("geometry").flatMap((file) =>
    importsOf(file).filter((name) => !name.startsWith(".")),
  )
  expect(outside).toEqual([])
})

it("has no file that is more than one room: at most 300 lines but for data", () => {
  const long = Object.keys(maySee)
    .flatMap(filesUnder)
    .filter((file) => readFileSync(join(root, file), "utf8").split("\n").length > 300)
  expect(long).toEqual([])
})

it("never promises what nobody can: no word of safety or certainty in the product", () => {
  const promise = /\b(guaranteed?|no damage|hypoallergenic|chemical-free|non-toxic)\b|\bsafe\b/i
  const faults = ["web", "presets"]
    .flatMap(filesUnder)
    .flatMap((file) =>
      [...readFileSync(join(root, file), "utf8").matchAll(/"[^"\n]*"|`[^`]*`|>[^<>{}\n]+</g)]
        .filter(([text]) => promise.test(text))
        .map(([text]) => `${file}: ${text.slice(0, 80)}`),
    )
  expect(faults).toEqual([])
})
