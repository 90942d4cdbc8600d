import type { HouseWords } from "../../en/techniques/houseWords"
import type { techniques as english } from "../../en/techniques/techniques"
import { draft } from "./draft"
import { frames } from "./frames"
import { others } from "./others"
import { stepWords } from "./stepWords"

/** Techniques: those of the house in words, and the panel that shows them beside the salon's own. */
export const techniques: typeof english = (t, names) => {
  const steps = stepWords(t)
  const house: HouseWords = { ...frames(t, steps), ...others(t, steps) }
  const sections = (count: number) => t.count(count, { one: "# Partie", other: "# Partien" })
  return {
    done: {},
    house,
    leftOut: { veil: "Schleier", "baby-hairs": "Babyhaare", edges: "Ränder" },
    measures: {
      depth: "Tiefe",
      "slice-depth": "Slice-Tiefe",
      "weave-depth": "Weaving-Tiefe",
      "backcomb-depth": "Toupage-Tiefe",
      gap: "Abstand",
      rows: "Reihen",
      "rows-a-side": "Reihen pro Seite",
      "slices-a-side": "Slices pro Seite",
      weaves: "Weavings",
      "rows-over-forehead": "Reihen über der Stirn",
      "rows-on-heavy-side": "Reihen, volle Seite",
    },
    ways: {
      only: "Wie sie ist",
      "bright-edge": "Am Rand am hellsten",
      "soft-edge": "Am Rand am weichsten",
      "in-turn": "Slice und Weaving im Wechsel",
      melted: "Toupierter Verlauf",
      "parted-left": "Scheitel links",
      "parted-right": "Scheitel rechts",
      "heavy-right": "Rechts voll",
      "heavy-left": "Links voll",
    },
    draft: draft(t, names),

    panel: {
      startFrom: "Mit einer Technik beginnen",
      title: "Techniken",
      own: "Ihre eigenen",
      comesTo: ({ foils, low, high, minLow, minHigh, withoutRoom }) => {
        const told = [
          t.count(foils, { one: "# Folie", other: "# Folien" }),
          t.gramsRange({ low, mid: low, high }),
          `${t.minuteRange(minLow, minHigh)} zum Legen`,
        ].join(", ")
        return withoutRoom > 0 ? `${told}; hier kein Platz für ${sections(withoutRoom)}` : told
      },
      read: "Schritte und Optionen",
      readOf: (name) => `Schritte und Optionen: ${name}`,
      steps: "Schritte",
      notes: "Hinweise",
      placeHere: "Auf diesem Kopf platzieren",
      placeOnNew: "Auf neuem Plan platzieren",
      saveAsOwn: "Als eigene sichern",
      saveAsCopy: "Als Kopie sichern",
      edit: "Umbenennen, bearbeiten",
      editing: (name) => `„${name}“ bearbeiten`,
      delete: "Löschen",
      stepsStay: "Die Schritte bleiben, wie sie geschrieben sind.",
      vary: "Vor dem Platzieren ändern",
      way: "Variante",
      stitch: "Stich",
      span: ({ low, high, usual }) => `${low} bis ${high}, üblich ${usual}`,
      anotherHead: "An einem anderen Kopf ansehen",
      head: "Kopf",
      hairline: "Haarlinie",
      thisPlans: "Wie in diesem Plan",
      heads: { small: "Klein, 52 cm", average: "Durchschnitt", large: "Groß, 62 cm" },
      hairlines: {
        round: "Rund",
        straight: "Gerade",
        receding: "Zurückweichend",
        peaked: "Spitz",
      },
    },

    own: {
      save: (selected) =>
        selected === 0
          ? "Alle Partien als Technik sichern…"
          : t.count(selected, {
              one: "Gewählte Partie als Technik sichern…",
              other: "# gewählte Partien als Technik sichern…",
            }),
      titleOf: (count) => `Eine Technik mit ${sections(count)}`,
      name: "Name",
      nameHint: "Ein Name mit mindestens einem Buchstaben",
      aim: "Wofür sie ist, in einem Satz",
      steps: "Schritte, einer pro Zeile",
      notes: "Hinweise",
      private:
        "Eine Technik kann weitergegeben werden: nichts über einen Gast hineinschreiben. Notizen zu einzelnen Folien bleiben im Plan.",
      saveThis: "Technik sichern",
      saved: (name) => `Die Technik „${name}“ ist gesichert`,
      savedAlready: (name) => `Die Technik „${name}“ war schon gesichert`,
      deleted: (name) => `Die Technik „${name}“ wurde gelöscht`,
      deletedNote: (name) => `„${name}“ wurde gelöscht.`,
      undo: "Rückgängig",
      openFile: "Technikdatei öffnen…",
      file: "Technikdatei",
      unreadable: (count) =>
        t.count(count, {
          one: "# hier gesicherte Technik kann dieses Partline nicht lesen; sie bleibt, wie sie ist.",
          other: "# hier gesicherte Techniken kann dieses Partline nicht lesen; sie bleiben, wie sie sind.",
        }),
    },

    share: {
      copyLink: "Link kopieren",
      share: "Teilen…",
      toFile: "In Datei sichern",
      tooLong: "Zu lang für einen Link: in einer Datei sichern und diese senden.",
      copyFromHere: "Den Link hier kopieren:",
      copied: "Der Link ist kopiert. Er enthält die Technik, nichts über einen Gast.",
      link: "Link",
      byLink: "Eine Technik per Link",
      nameless: "Eine Technik ohne Namen",
      opened:
        "Sie haben eine geteilte Technik geöffnet. Nichts wird gesichert oder geändert, bevor Sie wählen.",
      onTop: ({ plan, count }) =>
        `„${plan}“ hat schon ${sections(count)}: Auf diesem Kopf platziert, kommt die Technik dazu.`,
    },
  }
}
