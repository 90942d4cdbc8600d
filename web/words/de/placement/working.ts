import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { WorkingNameCode } from "../../../core/placement/workingName"
import type { working as english } from "../../en/placement/working"
import { say } from "../../say"

/** How the head is divided before work begins. */
export const working: typeof english = (t, { sectionName, workingName }) => {
  const named = (code: WorkingNameCode) => say<WorkingNameCode>(workingName, code)
  const sectionOf = (section: SectionNameCode) => t.capital(say<SectionNameCode>(sectionName, section))
  return {
    divide: "Kopf abteilen",
    title: (sections) => t.count(sections, { one: "# Abteilung", other: "# Abteilungen" }),
    inOrder: "in der Arbeitsreihenfolge",
    sectionLines: "Abteillinien",
    divideFurther: "Weiter abteilen",
    orDraw: "Oder „Abteilen“ wählen und eine Abteillinie von Rand zu Rand zeichnen.",
    starts: {
      "four-section": {
        name: "Vier Abteilungen",
        aim: "Stirnmitte bis Nacken und von Ohr zu Ohr über die Wirbelpartie.",
      },
      "four-with-triangle": {
        name: "Vier Abteilungen mit Dreieck",
        aim: "Ebenso, mit einem eigenen Dreieck über der Stirn.",
      },
      triangle: {
        name: "Dreieck am Oberkopf",
        aim: "Von beiden Stirnecken zu einem Punkt am Oberkopf.",
      },
      "face-frame-triangle": {
        name: "Gesichtsrahmen-Dreieck",
        aim: "Von oberhalb beider Ohren zu einem Punkt am Oberkopf.",
      },
      profile: { name: "Mittellinie", aim: "Stirnmitte bis Nackenmitte." },
      radial: { name: "Ohr zu Ohr", aim: "Von Ohr zu Ohr über die Wirbelpartie." },
      horseshoe: {
        name: "Hufeisen",
        aim: "Von einer Stirnecke um die Wirbelpartie zur anderen.",
      },
    },

    nameOf: (numeral) => `Name der Abteilung ${numeral}`,
    work: ({ name, by }) =>
      by < 0 ? `Früher bearbeiten: ${named(name)}` : `Später bearbeiten: ${named(name)}`,
    select: "Auswählen",
    selectFoils: (name) => `Folien auswählen: ${named(name)}`,
    numberBySection: "Nach Abteilung und Seite nummerieren",
    applyBySection: "Nach Abteilung und Seite legen",
    groupList: "Folienliste gruppieren",
    noFoils: "keine Folien",
    foils: (foils) => t.count(foils, { one: "# Folie", other: "# Folien" }),
    minutes: (low, high) => t.minuteRange(low, high),

    line: ({ number, lengthMm }) => `Abteillinie ${t.whole(number)}, ${t.mm(lengthMm)}`,
    removeAll: "Alle entfernen",
    nudges: {
      face: "Zum Gesicht",
      nape: "Zum Nacken",
      right: "Beim Gast nach rechts",
      left: "Beim Gast nach links",
    },
    mirror: "Spiegeln",
    remove: "Entfernen",

    across: "Über einer Abteillinie",
    crossesInto: (name) => `× reicht in: ${named(name)}`,
    crossing: ({ section, home, into, areaCm2 }) =>
      `${sectionOf(section)} (${named(home)}): ${t.area(areaCm2)} der Kopfhaut liegen in „${named(into)}“.`,
    fixes: {
      trim: { one: "Hier kürzen", all: (count) => `Alle ${t.whole(count)} hier kürzen` },
      split: { one: "In zwei teilen", all: (count) => `Alle ${t.whole(count)} in zwei teilen` },
      letCross: { one: "So lassen", all: (count) => `Alle ${t.whole(count)} so lassen` },
    },
    fixesOf: {
      trim: (section) => `${sectionOf(section)} hier kürzen`,
      split: (section) => `${sectionOf(section)} in zwei teilen`,
      letCross: (section) => `${sectionOf(section)} so lassen`,
    },
  }
}
