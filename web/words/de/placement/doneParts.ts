import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { WorkingNameCode } from "../../../core/placement/workingName"
import type {
  hairlineDone as englishHairline,
  stackDone as englishStack,
  workingDone as englishWorking,
} from "../../en/placement/doneParts"
import { say } from "../../say"
import { inDative } from "../common/declined"
import { stack } from "./stack"
import { working } from "./working"

export const hairlineDone: typeof englishHairline = (_, { landmarkOf }) => ({
  "move-landmark": ({ name, sides }) => `Verschieben: ${landmarkOf(name, sides)}`,
  "reset-landmark": ({ name, sides }) => `Zurücksetzen: ${landmarkOf(name, sides)}`,
  "reset-hairline": "Haarlinie zurücksetzen",
  "set-usual-parting": "Üblichen Scheitel setzen",
  "clear-usual-parting": "Üblichen Scheitel leeren",
  "set-whorl": ({ turns }) =>
    ({
      clockwise: "Haarwirbel setzen: im Uhrzeigersinn",
      anticlockwise: "Haarwirbel setzen: gegen den Uhrzeigersinn",
      none: "Haarwirbel setzen: keiner",
    })[turns],
  "clear-whorl": "Haarwirbel leeren",
  "move-whorl": "Haarwirbel verschieben",
})

export const workingDone: typeof englishWorking = (t, names) => {
  const { sectionName, workingName } = names
  const { starts } = working(t, names)
  const nameOf = (sections: readonly SectionNameCode[]) =>
    sections.length === 1
      ? t.capital(say<SectionNameCode>(sectionName, sections[0]))
      : t.count(sections.length, { one: "# Partie", other: "# Partien" })
  const named = (name: WorkingNameCode) => say<WorkingNameCode>(workingName, name)
  return {
    divide: ({ start }) => `Abteilen: ${starts[start].name}`,
    "draw-section-line": "Abteillinie zeichnen",
    "move-section-line": "Abteillinie verschieben",
    "bend-section-line": "Abteillinie biegen",
    "nudge-section-line": ({ way }) => lineNudges[way],
    "mirror-section-line": "Abteillinie spiegeln",
    "remove-section-line": ({ more }) =>
      more === 0
        ? "Abteillinie entfernen"
        : t.count(more, {
            one: "Abteillinie und # darauf endende entfernen",
            other: "Abteillinie und # darauf endende entfernen",
          }),
    "remove-section-lines": "Alle Abteillinien entfernen",
    "number-by-section": "Nach Abteilung und Seite nummerieren",
    "apply-by-section": "Nach Abteilung und Seite legen",
    "rename-section": ({ name, to }) =>
      to ? `${t.capital(named(name))} umbenennen: ${to}` : `${t.capital(named(name))} umbenennen`,
    "work-earlier": ({ name }) => `Früher bearbeiten: ${named(name)}`,
    "work-later": ({ name }) => `Später bearbeiten: ${named(name)}`,
    "trim-to-section": ({ sections }) => `${nameOf(sections)} auf die Abteilung kürzen`,
    "split-at-line": ({ sections }) => `${nameOf(sections)} an der Abteillinie teilen`,
    "let-cross": ({ sections }) => `${nameOf(sections)} über die Abteillinie laufen lassen`,
  }
}

const lineNudges = {
  face: "Abteillinie zum Gesicht verschieben",
  nape: "Abteillinie zum Nacken verschieben",
  left: "Abteillinie beim Gast nach links verschieben",
  right: "Abteillinie beim Gast nach rechts verschieben",
}

export const stackDone: typeof englishStack = (t, names) => {
  const { total, title } = stack(t, names)
  return {
    "stack-behind": ({ section }) => title(section),
    stack: ({ section, each, sides, foils, sections }) => {
      const behind = `${t.whole(each)} hinter ${inDative(t, section)} stapeln`
      return sides === 2 ? `${behind}, auf jeder Seite: ${total({ foils, sections })}` : behind
    },
  }
}
