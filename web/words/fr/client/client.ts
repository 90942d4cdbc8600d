import type { HairlineForm } from "../../../../geometry/scalp/hairlineLandmarks"
import type { FinishTone, Scalp, StrandResult } from "../../../core/document/consultation"
import type { Tools } from "../../tools"
import { type HairPlaces, hairLine, histories, levelNames, porosities, stretches } from "./hair"
import { questions } from "./questions"
import { lookWindow, strandFaults } from "./strandTests"

export const client = (t: Tools, places: HairPlaces) => {
  const capitals = <K extends string>(names: Readonly<Record<K, string>>) =>
    Object.fromEntries(Object.entries<string>(names).map(([key, name]) => [key, t.capital(name)])) as Record<
      K,
      string
    >
  return {
    title: "Profil",
    /** What undo calls a change of this chapter. */
    done: {
      answer: "Répondre à une question",
      "confirm-answers": "Confirmer des réponses d’un autre jour",
      "set-asked-by": "Noter qui demande",
      "set-allergy": "Décrire l’allergie",
      "set-henna-date": "Noter la date du tatouage au henné noir",
      "answer-rest": "Répondre non au reste",
      "clear-answer": "Effacer une réponse",
      "set-age": "Noter l’âge",
      "clear-age": "Effacer l’âge",
      "set-scalp": "Noter le cuir chevelu",
      "clear-scalp": "Effacer le cuir chevelu",
      "set-level": "Noter la hauteur",
      "set-history": "Noter l’historique",
      "set-porosity": "Noter la porosité",
      "clear-porosity": "Effacer la porosité",
      "set-stretch": "Noter l’élasticité",
      "clear-stretch": "Effacer l’élasticité",
      "set-target": "Noter la hauteur visée",
      "set-finish": "Noter le reflet final",
      "clear-finish": "Effacer le reflet final",
      "set-brightest": "Noter où c’est le plus clair",
      "set-root": "Noter la distance à la racine",
      "set-upkeep": "Noter les semaines entre visites",
      "set-grey": "Noter les cheveux blancs",
      "apply-test": "Faire une touche d’essai",
      "record-test": "Noter une touche d’essai",
      "remove-test": "Retirer une touche d’essai",
      "record-strand": "Noter un test mèche",
      "rename-plan": "Renommer le plan",
      "set-day": "Modifier la date",
      "set-initials": "Modifier les initiales",
      "set-hairline": ({ form }: { form: HairlineForm }) => `Choisir la lisière : ${hairlineForms[form]}`,
      "average-head": "Prendre une tête moyenne",
      "tape-head": "Mesurer la tête au ruban",
      "caliper-head": "Mesurer la tête au compas",
      "set-head-size": "Modifier la taille de la tête",
      "set-density": "Modifier la densité",
      "set-texture": "Modifier la texture",
      "set-length": ({ where }: { where: LengthPlace }) =>
        `Modifier la longueur : ${lengthPlacesInside[where]}`,
    },
    caution:
      "Partline planifie le travail ; il ne pose pas de diagnostic. Les tests et le mode d’emploi du fabricant passent en premier, et chaque chiffre est une estimation avec une fourchette.",
    plan: {
      title: "Plan",
      name: "Nom du plan",
      day: "Date",
      initials: "Initiales",
      initialsHint: "Initiales seulement : le schéma est affiché où d’autres le lisent.",
    },
    consultation: { hide: "Masquer la santé", show: "Montrer la santé" },
    /** The parts of the consultation, each with how much of it is known. */
    steps: {
      ask: "Demander",
      hair: "Cheveux",
      head: "Tête",
      goal: "Souhait",
      count: (done: number, of: number) => `${t.whole(done)} sur ${t.whole(of)}`,
    },
    /** Health: age, scalp, questions. */
    ask: {
      askedBy: "Demandé par",
      alone: "À demander une à une",
      together: "À demander aussi",
      inherited: (day: string | null) =>
        day === null
          ? "Réponse d’un autre jour : appuyez sur la même réponse pour la confirmer."
          : `Réponse du ${t.date(day)} : appuyez sur la même réponse pour la confirmer.`,
      confirm: (count: number) =>
        t.count(count, {
          one: "J’ai redemandé : # réponse inchangée",
          other: "J’ai redemandé : # réponses inchangées",
        }),
      allergy: { which: "À quoi ?", when: "Depuis quand ?", how: "Quels signes ?" },
      hennaOn: "Date du tatouage",
      age: "Âge",
      ageNotKnown: "Âge, non demandé",
      years: "ans",
      scalp: "Cuir chevelu",
      scalps: {
        calm: "Calme",
        sensitive: "Sensible",
        irritated: "Irrité",
        broken: "Lésé",
      } satisfies Record<Scalp, string>,
      rest: (count: number) =>
        t.count(count, {
          one: "J’ai tout demandé : « non » à la dernière",
          other: "J’ai tout demandé : « non » aux # restantes",
        }),
    },
    questions,
    hair: {
      title: "Les cheveux actuels",
      where: "Où",
      allOver: "Toute la tête",
      zones: capitals(places.zones),
      parts: capitals(places.strandParts),
      along: "Le long de la mèche",
      rootToEnds: "Racine à pointes",
      level: "Hauteur actuelle",
      levelNamed: (legend: string, level: number) => `${legend} : ${level}, ${levelNames[level]}`,
      levelNames,
      history: "Historique",
      neverTreated: "Jamais traités",
      histories,
      porosity: "Porosité",
      porosities,
      stretch: "Élasticité, étirés mouillés",
      stretches,
      line: hairLine(t, places),
    },
    measures: {
      title: "Cheveux",
      density: "Densité",
      densityUnit: "par cm²",
      densities: { low: "Faible", medium: "Moyenne", high: "Forte" },
      texture: "Texture",
      textureUnit: "µm",
      textures: { fine: "Fine", medium: "Moyenne", coarse: "Épaisse" },
      withFigure: (word: string, value: number) => `${word} ${t.number(value)}`,
      length: "Longueur, peignés lisses",
      lengthPlaces,
      lengthOf: {
        front: "Longueur devant",
        sides: "Longueur côtés",
        back: "Longueur arrière",
      } satisfies Record<LengthPlace, string>,
      lengths,
      lengthOption: (place: LengthName, cm: number) => `${lengths[place]}, ${cm} cm`,
      lengthAbove: (place: LengthName) => `Au-dessus : ${lengthsInside[place]}`,
      lengthBelow: (place: LengthName) => `Au-dessous : ${lengthsInside[place]}`,
      lengthBetween: (from: LengthName, to: LengthName) => `${lengths[from]} à ${lengthsInside[to]}`,
    },
    goals: {
      title: "Ce que souhaite la personne",
      target: "Hauteur visée, avant patine",
      finish: "Reflet final",
      finishes: { cool: "Froid", neutral: "Neutre", warm: "Chaud" } satisfies Record<FinishTone, string>,
      brightest: "Où le plus clair",
      root: "Distance à la racine",
      roots: { tight: "Au plus près", standard: "Standard", soft: "Douce" },
      rootOption: (word: string, mm: number) => `${word}, ${t.mm(mm)}`,
      upkeep: "Semaines entre visites",
      upkeepOther: "ou un autre nombre",
      weeks: "semaines",
      grey: "Cheveux blancs",
      greys: {
        "0": "Aucun",
        "0.1": "Un dixième",
        "0.25": "Un quart",
        "0.5": "La moitié",
        "0.75": "La plupart",
        "1": "Tous",
      },
    },
    tests: {
      title: "Touches d’essai (tests d’alerte allergie)",
      applyNow: (product: string) => `Faire la touche d’essai : ${product}`,
      orOther: "ou un autre produit",
      product: "Produit à tester",
      choose: "Choisir",
      apply: "Faire le test",
      clear: (readOn: string) =>
        `Négative, lue le ${t.date(readOn)}. Valable aujourd’hui selon le délai fixé par le fabricant ou le salon.`,
      place: "Où sur la peau",
      placeHint: "là où le dit le fabricant",
      applied: "Faite",
      result: "Résultat",
      results: { unread: "Pas encore lue", clear: "Négative", reacted: "Réaction" },
      readBy: "Lue par",
      readOn: "Lue le",
      changed: "Du changement depuis ?",
      validUntil: "Valable jusqu’au (selon la notice du fabricant)",
      remove: "Retirer",
    },
    strandTests: {
      title: "Test mèche",
      outcomes: { held: "Réussi", failed: "Échoué" } satisfies Record<StrandResult["outcome"], string>,
      others: "Autres produits",
    },
    head: {
      /** A tape that the two others contradict; it is taken all the same. */
      contradicts: ({ name, byMm }: { name: string; byMm: number }) =>
        `${name} : ${t.mm(Math.abs(byMm))} de ${byMm > 0 ? "plus" : "moins"} que ne le laissent attendre les deux autres. Mesurez de nouveau ; d’ici là, cette mesure compte moins.`,
      size: "Taille de tête",
      measured: "Mesure",
      ways: { average: "Moyenne", tape: "Au ruban", caliper: "Au compas" },
      units: "Unités",
      unitNames: { metric: "Métriques", inches: "Pouces" },
      average: (around: string, over: string, frontToNape: string) =>
        `Tête adulte moyenne : tour ${around}, par le dessus ${over}, du front à la nuque ${frontToNape}. Mesurez pour ajuster à la personne.`,
      hairline: "Lisière",
      /** Each measure of a head, with its usual span and how it is taken. */
      measures: {
        aroundMm: {
          name: "Tour",
          hint: (low: string, high: string, unit: string) =>
            `En général de ${low} à ${high} ${unit} : au-dessus des sourcils et autour par l’arrière.`,
        },
        overMm: {
          name: "Par le dessus",
          hint: (low: string, high: string, unit: string) =>
            `En général de ${low} à ${high} ${unit} : du devant d’un conduit d’oreille à l’autre.`,
        },
        frontToNapeMm: {
          name: "Front à nuque",
          hint: (low: string, high: string, unit: string) =>
            `En général de ${low} à ${high} ${unit} : de la lisière du front au creux de la nuque.`,
        },
        lengthMm: {
          name: "Longueur",
          hint: (low: string, high: string, unit: string) =>
            `En général de ${low} à ${high} ${unit} : d’entre les sourcils à l’arrière de la tête.`,
        },
        breadthMm: {
          name: "Largeur",
          hint: (low: string, high: string, unit: string) =>
            `En général de ${low} à ${high} ${unit} : au plus large, au-dessus des oreilles.`,
        },
        heightMm: {
          name: "Hauteur",
          hint: (low: string, high: string, unit: string) =>
            `En général de ${low} à ${high} ${unit} : du conduit de l’oreille au sommet, à la verticale.`,
        },
      },
      hairlines: hairlineForms,
      whole: "Sur cette tête",
      area: "Surface chevelue",
      hairs: "Cheveux en tout",
    },
    strandFaults: strandFaults(t),
    lookWindow: lookWindow(t),
  }
}

type LengthPlace = "front" | "sides" | "back"
const lengthPlaces: Record<LengthPlace, string> = { front: "Devant", sides: "Côtés", back: "Arrière" }
const lengthPlacesInside: Record<LengthPlace, string> = { front: "devant", sides: "côtés", back: "arrière" }

type LengthName = keyof typeof lengths
const lengths = {
  brow: "Sourcils",
  ear: "Oreille",
  cheek: "Joue",
  chin: "Menton",
  shoulder: "Épaule",
  collarbone: "Clavicule",
  "shoulder blade": "Omoplate",
  "bra line": "Milieu du dos",
  waist: "Taille",
}
const lengthsInside: Record<LengthName, string> = {
  brow: "sourcils",
  ear: "oreille",
  cheek: "joue",
  chin: "menton",
  shoulder: "épaule",
  collarbone: "clavicule",
  "shoulder blade": "omoplate",
  "bra line": "milieu du dos",
  waist: "taille",
}

const hairlineForms: Record<HairlineForm, string> = {
  round: "Ronde",
  straight: "Droite",
  receding: "Reculée",
  peaked: "En pointe",
}

export type ClientWords = ReturnType<typeof client>
