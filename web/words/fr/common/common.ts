import type { Direction, DirectionName } from "../../../../geometry/parting/direction"
import type { LandmarkName } from "../../../../geometry/scalp/hairlineLandmarks"
import type { CarrierKind, FoilLie, SectionKind } from "../../../../geometry/section/section"
import type { WorkingKind, WorkingSide } from "../../../../geometry/working/workingSectionKind"
import type { StrandPart, Zone } from "../../../core/document/consultation"
import type { Sides } from "../../../core/document/hairlineMoves"
import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { CoatCode } from "../../../core/placement/coatCodes"
import type { HairlinePointCode, LandmarkCode, PlaceCode, Side } from "../../../core/placement/places"
import type { WorkingNameCode } from "../../../core/placement/workingName"
import type { MinuteCode } from "../../../core/schedule/minuteCode"
import { type Sentences, say } from "../../say"
import type { Tools } from "../../tools"
import { pieces } from "./pieces"

/**
 * Names that every chapter uses. A name is written as it stands within a sentence; `t.capital` begins a line with it.
 * What a section is called is feminine and singular, whatever it is, so that sentences can agree with it.
 */
export const common = (t: Tools) => {
  const sides: Record<Side, string> = { left: "gauche", right: "droite", centre: "centre" }
  const landmarks: Record<LandmarkName, string> = {
    "centre front": "milieu du front",
    recession: "golfe",
    temple: "tempe",
    sideburn: "patte",
    "ear top": "haut de l’oreille",
    "behind ear": "derrière l’oreille",
    "nape corner": "coin de nuque",
    "centre nape": "milieu de nuque",
  }
  const landmark = ({ landmark: name, side }: LandmarkCode) =>
    side === "centre" ? landmarks[name] : `${landmarks[name]} ${sidedLandmarks[name][side]}`
  const directions: Record<DirectionName, string> = {
    "parallel to hairline": "parallèle à la lisière",
    horizontal: "horizontale",
    "diagonal forward": "diagonale avant",
    "diagonal back": "diagonale arrière",
    vertical: "verticale",
  }
  const clientSide: Record<Side, string> = {
    left: "la gauche de la personne",
    right: "la droite de la personne",
    centre: "le milieu",
  }

  /** What an area of the divided head is called within a sentence. */
  const workingName: Sentences<WorkingNameCode> = {
    "own-name": ({ name, nth }) => (nth > 1 ? `${name} ${t.whole(nth)}` : name),
    "by-place": ({ kind, side, nth }) => {
      const name = workingArea(kind, side)
      return nth > 1 ? `${name} ${t.whole(nth)}` : name
    },
  }

  const coat = ({ part, mix, rootsToMm }: CoatCode) => {
    const letter = `mélange ${mix}`
    if (part === "whole") return letter
    return part === "roots"
      ? `${letter} sur la racine jusqu’à ${t.told.mm(rootsToMm ?? 0)}`
      : `${letter} sur longueurs et pointes`
  }

  return {
    done: {},

    /** What stands on buttons and beside fields of every panel. */
    actions: {
      save: "Enregistrer",
      cancel: "Annuler",
      close: "Fermer",
      remove: "Retirer",
      delete: "Supprimer",
      change: "Modifier",
      undo: "Défaire",
      redo: "Refaire",
    },
    fields: {
      /** Takes back what a field holds. */
      clear: (field: string) => `Effacer : ${field}`,
      /** What a number may be; `examples` tell how it is written where that is not by decimals. */
      expected: ({ name, low, high, unit, examples }: Expected) => {
        const span = `${name} : de ${low} à ${high} ${unit}`.trimEnd()
        return examples ? `${span}, à saisir comme ${examples}.` : `${span}.`
      },
      notKnown: "Non connu",
      openFile: "Ouvrir un fichier…",
      planFile: "Fichier de plan",
      notOpened: "Le fichier n’a pas été ouvert. Le plan à l’écran n’a pas changé.",
    },
    answers: { yes: "Oui", no: "Non", notSet: "Non réglé", notAsked: "Non demandé" },

    sides,
    /** A side as it is told to whoever faces the client. */
    clientSide,
    onSide: {
      left: "côté gauche de la personne",
      right: "côté droit de la personne",
      centre: "au milieu",
    } satisfies Record<Side, string>,
    bothSides: "des deux côtés",

    landmarks,
    /** A landmark of one side, such as "left temple". */
    landmark,
    /** A landmark with the sides it is meant on: "temple, both sides", "left temple". */
    landmarkOf: (name: LandmarkName, on: Sides) => {
      if (name === "centre front" || name === "centre nape") return landmarks[name]
      return on === "both" ? `${landmarks[name]}, des deux côtés` : landmark({ landmark: name, side: on })
    },
    /** Where a section lies, as a name: "left temple", "62 mm behind the hairline, left". */
    place: {
      "at-landmark": landmark,
      "behind-hairline": ({ behindMm, side }) =>
        side === "centre"
          ? `${t.mm(behindMm)} derrière la lisière`
          : `${t.mm(behindMm)} derrière la lisière, à ${sides[side]}`,
    } satisfies Sentences<PlaceCode>,
    /** The same within a sentence, after a verb such as "part". */
    atPlace: {
      "at-landmark": (at) =>
        at.landmark === "behind ear" ? landmark(at) : `${atThe[at.landmark]} ${landmark(at)}`,
      "behind-hairline": ({ behindMm, side }) =>
        side === "centre"
          ? `à ${t.mm(behindMm)} derrière la lisière`
          : `à ${sides[side]}, à ${t.mm(behindMm)} derrière la lisière`,
    } satisfies Sentences<PlaceCode>,
    /** A point told by the hairline, in two lines. */
    hairlinePoint: {
      behind: ({ behindMm, ...at }: HairlinePointCode) => {
        if (behindMm === 0) return `sur la lisière, ${landmark(at)}`
        return behindMm < 0
          ? `${t.mm(-behindMm)} devant la lisière, ${landmark(at)}`
          : `${t.mm(behindMm)} derrière la lisière, ${landmark(at)}`
      },
      along: ({ alongMm }: HairlinePointCode) => `à ${t.mm(alongMm)} du milieu du front`,
    },

    zones: {
      hairline: "lisière",
      top: "dessus",
      left: "côté gauche",
      right: "côté droit",
      back: "arrière",
    } satisfies Record<Zone, string>,
    strandParts: { roots: "racines", midLengths: "longueurs", ends: "pointes" } satisfies Record<
      StrandPart,
      string
    >,

    kinds: {
      slice: "tranche",
      weave: "tricotage",
      backcomb: "crêpage",
      painted: "mèche peinte",
      "left-out": "mèche laissée",
    } satisfies Record<SectionKind, string>,
    carriers: { foil: "papillote", board: "planche", "open-air": "air libre", film: "film" } satisfies Record<
      CarrierKind,
      string
    >,
    foilLies: {
      down: "vers le bas",
      up: "vers le haut",
      "toward-face": "vers le visage",
      "away-from-face": "vers l’arrière",
    } satisfies Record<FoilLie, string>,

    directions,
    /** The direction and its angle; what follows the hairline has no one angle. */
    direction: ({ name, degrees }: Direction) =>
      name === "parallel to hairline" ? directions[name] : `${directions[name]} ${t.whole(degrees)}°`,

    /** A foil by its number on the map; several as one list. */
    foil: (number: number, piece?: Piece) => pieces(t).names([number], piece),
    foils: (numbers: readonly number[], piece?: Piece) => pieces(t).names(numbers, piece),
    foilCount: (count: number, piece?: Piece) => pieces(t).count(count, piece),
    /** What a section is called within a sentence. */
    sectionName: {
      foil: ({ number }) => pieces(t).names([number]),
      panel: ({ number }) => pieces(t).names([number], "panel"),
      "left-out": ({ name }) => (name ? `mèche « ${name} »` : "mèche laissée"),
    } satisfies Sentences<SectionNameCode>,

    /** A mix by its letter. */
    mix: (letter: string) => `mélange ${letter}`,
    /** What is on a strand, in the order it goes on; one mix by its letter. */
    coats: (coats: readonly CoatCode[]) => {
      const [first, second = null] = coats.map((each) => coat(each))
      const afterMin = coats.at(-1)?.afterMin
      if (second === null) return first
      return afterMin === undefined
        ? `${first}, puis ${second}`
        : `${first} ; ${t.minutes(afterMin)} plus tard ${second}`
    },
    twoStrips: "Barre en deux bandes : en haut le mélange de la racine, en bas celui des pointes.",
    workingName,
    /** The same where it stands alone. */
    workingTitle: (code: WorkingNameCode) => t.capital(say<WorkingNameCode>(workingName, code)),

    /** The head at a minute of the visit. */
    minute: ({ atMin, on, longestMin, waiting, off, piece }: MinuteCode & { piece?: Piece }) =>
      [
        `Minute ${t.whole(atMin)} : ${pieces(t).count(on, piece)} en pose`,
        ...(on > 0 ? [`la plus ancienne depuis ${t.minutes(longestMin)}`] : []),
        t.count(waiting, { one: "# à poser", other: "# à poser" }),
        t.count(off, { one: "# retirée", other: "# retirées" }),
      ].join(", "),

    /** How figures alone are written: what stands in a table or beside a name. */
    figures: t,
    /** Units as they stand behind the figure of a field. */
    units: {
      mm: "mm",
      cm: "cm",
      inches: "po",
      cm2: "cm²",
      g: "g",
      min: "min",
      percent: "%",
      degrees: "°",
      celsius: "°C",
      micrometres: "µm",
      hairsPerCm2: "cheveux/cm²",
      vol: "vol",
      levels: "tons",
      years: "ans",
      weeks: "semaines",
    },
  }
}

