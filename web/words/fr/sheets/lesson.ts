import type { lesson as english } from "../../en/sheets/lesson"

/** The text of a handout, where an educator changes it. */
export const lesson: typeof english = (t) => ({
  edit: "Changer son texte…",
  asDrawn: "Revenir à ce que dit le plan",
  title: "Ce que lit la classe",
  name: "Titre",
  aim: "But",
  tools: "Outils, un par ligne",
  steps: "La marche à suivre, une étape par ligne",
  checks: "Vérifier son travail, un point par ligne",
  faults: "Défauts courants",
  addFault: "Ajouter un défaut",
  remove: "Retirer",
  removeFault: (number) => `Retirer le défaut ${t.whole(number)}`,
  follows:
    "Ce que vous laissez tel quel continue de suivre le plan. La classe le lit : n’y écrivez rien d’une cliente.",
  keep: "Enregistrer ce texte",
})
