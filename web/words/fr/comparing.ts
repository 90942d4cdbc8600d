import type { SectionNameCode } from "../../core/document/sectionNameCode"
import type { comparing as english } from "../en/comparing"
import { say } from "../say"

/** A learner's plan held against the model's. */
export const comparing: typeof english = (t, common) => {
  const named = (sections: readonly SectionNameCode[]) =>
    t.and(sections.map((each) => say<SectionNameCode>(common.sectionName, each)))
  const mm = (by: number) => t.told.mm(Math.abs(by), 1)
  const toward = {
    nape: "le long de la séparation, vers la nuque",
    front: "le long de la séparation, vers le milieu du front",
    left: "le long de la séparation, vers la gauche de la personne",
    right: "le long de la séparation, vers la droite de la personne",
  }
  return {
    done: {},
    criteria: {
      side: "Côté de la tête",
      hairline: "Distance à la lisière",
      back: "Place de la séparation",
      along: "Place le long de la séparation",
      angle: "Angle",
      length: "Longueur",
      depth: "Profondeur",
      start: "Début du produit",
      taken: "Prélevée",
      kind: "Type",
      order: "Ordre",
    },
    differs: {
      "other-side": "faite de l’autre côté de la tête",
      "from-hairline": ({ byMm }) => `${mm(byMm)} trop ${byMm > 0 ? "loin derrière" : "près de"} la lisière`,
      "moved-over": ({ byMm }) => `séparation ${mm(byMm)} trop en ${byMm > 0 ? "arrière" : "avant"}`,
      slid: ({ byMm, toward: way }) =>
        `décalée de ${mm(byMm)} ${way ? toward[way] : "le long de la séparation"}`,
      turned: ({ byDeg }) => `angle décalé de ${t.number(byDeg, 0)}°`,
      longer: ({ byShare }) => `${t.percent(Math.abs(byShare))} trop ${byShare > 0 ? "longue" : "courte"}`,
      deeper: ({ byMm }) => `${mm(byMm)} de profondeur ${byMm > 0 ? "en trop" : "en moins"}`,
      starts: ({ byMm }) =>
        `le produit commence ${mm(byMm)} trop ${byMm > 0 ? "loin" : "près"} du cuir chevelu`,
      "wrong-band": ({ model }) =>
        `prélevée du mauvais côté de la séparation : il faut ${model === "front" ? "devant" : "derrière"}`,
      "other-kind": ({ model, learner }) => `${common.kinds[learner]} au lieu de ${common.kinds[model]}`,
      "out-of-order": ({ model, learner }) =>
        `ordre de travail : faite à la place ${t.whole(learner)}, il faut la ${t.whole(model)}`,
    },
    within: "dans la tolérance",
    missing: "manque",
    whole: {
      "laid-anew": "Le modèle a été posé sur cette tête selon ses distances à la lisière.",
      "no-room": ({ sections }) =>
        t.count(sections, {
          one: "# section du modèle n’a pas de place sur cette tête et n’a pas été demandée.",
          other: "# sections du modèle n’ont pas de place sur cette tête et n’ont pas été demandées.",
        }),
      mirrored: "Fait en miroir : comparé à l’autre côté du modèle.",
      matched: ({ matched, of }) => `${t.whole(matched)} des ${t.whole(of)} sections du modèle retrouvées.`,
      missing: ({ sections }) => `Manquent, selon les numéros du modèle : ${named(sections)}.`,
      extra: ({ sections }) => `Absentes du modèle : ${named(sections)}.`,
    },
    sheet: {
      about: "Fiche d’évaluation",
      assumed:
        "Les tolérances sont des hypothèses, à fixer par qui évalue. Cochez chaque étape d’après ce que vous avez vu.",
      step: "Étape",
      unaided: "Sans aide",
      withHelp: "Avec aide",
      notYet: "Pas encore",
      measured: "Mesuré sur le plan",
      criterion: "Critère",
      tolerance: "Tolérance",
      met: "Rempli",
      metOf: (met, of) => `${t.whole(met)} sur ${t.whole(of)}`,
      byCriteria: "Par critère",
      steps: "Par étape",
      whole: "Ensemble",
      learner: "Élève",
      assessor: "Évaluation par",
      date: "Date",
      remarks: "Remarques",
      signature: "Signature",
    },
  }
}
