import type { PlaceCode } from "../../../core/placement/places"
import type { editor as english } from "../../en/placement/editor"
import { say } from "../../say"
import { inDative } from "../common/declined"

type Editor = ReturnType<typeof english>

/** Every way to change the sections in hand without a pointer, and adding one by typing. */
export const editor: typeof english = (t, { kinds, place, onSide, sides }) => {
  const depths: Editor["depths"] = { micro: "Mikro", fine: "Fein", standard: "Üblich", heavy: "Kräftig" }
  const stitches: Editor["stitches"] = { fine: "Fein", medium: "Mittel", chunky: "Grob" }
  const roots: Editor["roots"] = {
    tight: "Dicht",
    standard: "Üblich",
    soft: "Weich",
    regrowth: "Nur Nachwuchs",
  }
  return {
    several: (sections) => t.count(sections, { one: "# Partie gewählt", other: "# Partien gewählt" }),
    title: ({ kind, at, number, name }) => {
      const what = `${t.capital(kinds[kind])}, ${say<PlaceCode>(place, at)}`
      const named = name ? `${name}: ${what}` : what
      return number === null ? named : `${t.whole(number)} ${named}`
    },
    close: "Schließen",
    kind: "Art der Partie",
    figures: {
      direction: "Richtung",
      parting: "Scheitel",
      scalp: "Kopfhaut",
      share: "Anteil genommen",
      hairs: "Haare",
      strandLength: "Strähnenlänge",
      hair: "Haar",
      hairToCoat: "Auftragsfläche",
      foils: "Folien",
      product: "Produkt",
    },
    name: "Name",
    pair: ({ other, side }) =>
      side === "centre"
        ? `Paar mit ${inDative(t, other)}: Änderungen gelten für beide.`
        : `Paar mit ${inDative(t, other)} ${onSide[side]}: Änderungen gelten für beide.`,
    breakPair: "Paar auflösen",
    wide: (foils) =>
      `Breiter als die Folie: ${t.count(foils, { one: "# Folie", other: "# Folien nebeneinander" })}.`,
    split: (foils) => `In ${t.count(foils, { one: "# Folie", other: "# Folien" })} teilen`,

    behindHairline: "Hinter der Haarlinie",
    fromCentreFront: (side) => `Ab Stirnmitte, ${sides[side]}`,
    length: "Länge",
    angle: "Winkel",
    runs: "Verlauf",

    taken: "Haar nehmen",
    takenFrom: { front: "Davor", behind: "Hinter dem Scheitel" },
    depthOfAll: "Tiefe",
    depthAtStart: "Tiefe am Anfang",
    depthAtEnd: "Tiefe am Ende",
    depths,
    depth: (word, mm) => `${depths[word]} ${t.mm(mm, 1)}`,
    stitch: "Stich",
    stitches,
    stitchOf: (word, mm) => `${stitches[word]} ${t.mm(mm, 1)}`,
    productStarts: "Produkt beginnt",
    roots,
    root: (word, mm) => (word === "regrowth" ? roots[word] : `${roots[word]} ${t.mm(mm, 1)}`),

    all: "Alle Einstellungen",
    stitchMm: "Stich",
    gapMm: "Abstand",
    dipMm: "Webtiefe (Stielspitze)",
    backcombedFrom: "Toupiert aus",
    bases: { slice: "Einem Slice", weave: "Einem Weaving" },
    pushedShare: "Anteil toupiert",
    cushion: "Polster",
    note: "Notiz",
    mapNumber: "Nummer auf der Karte",
    rootDistance: "Beginn, ab Kopfhaut",
    coatedFrom: "Auftrag ab",
    coatedTo: "Auftrag bis",
    coat: "Auftrag",
    faces: { both: "Beidseitig", one: "Nur Oberfläche (gemalt)" },
    carrier: "Gelegt in",
    carrierWidth: "Folienbreite",
    carrierLength: "Folienlänge",
    elevation: "Abhebewinkel",
    overDirection: "Überziehung",
    foilLie: "Folienlage",
    mix: "Mischung",
    rootsMix: {
      legend: "Mischung am Ansatz",
      none: "Wie der Rest",
      onlyOne: "Eine zweite Mischung für den Ansatz wird unter Rezeptur angelegt.",
      to: "Ansatz endet, ab Kopfhaut",
      first: "Kommt zuerst",
      firsts: { ends: "Spitzen", roots: "Ansatz" },
      after: "Ansatz später um",
      afterNote:
        "0: beides in einem Gang. Sonst wird für den Ansatz noch einmal geöffnet; er hat seine eigene Zeit und wird eigens angetippt.",
    },

    typing: {
      title: "Eintippen",
      kind: "Was",
      side: "Seite",
      from: "Von",
      to: "Bis",
      startsBehind: "Hinter der Haarlinie am Anfang",
      drift: "Läuft zurück um",
      add: (kind) => `${t.capital(kinds[kind])} hinzufügen`,
      refused: "Zwei Stellen wählen, die weiter auseinanderliegen.",
    },
  }
}
