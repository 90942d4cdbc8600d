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

/** Names that every chapter uses. A name is written as it stands within a sentence; `t.capital` begins a line with it. */
export const common = (t: Tools) => {
  const sides: Record<Side, string> = { left: "izquierda", right: "derecha", centre: "centro" }
  const landmarks: Record<LandmarkName, string> = {
    "centre front": "centro frontal",
    recession: "entrada",
    temple: "sien",
    sideburn: "patilla",
    "ear top": "parte alta de la oreja",
    "behind ear": "detrás de la oreja",
    "nape corner": "esquina de la nuca",
    "centre nape": "centro de la nuca",
  }
  const sided: Partial<Record<LandmarkName, (side: "left" | "right") => string>> = {
    "nape corner": (side) => `esquina ${sides[side]} de la nuca`,
  }
  const landmark = ({ landmark: name, side }: LandmarkCode) =>
    side === "centre" ? landmarks[name] : (sided[name]?.(side) ?? `${landmarks[name]} ${sides[side]}`)
  const directions: Record<DirectionName, string> = {
    "parallel to hairline": "paralela al contorno",
    horizontal: "horizontal",
    "diagonal forward": "diagonal adelante",
    "diagonal back": "diagonal atrás",
    vertical: "vertical",
  }
  const clientSide: Record<Side, string> = {
    left: "izquierda de su cliente",
    right: "derecha de su cliente",
    centre: "el centro",
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
    const letter = `mezcla ${mix}`
    if (part === "whole") return letter
    return part === "roots"
      ? `${letter} en la raíz hasta ${t.told.mm(rootsToMm ?? 0)}`
      : `${letter} en medios y puntas`
  }

  return {
    done: {},

    /** What stands on buttons and beside fields of every panel. */
    actions: {
      save: "Guardar",
      cancel: "Cancelar",
      close: "Cerrar",
      remove: "Quitar",
      delete: "Eliminar",
      change: "Cambiar",
      undo: "Deshacer",
      redo: "Rehacer",
    },
    fields: {
      /** Takes back what a field holds. */
      clear: (field: string) => `Borrar: ${field}`,
      /** What a number may be; `examples` tell how it is written where that is not by decimals. */
      expected: ({ name, low, high, unit, examples }: Expected) => {
        const span = `${name}: se espera de ${low} a ${high} ${unit}`.trimEnd()
        return examples ? `${span}, escrito como ${examples}.` : `${span}.`
      },
      notKnown: "No se sabe",
      openFile: "Abrir un archivo…",
      planFile: "Archivo de plan",
      notOpened: "No se ha abierto. El plan en pantalla sigue como estaba.",
    },
    answers: { yes: "Sí", no: "No", notSet: "Sin definir", notAsked: "Sin preguntar" },

    sides,
    /** A side as it is told to whoever faces the client. */
    clientSide,
    onSide: {
      left: "a la izquierda de su cliente",
      right: "a la derecha de su cliente",
      centre: "en el centro",
    } satisfies Record<Side, string>,
    bothSides: "ambos lados",

    landmarks,
    /** A landmark of one side, such as "left temple". */
    landmark,
    /** A landmark with the sides it is meant on: "temple, both sides", "left temple". */
    landmarkOf: (name: LandmarkName, on: Sides) => {
      if (name === "centre front" || name === "centre nape") return landmarks[name]
      return on === "both" ? `${landmarks[name]}, ambos lados` : landmark({ landmark: name, side: on })
    },
    /** Where a section lies, as a name: "left temple", "62 mm behind the hairline, left". */
    place: {
      "at-landmark": landmark,
      "behind-hairline": ({ behindMm, side }) =>
        side === "centre"
          ? `${t.mm(behindMm)} detrás del contorno`
          : `${t.mm(behindMm)} detrás del contorno, ${sides[side]}`,
    } satisfies Sentences<PlaceCode>,
    /** The same within a sentence, after a verb such as "part". */
    atPlace: {
      "at-landmark": (at) =>
        at.landmark === "behind ear" ? landmark(at) : `en ${theLandmark(at.landmark, landmark(at))}`,
      "behind-hairline": ({ behindMm, side }) =>
        side === "centre"
          ? `${t.mm(behindMm)} detrás del contorno`
          : `a la ${sides[side]}, ${t.mm(behindMm)} detrás del contorno`,
    } satisfies Sentences<PlaceCode>,
    /** A point told by the hairline, in two lines. */
    hairlinePoint: {
      behind: ({ behindMm, ...at }: HairlinePointCode) => {
        if (behindMm === 0) return `en el contorno, ${landmark(at)}`
        return behindMm < 0
          ? `${t.mm(-behindMm)} delante del contorno, ${landmark(at)}`
          : `${t.mm(behindMm)} detrás del contorno, ${landmark(at)}`
      },
      along: ({ alongMm }: HairlinePointCode) => `a ${t.mm(alongMm)} del centro frontal`,
    },

    zones: {
      hairline: "contorno",
      top: "arriba",
      left: "lado izquierdo",
      right: "lado derecho",
      back: "detrás",
    } satisfies Record<Zone, string>,
    strandParts: { roots: "raíces", midLengths: "medios", ends: "puntas" } satisfies Record<
      StrandPart,
      string
    >,

    kinds: {
      slice: "velo",
      weave: "tejido",
      backcomb: "cardado",
      painted: "panel pintado",
      "left-out": "cabello dejado fuera",
    } satisfies Record<SectionKind, string>,
    carriers: { foil: "papel", board: "tabla", "open-air": "al aire", film: "film" } satisfies Record<
      CarrierKind,
      string
    >,
    foilLies: {
      down: "cuelga hacia abajo",
      up: "hacia arriba",
      "toward-face": "hacia la cara",
      "away-from-face": "lejos de la cara",
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
      "left-out": ({ name }) => name || "cabello dejado fuera",
    } satisfies Sentences<SectionNameCode>,

    /** A mix by its letter. */
    mix: (letter: string) => `mezcla ${letter}`,
    /** What is on a strand, in the order it goes on; one mix by its letter. */
    coats: (coats: readonly CoatCode[]) => {
      const [first, second = null] = coats.map((each) => coat(each))
      const afterMin = coats.at(-1)?.afterMin
      if (second === null) return first
      return afterMin === undefined
        ? `${first}, después ${second}`
        : `${first}; ${t.minutes(afterMin)} más tarde ${second}`
    },
    twoStrips: "Barra en dos franjas: arriba la mezcla de la raíz, abajo la de las puntas.",
    workingName,
    /** The same where it stands alone. */
    workingTitle: (code: WorkingNameCode) => t.capital(say<WorkingNameCode>(workingName, code)),

    /** The head at a minute of the visit. */
    minute: ({ atMin, on, longestMin, waiting, off, piece }: MinuteCode & { piece?: Piece }) =>
      [
        `Minuto ${t.whole(atMin)}: ${pieces(t).count(on, piece)} ${t.count(on, { one: "puesto", other: "puestos" })}`,
        ...(on > 0 ? [`el que más lleva, ${t.minutes(longestMin)}`] : []),
        t.count(waiting, { one: "# por poner", other: "# por poner" }),
        t.count(off, { one: "# retirado", other: "# retirados" }),
      ].join(", "),

    /** How figures alone are written: what stands in a table or beside a name. */
    figures: t,
    /** Units as they stand behind the figure of a field. */
    units: {
      mm: "mm",
      cm: "cm",
      inches: "in",
      cm2: "cm²",
      g: "g",
      min: "min",
      percent: "%",
      degrees: "°",
      celsius: "°C",
      micrometres: "µm",
      hairsPerCm2: "cabellos por cm²",
      vol: "vol",
      levels: "niveles",
      years: "años",
      weeks: "semanas",
    },
  }
}

