import type { PaperName } from "../../../../presets/sheets/papers"
import type { SheetName } from "../../../../presets/sheets/sheetNames"
import type { Tools } from "../../tools"
import { cards } from "./cards"
import { handout } from "./handout"
import { lesson } from "./lesson"
import { map } from "./map"
import type { Names } from "./names"
import { views } from "./views"

/** Paper, and the screen it is chosen on. */
export const sheets = (t: Tools, common: Names) => ({
  done: {
    lesson: "Changer le texte de la fiche",
    "lesson-as-drawn": "Fiche : revenir à ce que dit le plan",
  },
  screen: screen(t),

  /** As each sheet is chosen. */
  names: {
    placement: "Schéma",
    technique: "Fiche technique",
    "take-home": "À emporter",
    record: "Fiche client",
  } satisfies Record<SheetName, string>,
  /** Who reads it, and what to mind when it is printed. */
  asides: {
    placement:
      "Le schéma est affiché au miroir, où d’autres peuvent le lire : il ne montre donc que les initiales. Imprimez à 100 % (pas « ajuster à la page ») pour que la règle soit en grandeur réelle.",
    technique:
      "Pour les élèves : ce qui est tracé, étape par étape, avec une tête à dessiner, les erreurs, un contrôle de son travail et le cadre d’évaluation. Ni nom, ni date, ni notes.",
    "take-home":
      "Pour la personne, en gros caractères : ce qui a été fait, peau et cuir chevelu, soins à la maison, quand revenir. Ni formule, ni réponses de santé.",
    record:
      "Pour le salon : les cheveux, ce qui a été demandé, les mélanges, temps prévus et réels, contrôles et notes pour la prochaine fois. Contient des réponses de santé.",
  } satisfies Record<SheetName, string>,

  /** The head of each page. */
  heading: {
    unnamed: "Plan sans nom",
    client: (initials: string) => `Initiales ${initials}`,
    page: (number: number, count: number) => `page ${t.whole(number)} sur ${t.whole(count)}`,
    datedPage: (day: string, number: number, count: number) =>
      `${t.date(day)}, page ${t.whole(number)} sur ${t.whole(count)}`,
  },

  cautions: cautions(),
  map: map(t, common),
  views: views(),
  cards: cards(t),
  handout: handout(),
  lesson: lesson(t),
  /** What a reader’s program is told of a drawing. */
  pictures: {
    view: (view: string, foils: readonly number[]) =>
      foils.length === 0
        ? `Dessin de la tête : ${view}.`
        : `Dessin de la tête : ${view}. Dessus : ${common.foils(foils)}.`,
    clock: "Barres de l’horloge ; les mêmes minutes sont à côté en chiffres.",
    comb: "Une règle en grandeur réelle.",
    stitches: "Mailles en grandeur réelle.",
  },
})

const screen = (t: Tools) => ({
  title: "Fiches",
  sheet: "Fiche",
  paper: "Papier",
  papers: { a4: "A4", letter: "Letter" } satisfies Record<PaperName, string>,
  language: "Langue de la fiche",
  change: "Modifier",
  front: "Vue de face",
  fronts: { facing: "Face à face", mirror: "Dans le miroir" },
  save: "Enregistrer PDF",
  print: "Imprimer…",
  share: "Partager…",
  readAsPage: "Lire comme page",
  readHint:
    "Une page pour un navigateur ou un téléphone, sans script : un texte qu’on peut agrandir ou faire lire à voix haute.",
  cancel: "Annuler",
  saved: (file: string) => `${file} enregistré`,
  pages: "Pages",
  page: (number: number) => `Page ${t.whole(number)}`,
  pageOf: (number: number, count: number) => `Page ${t.whole(number)} sur ${t.whole(count)}`,
  asPrinted: "Page imprimée",
  working: "Mise en page…",
  workingOn: (done: number, count: number) => `Mise en page, étape ${t.whole(done)} sur ${t.whole(count)}…`,
  printing: (done: number, count: number) => `Impression de la page ${t.whole(done)} sur ${t.whole(count)}…`,
  stopped: "Les pages n’ont pas été mises en page.",
  again: "Mettre en page",
  noFont: "La police des fiches ne s’est pas chargée. Vérifiez la connexion et rechargez.",
  noWords: "La langue de la fiche ne s’est pas chargée. Vérifiez la connexion et choisissez-la de nouveau.",
  noPdf: "Le PDF n’a pas pu être fait. Rechargez la page et réessayez.",
})

const cautions = () => ({
  /** What every placement map and handout says, in the fewest words. */
  all: [
    "D’abord le mode d’emploi du fabricant, puis la loi locale et les règles d’exercice, puis votre jugement. Cette fiche ne fait que planifier.",
    "Gants mis. Éviter yeux, cils, sourcils. Dans un œil : rincer immédiatement, 20 minutes.",
    "Aérer en mélangeant. Couvrir le bol sans serrer ; ne jamais le fermer hermétiquement.",
    "Pas de chaleur sauf si le mode d’emploi la permet. Ni bol ni pince en métal.",
    "Ni flamme, ni appareil chauffant, ni aérosol près du produit. Les papillotes usagées vont dans l’eau, pas à la poubelle.",
    "Demander à la personne de signaler toute chaleur, tout picotement ou toute douleur.",
    "Papillote chaude ou gonflée, picotement ou brûlure : la retirer et rincer immédiatement et abondamment à l’eau fraîche.",
    "Contrôler toutes les 5 à 10 minutes. Arrêter à la hauteur visée, au temps maximum du fabricant, ou quand cela sèche, selon ce qui vient en premier.",
    "Cheveux, grammes et minutes sont des estimations : lire la fourchette.",
  ],
  localRule: "Règle locale :",
  codedLetters:
    "Certaines lettres ne peuvent pas être imprimées ici. À la place de chacune figure son code, par exemple [U+6F22].",
})
