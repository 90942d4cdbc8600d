import type { whorlTurns } from "../../../../geometry/parting/wornParting"
import type { LandmarkName } from "../../../../geometry/scalp/hairlineLandmarks"
import type { LandmarkMove } from "../../../../geometry/scalp/landmarkMoves"
import type { Sides } from "../../../core/document/hairlineMoves"
import type { Tools } from "../../tools"
import type { CommonWords } from "../common/common"

/** The client's own hairline, the parting usually worn and the swirl of the crown. */
export const hairline = (t: Tools, { landmarkOf, landmarks }: CommonWords) => {
  const moved = (move: LandmarkMove | undefined): string => {
    const parts = [
      told(move?.behindMm ?? 0, "hacia dentro del cabello", "hacia fuera del cabello"),
      told(move?.towardNapeMm ?? 0, "hacia la nuca", "hacia la frente"),
    ].filter((part) => part !== "")
    return parts.join(", ") || "como la forma"
  }
  const told = (mm: number, onward: string, back: string) =>
    mm === 0 ? "" : `${t.mm(Math.abs(mm), 1)} ${mm > 0 ? onward : back}`
  return {
    title: "El contorno de su cliente",
    hint: "Arrastre un punto en cualquier vista, o elíjalo y use las flechas: un milímetro, con Mayús cinco. Lo dibujado cerca se mueve con él.",
    head: "La cabeza de su cliente",
    shapeOnMap: "Ajustar el contorno en el mapa",
    differs: "Dónde difiere el contorno de su cliente",
    intoHair: "Hacia el cabello",
    towardsNape: "Hacia la nuca",
    resetPoint: "Restablecer punto",
    resetAll: "Restablecer todo",
    move: "Mover",
    moveSides: { both: "Ambos lados", left: "Solo izquierda", right: "Solo derecha" } satisfies Record<
      Sides,
      string
    >,
    /** A landmark with the sides it is meant on. */
    landmarkTitle: (name: LandmarkName, sides: Sides) => t.capital(landmarkOf(name, sides)),
    /** How far a landmark is from where the form has it. */
    moved,
    movedNow: ({ name, sides, move }: { name: LandmarkName; sides: Sides; move: LandmarkMove }) =>
      `${t.capital(landmarkOf(name, sides))}: ${moved(move)}`,
    inHand: ({ name, move }: { name: LandmarkName; move: LandmarkMove }) =>
      `${landmarks[name]}: ${moved(move)}`,
    offHead: "Eso queda fuera de la cabeza. Mantenga el punto sobre el cuero cabelludo.",
    stays: (why: string) => `${why} El contorno sigue como estaba.`,
    usualParting: "Raya habitual",
    partings: {
      centre: "Al medio",
      left: "A la izquierda",
      right: "A la derecha",
      zigzag: "Zigzag",
      none: "Ninguna",
    },
    fromMiddle: "Desde el medio",
    whorl: "Remolino de la coronilla, desde arriba",
    whorlTurns: {
      clockwise: "Horario",
      anticlockwise: "Antihorario",
      none: "Ninguno",
    } satisfies Record<(typeof whorlTurns)[number], string>,
    whorlHandle: "remolino de la coronilla",
    whorlName: "remolino",
    whorlRefused: "El remolino de la coronilla va dentro del cabello: se queda donde estaba.",
  }
}