/** The name of an area agrees with its side. */
function workingArea(kind: WorkingKind, side: WorkingSide): string {
  const { name, isMasculine } = workingKinds[kind]
  if (side === "centre") return name
  const [left, right] = isMasculine ? ["izquierdo", "derecho"] : ["izquierda", "derecha"]
  return `${name} ${side === "left" ? left : right}`
}

const workingKinds: Record<WorkingKind, { name: string; isMasculine: boolean }> = {
  triangle: { name: "triángulo", isMasculine: true },
  frame: { name: "marco del rostro", isMasculine: true },
  front: { name: "parte delantera", isMasculine: false },
  top: { name: "parte superior", isMasculine: false },
  side: { name: "lado", isMasculine: true },
  crown: { name: "coronilla", isMasculine: false },
  behind: { name: "parte superior y trasera", isMasculine: false },
  around: { name: "lados y parte trasera", isMasculine: false },
  back: { name: "parte trasera", isMasculine: false },
}

/** A landmark with its article. */
export const theLandmark = (name: LandmarkName, told: string) =>
  name === "centre front" || name === "centre nape" ? `el ${told}` : `la ${told}`

/** The same after "de". */
export const ofLandmark = (name: LandmarkName, told: string) =>
  name === "centre front" || name === "centre nape" ? `del ${told}` : `de la ${told}`

/** A section within a sentence, with its article: "el papel 3". */
export const theSection = (code: SectionNameCode) =>
  "number" in code
    ? `el ${code.code === "panel" ? "panel" : "papel"} ${code.number}`
    : code.name
      ? `«${code.name}»`
      : "el cabello dejado fuera"

/** The same after "de": "del papel 3". */
export const ofSection = (code: SectionNameCode) =>
  code.code === "left-out" && code.name ? `de ${theSection(code)}` : `d${theSection(code)}`

type Expected = { name: string; low: string; high: string; unit: string; examples: string }

export type CommonWords = ReturnType<typeof common>
