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
      told(move?.behindMm ?? 0, "dans les cheveux", "hors des cheveux"),
      told(move?.towardNapeMm ?? 0, "vers la nuque", "vers le front"),
    ].filter((part) => part !== "")
    return parts.join(", ") || "comme la forme"
  }
  const told = (mm: number, onward: string, back: string) =>
    mm === 0 ? "" : `${t.mm(Math.abs(mm), 1)} ${mm > 0 ? onward : back}`
  return {
    title: "La lisière de la personne",
    hint: "Glissez un repère dans une vue, ou choisissez-le et utilisez les flèches : un millimètre, avec Maj cinq. Ce qui est tracé à côté suit.",
    head: "La tête de la personne",
    shapeOnMap: "Former la lisière sur le schéma",
    differs: "Où la lisière de la personne diffère",
    intoHair: "Dans les cheveux",
    towardsNape: "Vers la nuque",
    resetPoint: "Remettre ce point",
    resetAll: "Tout remettre",
    move: "Déplacer",
    moveSides: { both: "Deux côtés", left: "À gauche", right: "À droite" } satisfies Record<Sides, string>,
    /** A landmark with the sides it is meant on. */
    landmarkTitle: (name: LandmarkName, sides: Sides) => t.capital(landmarkOf(name, sides)),
    /** How far a landmark is from where the form has it. */
    moved,
    movedNow: ({ name, sides, move }: { name: LandmarkName; sides: Sides; move: LandmarkMove }) =>
      `${t.capital(landmarkOf(name, sides))} : ${moved(move)}`,
    inHand: ({ name, move }: { name: LandmarkName; move: LandmarkMove }) =>
      `${landmarks[name]} : ${moved(move)}`,
    offHead: "C’est hors de la tête. Gardez le repère sur le cuir chevelu.",
    stays: (why: string) => `${why} La lisière reste comme elle était.`,
    usualParting: "Raie habituelle",
    partings: {
      centre: "Au milieu",
      left: "À gauche",
      right: "À droite",
      zigzag: "En zigzag",
      none: "Aucune",
    },
    fromMiddle: "Du milieu",
    whorl: "Épi du vertex, vu du dessus",
    whorlTurns: { clockwise: "Horaire", anticlockwise: "Antihoraire", none: "Aucun" } satisfies Record<
      (typeof whorlTurns)[number],
      string
    >,
    whorlHandle: "épi du vertex",
    whorlName: "épi",
    whorlRefused: "L’épi du vertex se trouve dans les cheveux : il reste où il était.",
  }
}
