import type { hairlineForms } from "../../../../geometry/scalp/hairlineLandmarks"
import type { TriedHead } from "../../../../presets/client/headSizes"
import type { MeasureLabel, TechniqueWay } from "../../../../presets/techniques/technique"
import type { Tools } from "../../tools"
import { draft } from "./draft"
import { frames } from "./frames"
import type { HouseWords } from "./houseWords"
import { others } from "./others"
import { stepWords } from "./stepWords"

/** Techniques: those of the house in words, and the panel that shows them beside the salon's own. */
export const techniques = (t: Tools) => {
  const steps = stepWords(t)
  const house: HouseWords = { ...frames(t, steps), ...others(t, steps) }
  const sections = (count: number) => t.count(count, { one: "# section", other: "# sections" })
  return {
    done: {},
    house,
    /** What hair that a technique leaves out is called. */
    leftOut: { veil: "Voile", "baby-hairs": "Follets", edges: "Bordure" },
    measures: {
      depth: "Épaisseur",
      "slice-depth": "Épaisseur tranche",
      "weave-depth": "Épaisseur tricotage",
      "backcomb-depth": "Épaisseur crêpage",
      gap: "Écart",
      rows: "Rangs",
      "rows-a-side": "Rangs par côté",
      "slices-a-side": "Tranches par côté",
      weaves: "Tricotages",
      "rows-over-forehead": "Rangs sur le front",
      "rows-on-heavy-side": "Rangs côté fort",
    } satisfies Record<MeasureLabel, string>,
    ways: {
      only: "Telle quelle",
      "bright-edge": "Plus clair au bord",
      "soft-edge": "Plus doux au bord",
      "in-turn": "Tranche et tricotage alternés",
      melted: "Fondu crêpé",
      "parted-left": "Raie à gauche",
      "parted-right": "Raie à droite",
      "heavy-right": "Fort à droite",
      "heavy-left": "Fort à gauche",
    } satisfies Record<TechniqueWay, string>,
    draft: draft(t),

    panel: {
      startFrom: "Partir d’une technique",
      title: "Techniques",
      own: "Les vôtres",
      /** What a technique comes to on this head. */
      comesTo: ({ foils, low, high, minLow, minHigh, withoutRoom }: ComesTo) => {
        const told = [
          t.count(foils, { one: "# papillote", other: "# papillotes" }),
          t.gramsRange({ low, mid: low, high }),
          `${t.minuteRange(minLow, minHigh)} de placement`,
        ].join(", ")
        return withoutRoom > 0 ? `${told} ; pas de place ici pour ${sections(withoutRoom)}` : told
      },
      read: "Étapes et options",
      readOf: (name: string) => `Étapes et options : ${name}`,
      steps: "Étapes",
      notes: "Notes",
      placeHere: "Placer sur cette tête",
      placeOnNew: "Sur un nouveau plan",
      saveAsOwn: "Enregistrer la vôtre",
      saveAsCopy: "Enregistrer une copie",
      edit: "Renommer, modifier",
      editing: (name: string) => `Modifier « ${name} »`,
      delete: "Supprimer",
      stepsStay: "Les étapes restent comme elles sont écrites.",
      vary: "Modifier avant de placer",
      way: "Variante",
      stitch: "Maille",
      span: ({ low, high, usual }: { low: string; high: string; usual: string }) =>
        `de ${low} à ${high}, d’habitude ${usual}`,
      anotherHead: "Voir sur une autre tête",
      head: "Tête",
      hairline: "Lisière",
      thisPlans: "De ce plan",
      heads: { small: "Petite, 52 cm", average: "Moyenne", large: "Grande, 62 cm" } satisfies Record<
        TriedHead,
        string
      >,
      hairlines: {
        round: "Ronde",
        straight: "Droite",
        receding: "Reculée",
        peaked: "En pointe",
      } satisfies Record<(typeof hairlineForms)[number], string>,
    },

    own: {
      save: (selected: number) =>
        selected === 0
          ? "Tout enregistrer comme technique…"
          : t.count(selected, {
              one: "Enregistrer la section choisie comme technique…",
              other: "Enregistrer # sections choisies comme technique…",
            }),
      titleOf: (count: number) => `Une technique de ${sections(count)}`,
      name: "Nom",
      nameHint: "Un nom d’au moins une lettre",
      aim: "À quoi elle sert, en une phrase",
      steps: "Étapes, une par ligne",
      notes: "Notes",
      private:
        "Une technique peut être transmise : n’y écrivez rien sur une personne. Les notes des papillotes restent avec le plan.",
      saveThis: "Enregistrer la technique",
      saved: (name: string) => `La technique « ${name} » est enregistrée`,
      savedAlready: (name: string) => `La technique « ${name} » était déjà enregistrée`,
      deleted: (name: string) => `La technique « ${name} » a été supprimée`,
      deletedNote: (name: string) => `« ${name} » : supprimée.`,
      undo: "Défaire",
      openFile: "Ouvrir un fichier de technique…",
      file: "Fichier de technique",
      unreadable: (count: number) =>
        t.count(count, {
          one: "# technique enregistrée ici est illisible pour ce Partline, et reste telle quelle.",
          other: "# techniques enregistrées ici sont illisibles pour ce Partline, et restent telles quelles.",
        }),
    },

    share: {
      copyLink: "Copier le lien",
      share: "Partager…",
      toFile: "Vers un fichier",
      tooLong: "Trop longue pour un lien : enregistrez-la dans un fichier et envoyez-le.",
      copyFromHere: "Copiez le lien d’ici :",
      copied: "Le lien est copié. Il contient la technique, rien sur une personne.",
      link: "Lien",
      byLink: "Une technique par lien",
      nameless: "Une technique sans nom",
      opened:
        "Vous avez ouvert une technique partagée. Rien n’est enregistré ni modifié tant que vous ne choisissez pas.",
      onTop: ({ plan, count }: { plan: string; count: number }) =>
        `« ${plan} » a déjà ${sections(count)} : placée sur cette tête, la technique s’y ajoute.`,
    },
  }
}

type ComesTo = {
  foils: number
  low: number
  high: number
  minLow: number
  minHigh: number
  withoutRoom: number
}
