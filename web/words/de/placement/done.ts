import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { NudgeWay } from "../../../core/placement/tools"
import type { done as english } from "../../en/placement/done"
import { say } from "../../say"
import { hairlineDone, stackDone, workingDone } from "./doneParts"

/** What undo calls a change of this chapter. */
export const done: typeof english = (t, names) => {
  const { kinds, landmark, directions, sectionName } = names
  const nameOf = (section: SectionNameCode) => t.capital(say<SectionNameCode>(sectionName, section))
  const count = (sections: number, verb: string) =>
    t.count(sections, { one: `Partie ${verb}`, other: `# Partien ${verb}` })
  const ordinal = (place: number) => t.ordinal(place, { other: "#." })
  return {
    ...hairlineDone(t, names),
    ...workingDone(t, names),
    ...stackDone(t, names),
    "draw-section": ({ kind }) => `${t.capital(kinds[kind])} zeichnen`,
    "add-along-hairline": ({ kind, side, from, to }) =>
      `${t.capital(kinds[kind])} hinzufügen: ${landmark({ landmark: from, side })} – ${landmark({ landmark: to, side })}`,
    "change-kind": ({ kind }) => `Ändern: ${kinds[kind]}`,
    rename: ({ section }) => `${nameOf(section)} umbenennen`,
    split: ({ section }) => `${nameOf(section)} auf Folien aufteilen`,
    reduce: ({ section }) => `${nameOf(section)} verkleinern`,
    "set-depth": "Tiefe ändern",
    "take-hair": ({ taken }) => (taken === "front" ? "Haar davor nehmen" : "Haar dahinter nehmen"),
    "set-stitch": "Stich ändern",
    "set-gap": "Abstand ändern",
    "set-dip": "Webtiefe ändern",
    "set-base": ({ base }) => `Toupieren aus einem ${kinds[base]}`,
    "set-pushed-share": "Toupierten Anteil ändern",
    "set-cushion": "Polster ändern",
    "set-edge": "Gemalten Rand ändern",
    "draw-edge": "Gemalten Rand zeichnen",
    "set-edge-high": "Beginn der Bemalung ändern",
    "set-edge-drop": "Abfall des Rands ändern",
    "set-feather": "Auslauf ändern",
    "set-saturation": "Sättigung ändern",
    "set-note": "Notiz ändern",
    "set-map-number": "Umnummerieren",
    "set-start": "Produktbeginn ändern",
    "set-coated": "Auftragsbereich ändern",
    "set-faces": "Auftragsseiten ändern",
    "set-carrier": "Ändern, worin gelegt wird",
    "set-elevation": "Abhebewinkel ändern",
    "set-over-direction": "Überziehung ändern",
    "set-foil-lie": "Folienlage ändern",
    "set-roots-mix": "Mischung am Ansatz ändern",
    "set-roots-end": "Ende des Ansatzes ändern",
    "set-roots-order": "Reihenfolge der Mischungen ändern",
    "set-roots-after": "Zeitpunkt des Ansatzes ändern",
    "use-mix": ({ mix }) => `Mischung ${mix} verwenden`,
    "set-behind": "Hinter die Haarlinie verschieben",
    "set-along": "An der Haarlinie verschieben",
    "set-length": "Länge ändern",
    "set-angle": "Drehen",
    "set-direction": ({ direction }) => `Drehen: ${directions[direction]}`,
    "repeat-behind": "Dahinter wiederholen",
    "repeat-behind-both": "Dahinter wiederholen, beide Seiten",
    thinner: "Dünner",
    thicker: "Dicker",
    mirror: "Auf die andere Seite spiegeln",
    "break-pair": "Paar auflösen",
    "towards-hairline": "Zur Haarlinie verschieben",
    "away-from-hairline": "Von der Haarlinie weg verschieben",
    "leave-between": "Haar zwischen zweien auslassen",
    "leave-veil": "Schleier auslassen",
    "leave-baby-hairs": "Babyhaare auslassen",
    delete: ({ count: sections }) => count(sections, "löschen"),
    paste: ({ count: sections }) => count(sections, "einfügen"),
    move: "Verschieben",
    bend: "Biegen",
    nudge: ({ mm, way }) => nudges[way](t.mm(mm)),
    "number-in-order": "In der Reihenfolge des Legens nummerieren",
    "apply-at": ({ section, count: sections, place, foils }) =>
      sections === 1
        ? `${nameOf(section)}: an ${ordinal(place)} Stelle von ${t.whole(foils)}`
        : `${t.whole(sections)} Partien ab „${nameOf(section)}“: an ${ordinal(place)} Stelle von ${t.whole(foils)}`,
    "apply-left-out": ({ section, count: sections, before, foils }) =>
      sections === 1
        ? `${nameOf(section)}: nach ${t.whole(before)} von ${t.whole(foils)} Folien`
        : `${t.whole(sections)} Partien ab „${nameOf(section)}“: nach ${t.whole(before)} von ${t.whole(foils)} Folien`,
    "place-technique": ({ name }) => `Technik „${name}“ platzieren`,
  }
}

const nudges: Record<NudgeWay, (mm: string) => string> = {
  away: (mm) => `${mm} von der Haarlinie weg verschieben`,
  towards: (mm) => `${mm} zur Haarlinie verschieben`,
  right: (mm) => `${mm} entlang der Haarlinie verschieben, beim Gast nach rechts`,
  left: (mm) => `${mm} entlang der Haarlinie verschieben, beim Gast nach links`,
}
