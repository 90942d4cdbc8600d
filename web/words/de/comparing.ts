import type { SectionNameCode } from "../../core/document/sectionNameCode"
import type { comparing as english } from "../en/comparing"
import { say } from "../say"

/** A learner's plan held against the model's. */
export const comparing: typeof english = (t, common) => {
  const named = (sections: readonly SectionNameCode[]) =>
    t.and(sections.map((each) => say<SectionNameCode>(common.sectionName, each)))
  const mm = (by: number) => t.told.mm(Math.abs(by), 1)
  const toward = {
    nape: "entlang des Scheitels zum Nacken hin",
    front: "entlang des Scheitels zur Stirnmitte hin",
    left: "entlang des Scheitels zur linken Seite des Gastes",
    right: "entlang des Scheitels zur rechten Seite des Gastes",
  }
  return {
    done: {},
    criteria: {
      side: "Kopfseite",
      hairline: "Abstand von der Haarlinie",
      back: "Lage des Scheitels",
      along: "Lage entlang des Scheitels",
      angle: "Winkel",
      length: "Länge",
      depth: "Tiefe",
      start: "Produktbeginn",
      taken: "Entnommen",
      kind: "Art",
      order: "Reihenfolge",
    },
    differs: {
      "other-side": "auf der anderen Kopfseite gearbeitet",
      "from-hairline": ({ byMm }) =>
        `${mm(byMm)} zu ${byMm > 0 ? "weit hinter der" : "nah an der"} Haarlinie`,
      "moved-over": ({ byMm }) => `Scheitel ${mm(byMm)} zu weit ${byMm > 0 ? "hinten" : "vorn"}`,
      slid: ({ byMm, toward: way }) =>
        `${mm(byMm)} ${way ? toward[way] : "entlang des Scheitels"} verschoben`,
      turned: ({ byDeg }) => `Winkel weicht um ${t.number(byDeg, 0)}° ab`,
      longer: ({ byShare }) => `${t.percent(Math.abs(byShare))} zu ${byShare > 0 ? "lang" : "kurz"}`,
      deeper: ({ byMm }) => `${mm(byMm)} zu ${byMm > 0 ? "tief" : "flach"}`,
      starts: ({ byMm }) =>
        `Produkt beginnt ${mm(byMm)} zu ${byMm > 0 ? "weit von der" : "nah an der"} Kopfhaut`,
      "wrong-band": ({ model }) =>
        `von der falschen Seite des Scheitels genommen: richtig ist ${model === "front" ? "davor" : "dahinter"}`,
      "other-kind": ({ model, learner }) => `${common.kinds[learner]} statt ${common.kinds[model]}`,
      "out-of-order": ({ model, learner }) =>
        `Reihenfolge: an Stelle ${t.whole(learner)} gearbeitet, richtig ist ${t.whole(model)}`,
    },
    within: "innerhalb der Toleranz",
    missing: "fehlt",
    whole: {
      "laid-anew": "Die Vorlage wurde nach ihren Abständen von der Haarlinie auf diesen Kopf gelegt.",
      "no-room": ({ sections }) =>
        t.count(sections, {
          one: "# Partie der Vorlage hat auf diesem Kopf keinen Platz und wurde nicht verlangt.",
          other: "# Partien der Vorlage haben auf diesem Kopf keinen Platz und wurden nicht verlangt.",
        }),
      mirrored: "Spiegelverkehrt gearbeitet: verglichen mit der anderen Seite der Vorlage.",
      matched: ({ matched, of }) => `${t.whole(matched)} von ${t.whole(of)} Partien der Vorlage zugeordnet.`,
      missing: ({ sections }) => `Es fehlen, nach den Nummern der Vorlage: ${named(sections)}.`,
      extra: ({ sections }) => `Nicht in der Vorlage: ${named(sections)}.`,
    },
    sheet: {
      about: "Bewertungsblatt",
      assumed:
        "Die Toleranzen sind Annahmen und von der prüfenden Person festzulegen. Jeden Schritt nach dem bewerten, was zu sehen war.",
      step: "Schritt",
      unaided: "Allein",
      withHelp: "Mit Hilfe",
      notYet: "Noch nicht",
      measured: "Am Plan gemessen",
      criterion: "Kriterium",
      tolerance: "Toleranz",
      met: "Erfüllt",
      metOf: (met, of) => `${t.whole(met)} von ${t.whole(of)}`,
      byCriteria: "Nach Kriterien",
      steps: "Nach Schritten",
      whole: "Insgesamt",
      learner: "Lernende Person",
      assessor: "Prüfende Person",
      date: "Datum",
      remarks: "Bemerkungen",
      signature: "Unterschrift",
    },
  }
}
