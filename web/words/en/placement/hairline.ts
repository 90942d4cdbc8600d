import type { whorlTurns } from "../../../../geometry/parting/wornParting"
import type { LandmarkName } from "../../../../geometry/scalp/hairlineLandmarks"
import type { LandmarkMove } from "../../../../geometry/scalp/landmarkMoves"
import type { Sides } from "../../../core/document/hairlineMoves"
import type { Tools } from "../../tools"
import type { CommonWords } from "../common/common"

/** The client's own hairline, the parting usually worn and the swirl of the crown. */
export const hairline = (t: Tools, { landmarkOf, landmarks }: CommonWords) => {
  const ways = t.spelled({
    intoHair: ["into the hair", "out of the hair"],
    towardNape: ["towards the nape", "towards the forehead"],
  })
  const moved = (move: LandmarkMove | undefined): string => {
    const parts = [
      told(move?.behindMm ?? 0, ways.intoHair),
      told(move?.towardNapeMm ?? 0, ways.towardNape),
    ].filter((part) => part !== "")
    return parts.join(", ") || "as the form"
  }
  const told = (mm: number, [onward, back]: readonly string[]) =>
    mm === 0 ? "" : `${t.mm(Math.abs(mm), 1)} ${mm > 0 ? onward : back}`
  return {
    title: "The client’s hairline",
    hint: "Drag a landmark in any view, or choose it and use the arrow keys: a millimetre, with Shift five. What is drawn near it goes along.",
    head: "The client’s head",
    shapeOnMap: "Shape the hairline on the map",
    differs: "Where the client’s hairline differs",
    intoHair: "Into the hair",
    towardsNape: "Towards the nape",
    resetPoint: "Reset this point",
    resetAll: "Reset all",
    move: "Move",
    moveSides: { both: "Both sides", left: "Left only", right: "Right only" } satisfies Record<Sides, string>,
    /** A landmark with the sides it is meant on. */
    landmarkTitle: (name: LandmarkName, sides: Sides) => t.capital(landmarkOf(name, sides)),
    /** How far a landmark is from where the form has it. */
    moved,
    movedNow: ({ name, sides, move }: { name: LandmarkName; sides: Sides; move: LandmarkMove }) =>
      `${t.capital(landmarkOf(name, sides))}: ${moved(move)}`,
    inHand: ({ name, move }: { name: LandmarkName; move: LandmarkMove }) =>
      `${landmarks[name]}: ${moved(move)}`,
    offHead: "That is off the head. Keep the landmark on the scalp.",
    stays: (why: string) => `${why} The hairline stays as it was.`,
    usualParting: "Usual parting",
    partings: {
      centre: "Centre",
      left: "On the left",
      right: "On the right",
      zigzag: "Zigzag",
      none: "None",
    },
    fromMiddle: "From the middle",
    whorl: "Crown swirl, seen from above",
    whorlTurns: { clockwise: "Clockwise", anticlockwise: "Anticlockwise", none: "None" } satisfies Record<
      (typeof whorlTurns)[number],
      string
    >,
    whorlHandle: "crown swirl",
    whorlName: "swirl",
    whorlRefused: "The crown swirl lies in the hair: it stays where it was.",
  }
}