type Gendered = { readonly left: string; readonly right: string }
const masculine: Gendered = { left: "gauche", right: "droit" }
const beside: Gendered = { left: "(à gauche)", right: "(à droite)" }
const feminine: Gendered = { left: "gauche", right: "droite" }

/** What is left or right of a landmark agrees with it. */
const sidedLandmarks: Record<LandmarkName, Gendered> = {
  "centre front": beside,
  recession: masculine,
  temple: feminine,
  sideburn: feminine,
  "ear top": feminine,
  "behind ear": feminine,
  "nape corner": masculine,
  "centre nape": beside,
}

const atThe: Record<Exclude<LandmarkName, "behind ear">, string> = {
  "centre front": "au",
  recession: "au",
  temple: "à la",
  sideburn: "à la",
  "ear top": "en",
  "nape corner": "au",
  "centre nape": "au",
}

/** A side agrees with the area it is said of. */
function workingArea(kind: WorkingKind, side: WorkingSide): string {
  return side === "centre" ? workingKinds[kind] : `${workingKinds[kind]} ${workingSides[kind][side]}`
}

const workingKinds: Record<WorkingKind, string> = {
  triangle: "triangle",
  frame: "contour du visage",
  front: "devant",
  top: "dessus",
  side: "côté",
  crown: "vertex",
  behind: "dessus et arrière",
  around: "côtés et arrière",
  back: "arrière",
}

const onThe: Gendered = { left: "à gauche", right: "à droite" }
const workingSides: Record<WorkingKind, Gendered> = {
  triangle: masculine,
  frame: onThe,
  front: masculine,
  top: masculine,
  side: masculine,
  crown: masculine,
  behind: onThe,
  around: onThe,
  back: onThe,
}

type Expected = { name: string; low: string; high: string; unit: string; examples: string }

export type CommonWords = ReturnType<typeof common>
