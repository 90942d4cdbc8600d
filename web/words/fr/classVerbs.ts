import type { classVerbs as english } from "../en/classVerbs"

/** The verbs of a class, and how the size of a head is given. */
export const headOptions = {
  length: "mm, des sourcils à l’arrière de la tête, au compas",
  breadth: "mm, au plus large, au compas",
  height: "mm, de l’oreille au sommet, au compas",
  around: "mm, tour de tête, au ruban",
  over: "mm, d’oreille à oreille par le dessus, au ruban",
  "front-to-nape": "mm, de la lisière du front à la nuque par le dessus, au ruban",
  hairline: "round (ronde), straight (droite), receding (reculée) ou peaked (en pointe) ; round par défaut",
}

export const classVerbs: typeof english = {
  lay: {
    summary: "Une technique posée sur une tête selon ses mesures, comme plan.",
    details: [
      "TECHNIQUE est un fichier de technique ou l’identifiant d’une de la maison. Sans mesures, elle est posée sur la tête usuelle.",
    ],
    options: {
      ...headOptions,
      out: "où écrire le plan",
    },
  },
  handout: {
    summary:
      "La fiche d’une technique pour chaque personne d’une classe en PDF, sur sa propre tête si elle est mesurée.",
    details: [
      "TECHNIQUE est un fichier de technique ou l’identifiant d’une de la maison. Rien n’est écrit avant que toutes soient prêtes.",
      "--language est la langue des fiches ; les phrases sur la commande sont dans celle de --messages.",
    ],
    options: {
      names: "la classe, CSV avec la colonne name",
      heads:
        "leurs têtes, CSV : name et en mm length, breadth, height ou around, over, front-to-nape ; hairline si elle n’est pas round",
      paper: "a4 ou letter ; sans indication letter pour en-US, sinon a4",
      out: "le dossier où écrire ; créé s’il n’existe pas",
      messages: "langue des phrases sur la commande ; en-GB sans indication",
    },
  },
  compare: {
    summary:
      "Plans d’élèves comparés à un modèle, section par section, par critères, chacun avec une tolérance.",
    details: [
      "MODEL est un plan, un fichier de technique ou l’identifiant d’une technique de la maison. Il est posé sur la tête de chaque",
      "élève : une technique selon ses mesures, un autre plan point par point selon la lisière. Les sections sont rapprochées par type,",
      "côté et place, quel que soit l’ordre. Ce qui manque ne remplit aucun critère. Les tolérances sont des hypothèses.",
    ],
    options: {
      names: "la classe, CSV avec les colonnes name et file",
      out: "où écrire le tableau de la classe, CSV",
      sheets: "dossier pour une fiche d’évaluation par élève en PDF ; créé s’il n’existe pas",
      within:
        "tolérances, séparées par une virgule : hairline=2,back=2,along=5 (mm), angle=10 (degrés), length=10 (%), depth=1,start=2 (mm)",
      paper: "papier des fiches, a4 ou letter ; sans indication letter pour en-US, sinon a4",
      messages: "langue des phrases sur la commande ; en-GB sans indication",
    },
  },
}
