import { readdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import { describe, expect, it } from "vitest"
import type { Language } from "../../../web/words/every/languages"
import { writtenTexts } from "../../support/literals"
import { en, everyLanguage } from "../../support/words"

/** Where the words of each language are written; American English writes only what differs. */
const folders = { "en-GB": "en", "en-US": "en-us", de: "de", es: "es", fr: "fr", uk: "uk" } satisfies Record<
  Language,
  string
>

/** What is quoted and is nothing to press: said to the emergency number, in a printer's dialog, aloud, or of a word itself. */
const saidElsewhere: Record<Language, readonly string[]> = {
  "en-GB": ["anaphylaxis", "fit to page", "no"],
  "en-US": ["anaphylaxis", "fit to page", "no"],
  de: ["Anaphylaxie", "an Seite anpassen", "Nein"],
  es: ["anafilaxia", "ajustar a la página", "no"],
  fr: ["anaphylaxie", "ajuster à la page", "non", "prête"],
  uk: ["анафілаксія", "за розміром сторінки", "ні", "стоп"],
}

const filesIn = (folder: string, ending: RegExp) =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => ending.test(name))
    .map((name) => join(folder, name))

/** What stands in quotes, whole; what a message is given at its time is no part of its text. */
const quoted = (text: string) =>
  [...text.matchAll(/[“„«]\u00a0?([^“”„«»]+?)\u00a0?[”“»]/g)].map(([, inner]) => inner)

const labelsOf = (group: object, path: readonly string[] = []): [label: string, path: readonly string[]][] =>
  Object.entries(group).flatMap(([name, value]) => {
    if (typeof value === "string") return [[value.toLocaleLowerCase(), [...path, name]]]
    return typeof value === "object" && value !== null ? labelsOf(value, [...path, name]) : []
  })

/** Faults of a file quote the names of its fields. */
const ofFiles = /[/\\]problems[/\\]/

const quotedIn = (language: Language): string[] =>
  filesIn(join("web/words", folders[language]), /\.ts$/)
    .filter((file) => !ofFiles.test(file))
    .flatMap((file) => writtenTexts(file).texts)
    .flatMap(({ text }) => quoted(text))
    .map((label) => label.toLocaleLowerCase())
    .filter((label) => !saidElsewhere[language].some((other) => other.toLocaleLowerCase() === label))

describe("a button that a sentence names", () => {
  it.each(everyLanguage)("is called so in %s", (language, words) => {
    const labels = new Set(labelsOf(words).map(([label]) => label))
    expect(quotedIn(language).filter((label) => !labels.has(label))).toEqual([])
  })

  it("is found in sentences at all", () => {
    expect(quotedIn("en-GB").length).toBeGreaterThan(5)
  })

  it("stands on a screen", () => {
    const screens = ["web/panels", "web/canvas", "web/sheets", "web/session"]
      .flatMap((folder) => filesIn(folder, /\.tsx?$/))
      .map((file) => readFileSync(file, "utf8"))
      .join("\n")
    const isShown = (path: readonly string[]) => new RegExp(`\\b${path.at(-1)}\\b`).test(screens)
    const labels = labelsOf(en)
    const shown = (label: string) => labels.some(([each, path]) => each === label && isShown(path))
    expect(quotedIn("en-GB").filter((label) => !shown(label))).toEqual([])
  })
})
