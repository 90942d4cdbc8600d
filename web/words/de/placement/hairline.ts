import type { LandmarkMove } from "../../../../geometry/scalp/landmarkMoves"
import type { hairline as english } from "../../en/placement/hairline"

/** The client's own hairline, the parting usually worn and the swirl of the crown. */
export const hairline: typeof english = (t, { landmarkOf, landmarks }) => {
  const moved = (move: LandmarkMove | undefined): string => {
    const parts = [
      told(move?.behindMm ?? 0, "ins Haar", "aus dem Haar"),
      told(move?.towardNapeMm ?? 0, "zum Nacken", "zur Stirn"),
    ].filter((part) => part !== "")
    return parts.join(", ") || "wie die Form"
  }
  const told = (mm: number, onward: string, back: string) =>
    mm === 0 ? "" : `${t.mm(Math.abs(mm), 1)} ${mm > 0 ? onward : back}`
  return {
    title: "Haarlinie des Gastes",
    hint: "Einen Punkt in einer Ansicht ziehen oder wählen und mit den Pfeiltasten verschieben: einen Millimeter, mit Umschalt fünf. Was in der Nähe gezeichnet ist, geht mit.",
    head: "Kopf des Gastes",
    shapeOnMap: "Haarlinie auf der Karte formen",
    differs: "Wo die Haarlinie des Gastes abweicht",
    intoHair: "Ins Haar",
    towardsNape: "Zum Nacken",
    resetPoint: "Punkt zurücksetzen",
    resetAll: "Alle zurücksetzen",
    move: "Verschieben",
    moveSides: { both: "Beide Seiten", left: "Nur links", right: "Nur rechts" },
    landmarkTitle: (name, sides) => t.capital(landmarkOf(name, sides)),
    moved,
    movedNow: ({ name, sides, move }) => `${t.capital(landmarkOf(name, sides))}: ${moved(move)}`,
    inHand: ({ name, move }) => `${landmarks[name]}: ${moved(move)}`,
    offHead: "Das liegt neben dem Kopf. Den Punkt auf der Kopfhaut lassen.",
    stays: (why) => `${why} Die Haarlinie bleibt, wie sie war.`,
    usualParting: "Üblicher Scheitel",
    partings: {
      centre: "Mitte",
      left: "Links",
      right: "Rechts",
      zigzag: "Zickzack",
      none: "Keiner",
    },
    fromMiddle: "Von der Mitte",
    whorl: "Haarwirbel, von oben gesehen",
    whorlTurns: { clockwise: "Im Uhrzeigersinn", anticlockwise: "Gegen Uhrzeigersinn", none: "Keiner" },
    whorlHandle: "Haarwirbel",
    whorlName: "Wirbel",
    whorlRefused: "Der Haarwirbel liegt im Haar: Er bleibt, wo er war.",
  }
}
