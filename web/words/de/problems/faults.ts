import type { HeadMeasureName } from "../../../../geometry/scalp/headSize"
import type { DocumentName } from "../../../core/fields/problem"
import type {
  drawingFaults as englishDrawing,
  fieldFaults as englishFields,
  fileFaults as englishFiles,
  hairlineFaults as englishHairline,
} from "../../en/problems/faults"
import { documents, fieldNames } from "./fields"

const takeTwinOut = "„twin“ herausnehmen, um das Paar aufzulösen"

export const hairlineFaults: typeof englishHairline = {
  "crosses-itself": "die Haarlinie würde sich selbst kreuzen: jeden Punkt zwischen seinen Nachbarn lassen",
  "over-ear": "die Haarlinie würde über das Ohr laufen: um das Ohr herum lassen",
  "on-face": "keine Haarlinie läuft unter den Brauen oder über die Wange: darüber lassen",
  "off-scalp": "das liegt neben der Kopfhaut: die Haarlinie auf dem Kopf lassen",
  "across-middle": "die Haarlinie einer Seite würde über die Mitte des Kopfs laufen: auf ihrer Seite lassen",
}

const measures: Record<HeadMeasureName, string> = {
  lengthMm: "Kopflänge",
  breadthMm: "Kopfbreite",
  heightMm: "Höhe vom Ohr bis oben",
  aroundMm: "Umfang des Kopfs",
  overMm: "Ohr zu Ohr über den Oberkopf",
  frontToNapeMm: "vordere Haarlinie bis Nacken",
}

/** A document with its article. */
const a: Record<DocumentName, string> = {
  plan: `ein ${documents.plan}`,
  technique: `eine ${documents.technique}`,
  backup: `eine ${documents.backup}`,
  start: `eine ${documents.start}`,
  card: `eine ${documents.card}`,
  client: `eine ${documents.client}`,
}
const savedBy: Record<DocumentName, string> = {
  plan: `ein von Partline gesicherter ${documents.plan}`,
  technique: `eine von Partline gesicherte ${documents.technique}`,
  backup: `eine von Partline gesicherte ${documents.backup}`,
  start: `eine von Partline gesicherte ${documents.start}`,
  card: `eine von Partline gesicherte ${documents.card}`,
  client: `eine von Partline gesicherte ${documents.client}`,
}
const of: Record<DocumentName, string> = {
  plan: "eines Plans",
  technique: "einer Technik",
  backup: "einer Datensicherung",
  start: "einer Datei zusammengeführter Werte",
  card: "einer Kundenkarte",
  client: "einer Datei eines Gastes",
}

/** How fields must go together. */
export const fieldFaults: typeof englishFields = (t) => ({
  "extra-field": ({ field, document }) => `„${field}“ ist kein Feld ${of[document]}: herausnehmen`,
  taken: ({ value, firstPlace }) =>
    `erwartet ein eigener Wert, aber ${value} steht schon an Stelle ${t.whole(firstPlace)} der Liste`,
  "unknown-mix": ({ known, mix }) =>
    `erwartet eine der aufgeführten Mischungen (${known.join(", ")}), gefunden ${mix}`,
  "twin-of-itself": `erwartet eine andere Partie, gefunden sie selbst; ${takeTwinOut}`,
  "twin-unknown": ({ twin }) => `erwartet eine Partie dieses Plans, gefunden „${twin}“; ${takeTwinOut}`,
  "twin-of-another": ({ id, twin, named }) =>
    named === null
      ? `erwartet eine Partie, die „${id}“ zurück nennt, aber „${twin}“ nennt keine; ${takeTwinOut}`
      : `erwartet eine Partie, die „${id}“ zurück nennt, aber „${twin}“ nennt „${named}“; ${takeTwinOut}`,
  "pair-of-one": ({ pair, found }) =>
    `erwartet zwei Partien mit ${pair}, gefunden ${t.whole(found)}; „pair“ herausnehmen, um die Partie allein zu legen`,
  "pair-not-single": "erwartet „single“: true daneben; „pair“ herausnehmen, um die Partie allein zu legen",
  "nothing-to-coat": ({ startMm, lengthCm }) =>
    `erwartet ein Beginn vor dem Ende des Produkts, gefunden ${t.mm(startMm)} von der Kopfhaut bei ${t.cm(lengthCm)} Haarlänge: näher beginnen oder mehr von der Strähne bestreichen`,
  "no-roots": ({ startMm, toMm }) =>
    `erwartet mehr als die ${t.mm(startMm)}, bei denen das Produkt beginnt, gefunden ${t.mm(toMm)}: den Ansatz weiter unten enden lassen oder alles mit einer Mischung bestreichen`,
  "roots-first-later": ({ afterMin }) =>
    `erwartet 0 oder die Spitzen zuerst, gefunden ${t.minutes(afterMin)} nach den Spitzen bei Ansatz zuerst: die Spitzen zuerst auftragen oder 0 Minuten eintragen`,
  "no-ends": ({ toMm, lengthCm }) =>
    `erwartet ein Ende vor dem Ende des bestrichenen Haars, gefunden ${t.mm(toMm)} von der Kopfhaut bei ${t.cm(lengthCm)} Haarlänge: den Ansatz früher enden lassen oder alles mit einer Mischung bestreichen`,
  "one-mix-twice": ({ mix }) =>
    `erwartet eine andere Mischung als auf dem Rest der Strähne, gefunden ${mix} auf beidem: eine andere wählen oder alles mit einer Mischung bestreichen`,
  "landmark-off-middle": ({ landmark }) =>
    `erwartet ${landmark} auf beiden Seiten und nur entlang der Mitte verschoben`,
  "landmark-twice": ({ landmark, firstPlace }) =>
    `erwartet jeder Punkt einmal pro Seite, aber ${landmark} wird schon an Stelle ${t.whole(firstPlace)} der Liste verschoben`,
  hairline: ({ fault, side }) =>
    side === "left" ? `links: ${hairlineFaults[fault]}` : `rechts: ${hairlineFaults[fault]}`,
  "head-size": ({ measure, mm, least, greatest }) =>
    `${measures[measure]}, ${t.mm(mm, 1)}, passt nicht zu den beiden anderen: üblich ist ${t.number(least)} bis ${t.mm(greatest)}`,
})

