import { existsSync, readdirSync, readFileSync } from "node:fs"
import { dirname, join, resolve, sep } from "node:path"
import type { Plugin } from "vite"

const root = resolve(import.meta.dirname, "../..")
const ownFonts = join(root, "web/sheets/pens/fonts")

type Licence = { name: string; texts: readonly string[] }

/** Writes licences.txt into a build: the licence of everything that is shipped in it, of the fonts too. */
export function licences(): Plugin {
  return {
    name: "licences",
    apply: "build",
    generateBundle(_, bundle) {
      const sources = Object.values(bundle).flatMap((part) =>
        part.type === "chunk"
          ? part.moduleIds
          : part.originalFileNames.map((file) => resolve(root, "web", file)),
      )
      this.emitFile({ type: "asset", fileName: "licences.txt", source: licencesText(sources) })
    },
  }
}

/** The licences of the packages that these files are from. */
export function licencesText(sources: readonly string[]): string {
  const packages = new Map<string, string[]>()
  for (const source of sources.map(withoutQuery)) {
    const folder = packageFolder(source)
    if (folder) packages.set(folder, [...(packages.get(folder) ?? []), source])
  }
  const found = [...packages].map(([folder, files]) => licenceOf(folder, files))
  const parts = [ownLicence(), sheetFonts(), ...found.sort((a, b) => a.name.localeCompare(b.name))]
  return parts.map(({ name, texts }) => [rule, name, rule, "", ...texts, ""].join("\n")).join("\n")
}

const rule = "=".repeat(72)

const ownLicence = (): Licence => ({ name: "Partline", texts: [read(join(root, "LICENSE"))] })

const sheetFonts = (): Licence => ({
  name: "Partline Sans, the font of the printed sheets: a cut of Source Sans 3",
  texts: [read(join(ownFonts, "OFL.txt"))],
})

function licenceOf(folder: string, files: readonly string[]): Licence {
  const { name, version } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"))
  const texts = readdirSync(folder)
    .filter((file) => /^(licen[cs]e|copying|notice)/i.test(file))
    .map((file) => read(join(folder, file)))
  // A shipped part that says nothing of its licence is not shipped.
  if (texts.length === 0) throw new Error(`${name} has no licence text`)
  return { name: `${name} ${version}`, texts: [...texts, ...legalComments(files)] }
}

/** What a package took in from others says so in comments that a small build leaves out. */
function legalComments(files: readonly string[]): string[] {
  const comments = files
    .filter((file) => /\.[cm]?js$/.test(file) && existsSync(file))
    .flatMap((file) => readFileSync(file, "utf8").match(/\/\*[*!][\s\S]*?\*\//g) ?? [])
    .filter((comment) => comment.startsWith("/*!") || /@licen[cs]e|@preserve/.test(comment))
  return [...new Set(comments.map(plain))]
}

const plain = (comment: string) =>
  comment
    .replace(/^\/\*[*!]?|\*\/$/g, "")
    .split("\n")
    .map((line) => line.replace(/^\s*\* ?/, "").trimEnd())
    .join("\n")
    .replace(/@licen[cs]e|@preserve/g, "")
    .trim()

const read = (file: string) => readFileSync(file, "utf8").trim()

const withoutQuery = (source: string) => source.replace(/^\0/, "").replace(/\?.*$/, "")

/** The nearest folder above that is a package of its own; null for our own files. */
function packageFolder(source: string): string | null {
  if (!source.includes(`${sep}node_modules${sep}`)) return null
  for (let folder = dirname(source); folder !== dirname(folder); folder = dirname(folder)) {
    const description = join(folder, "package.json")
    if (existsSync(description) && JSON.parse(readFileSync(description, "utf8")).version) return folder
  }
  return null
}
