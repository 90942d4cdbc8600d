import type { DirectionName } from "../../../../geometry/parting/direction"
import type { LandmarkName } from "../../../../geometry/scalp/hairlineLandmarks"
import type { SectionKind } from "../../../../geometry/section/section"
import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { NudgeWay } from "../../../core/placement/tools"
import type { Tools } from "../../tools"
import { type CommonWords, theSection } from "../common/common"
import { hairlineDone, stackDone, workingDone } from "./doneParts"

/** What undo calls a change of this chapter. */
export const done = (t: Tools, names: CommonWords) => {
  const { kinds, landmark, directions } = names
  const count = (verb: string, sections: number) =>
    t.count(sections, { one: `${verb} una sección`, other: `${verb} # secciones` })
  return {
    ...hairlineDone(names),
    ...workingDone(t, names),
    ...stackDone(t, names),
    "draw-section": ({ kind }: { kind: SectionKind }) => `Dibujar ${kinds[kind]}`,
    "add-along-hairline": ({
      kind,
      side,
      from,
      to,
    }: {
      kind: SectionKind
      side: "left" | "right"
      from: LandmarkName
      to: LandmarkName
    }) =>
      `Añadir ${kinds[kind]}, de ${landmark({ landmark: from, side })} a ${landmark({ landmark: to, side })}`,
    "change-kind": ({ kind }: { kind: SectionKind }) => `Cambiar a ${kinds[kind]}`,
    rename: ({ section }: { section: SectionNameCode }) => `Renombrar ${theSection(section)}`,
    split: ({ section }: { section: SectionNameCode }) => `Dividir ${theSection(section)} en papeles`,
    reduce: ({ section }: { section: SectionNameCode }) => `Reducir ${theSection(section)}`,
    "set-depth": "Cambiar el grosor",
    "take-hair": ({ taken }: { taken: "front" | "behind" }) =>
      taken === "front" ? "Tomar cabello delante" : "Tomar cabello detrás",
    "set-stitch": "Cambiar la puntada",
    "set-gap": "Cambiar el espacio",
    "set-dip": "Cambiar la profundidad del tejido",
    "set-base": ({ base }: { base: "slice" | "weave" }) => `Cardar desde un ${kinds[base]}`,
    "set-pushed-share": "Cambiar la parte cardada",
    "set-cushion": "Cambiar el colchón",
    "set-edge": "Cambiar el borde pintado",
    "draw-edge": "Dibujar el borde pintado",
    "set-edge-high": "Cambiar dónde empieza la pintura",
    "set-edge-drop": "Cambiar cuánto baja el borde",
    "set-feather": "Cambiar el difuminado",
    "set-saturation": "Cambiar la saturación",
    "set-note": "Cambiar la nota",
    "set-map-number": "Renumerar",
    "set-start": "Cambiar dónde empieza el producto",
    "set-coated": "Cambiar la parte cubierta",
    "set-faces": "Cambiar las caras cubiertas",
    "set-carrier": "Cambiar en qué se envuelve",
    "set-elevation": "Cambiar la elevación",
    "set-over-direction": "Cambiar la sobredirección",
    "set-foil-lie": "Cambiar la dirección del papel",
    "set-roots-mix": "Cambiar la mezcla de la raíz",
    "set-roots-end": "Cambiar dónde acaba la raíz",
    "set-roots-order": "Cambiar qué mezcla va primero",
    "set-roots-after": "Cambiar cuándo va la raíz",
    "use-mix": ({ mix }: { mix: string }) => `Usar la mezcla ${mix}`,
    "set-behind": "Mover detrás del contorno",
    "set-along": "Mover a lo largo del contorno",
    "set-length": "Cambiar el largo",
    "set-angle": "Girar",
    "set-direction": ({ direction }: { direction: DirectionName }) => `Girar: ${directions[direction]}`,
    "repeat-behind": "Repetir detrás",
    "repeat-behind-both": "Repetir detrás, ambos lados",
    thinner: "Más fino",
    thicker: "Más grueso",
    mirror: "Reflejar al otro lado",
    "break-pair": "Separar la pareja",
    "towards-hairline": "Mover hacia el contorno",
    "away-from-hairline": "Alejar del contorno",
    "leave-between": "Dejar fuera el cabello entre dos",
    "leave-veil": "Dejar fuera la capa superior",
    "leave-baby-hairs": "Dejar fuera los pelitos de bebé",
    delete: ({ count: sections }: { count: number }) => count("Eliminar", sections),
    paste: ({ count: sections }: { count: number }) => count("Pegar", sections),
    move: "Mover",
    bend: "Curvar",
    nudge: ({ mm, way }: { mm: number; way: NudgeWay }) => nudges[way](t.mm(mm)),
    "number-in-order": "Numerar en el orden de aplicación",
    /** Where sections go on after they were moved in the order. */
    "apply-at": ({
      section,
      count: sections,
      place,
      foils,
    }: {
      section: SectionNameCode
      count: number
      place: number
      foils: number
    }) =>
      sections === 1
        ? `${t.capital(theSection(section))} va en el lugar ${t.whole(place)} de ${t.whole(foils)}`
        : `${t.whole(sections)} secciones desde ${theSection(section)} van en el lugar ${t.whole(place)} de ${t.whole(foils)}`,
    "apply-left-out": ({ section, count: sections, before, foils }: AppliedLeftOut) =>
      sections === 1
        ? `${t.capital(theSection(section))} va tras ${t.whole(before)} de ${t.whole(foils)} papeles`
        : `${t.whole(sections)} secciones desde ${theSection(section)} van tras ${t.whole(before)} de ${t.whole(foils)} papeles`,
    "place-technique": ({ name }: { name: string }) => `Colocar la técnica «${name}»`,
  }
}

const nudges: Record<NudgeWay, (mm: string) => string> = {
  away: (mm) => `Alejar ${mm} del contorno`,
  towards: (mm) => `Mover ${mm} hacia el contorno`,
  right: (mm) => `Mover ${mm} por el contorno, a la derecha de su cliente`,
  left: (mm) => `Mover ${mm} por el contorno, a la izquierda de su cliente`,
}

type AppliedLeftOut = { section: SectionNameCode; count: number; before: number; foils: number }