/** Why a text is no document at all. */
export const fileFaults: typeof englishFiles = (t) => ({
  "too-large": ({ document, mostMb, foundMb }) =>
    `erwartet ${a[document]} mit höchstens ${t.whole(mostMb)} MB, gefunden ${t.whole(foundMb)} MB: vielleicht ist es eine andere Datei`,
  empty: ({ document }) => `die Datei ist leer: erwartet ${savedBy[document]}`,
  "not-json": ({ document }) =>
    `die Datei ist abgeschnitten oder nicht ${a[document]}: dort, wo sie entstand, noch einmal sichern`,
  "no-number": ({ field, word }) => `${fieldNames[field] ?? field}: erwartet eine Zahl, gefunden ${word}`,
  "another-kind": ({ document, kind }) =>
    `das ist nicht ${a[document]} von Partline: erwartet „kind“: „${kind}“`,
  version: ({ known }) => `erwartet eine ganze Zahl, derzeit ${t.whole(known)}`,
  "newer-version": ({ version, known }) =>
    `diese Datei hat Version ${version}, und dieses Partline liest bis ${known}: mit einem neueren Partline öffnen`,
  "more-like-these": ({ count }) =>
    t.count(count, { one: "und # weiteres Problem wie diese", other: "und # weitere Probleme wie diese" }),
  "damaged-link":
    "dieser Link wurde unterwegs abgeschnitten oder verändert: noch einmal darum bitten oder um die Technik als Datei",
  "newer-link": "dieser Link stammt aus einem neueren Partline: mit einem ebenso neuen öffnen",
  "too-large-link": "dieser Link enthält mehr, als eine Technik braucht: um die Technik als Datei bitten",
  "not-on-shelf": "diesen Plan gibt es in diesem Browser nicht",
})

/** What makes a line impossible to comb, or to divide the head by. */
export const drawingFaults: typeof englishDrawing = (t) => ({
  "place-outside": "erwartet eine Stelle innerhalb der Haarlinie, gefunden eine außerhalb",
  "line-outside": "erwartet eine Linie innerhalb der Haarlinie, gefunden eine, die sie verlässt",
  "line-too-short": ({ leastMm, foundMm }) =>
    `erwartet eine Linie von mindestens ${t.mm(leastMm)}, gefunden ${t.mm(foundMm, 1)}`,
  "line-crosses-itself": "erwartet eine Linie, die sich nicht selbst kreuzt",
  "divider-too-short": ({ leastMm, foundMm }) =>
    `erwartet eine Linie von mindestens ${t.mm(leastMm)}, gefunden ${t.mm(foundMm, 1)}: neu zeichnen`,
  "divider-crosses-itself": "erwartet eine Linie, die sich nicht selbst kreuzt: neu zeichnen",
  "divider-on-another": ({ number }) =>
    `erwartet eine eigene Linie, gefunden eine auf Abteillinie ${t.whole(number)}: verschieben oder entfernen`,
  "divider-divides-nothing":
    "erwartet eine Linie von Rand zu Rand, gefunden eine, die nichts abteilt: bis zur Haarlinie oder zu einer anderen Abteillinie weiterzeichnen oder entfernen",
  "divider-past-edge": ({ pastMm }) =>
    `erwartet eine Linie, die an einem Rand endet, gefunden ${t.mm(pastMm)} hinter dem letzten: dort enden lassen oder bis zum nächsten weiterzeichnen`,
  "divider-touches-another":
    "erwartet eine Linie mit Abstand zu den anderen, gefunden eine, die eine andere berührt: verschieben oder entfernen",
  "working-section-too-small": ({ leastCm2, foundCm2 }) =>
    `erwartet mindestens ${t.number(leastCm2)} cm² auf jeder Seite, gefunden ${t.area(foundCm2)}: verschieben oder entfernen`,
})
