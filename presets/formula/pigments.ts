import type { WheelName } from "./toneWheel"

/**
 * What pigment shows when hair is lifted to a level, the tone across from it, and where the pigment stands on the colour
 * wheel; level 1 first. Common practice, no source; the pairs violet-yellow, blue-orange, green-red are taught everywhere.
 */
export const pigments = [
  { pigment: "dark-red-brown", neutraliser: "green", onWheel: "red" },
  { pigment: "dark-red-brown", neutraliser: "green", onWheel: "red" },
  { pigment: "red-brown", neutraliser: "green", onWheel: "red" },
  { pigment: "red-brown", neutraliser: "green", onWheel: "red" },
  { pigment: "red-orange", neutraliser: "blue-green", onWheel: "red-orange" },
  { pigment: "orange", neutraliser: "blue", onWheel: "orange" },
  { pigment: "yellow-orange", neutraliser: "blue-violet", onWheel: "yellow-orange" },
  { pigment: "yellow", neutraliser: "violet", onWheel: "yellow" },
  { pigment: "pale-yellow", neutraliser: "violet", onWheel: "yellow" },
  { pigment: "very-pale-yellow", neutraliser: "soft-violet", onWheel: "yellow" },
] as const satisfies readonly { pigment: string; neutraliser: string; onWheel: WheelName }[]

export type PigmentRow = (typeof pigments)[number]
export type Pigment = PigmentRow["pigment"]
export type Neutraliser = PigmentRow["neutraliser"]
