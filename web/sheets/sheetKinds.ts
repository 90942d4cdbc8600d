import type { Plan } from "../core/document/schema"
import type { SheetName } from "../session/sessionStore"
import { recordCard } from "./cards/recordCard"
import { takeHome } from "./cards/takeHome"
import { handout } from "./handout/handout"
import { placementMap } from "./map/placementMap"
import type { Fonts } from "./pens/fontFile"
import type { Page } from "./pens/page"
import type { SheetOptions } from "./setting/sheetOptions"

/** A sheet that can be printed of every plan. */
type SheetKind = {
  /** As it is chosen on the screen. */
  name: string
  /** Who reads it, and what to mind when it is printed. */
  aside: string
  /** It shows a front that can be looked at from either side. */
  hasFront: boolean
  /** It prints the notes for next time, which are then written beside it. */
  hasNote?: boolean
  layOut: (plan: Plan, options: SheetOptions, fonts: Fonts) => Page[]
}

/** Every sheet: a new one is one row here. */
export const sheetKinds: Readonly<Record<SheetName, SheetKind>> = {
  placement: {
    name: "Placement map",
    aside:
      "The map is taped to the mirror, where others read it: it carries initials only. Print it at 100 %, not fitted to the page, so that the comb strip is life size.",
    hasFront: true,
    layOut: placementMap,
  },
  technique: {
    name: "Technique handout",
    aside:
      "For students: what is drawn, step by step, with a head to draw on, faults, self-check and the assessor’s box. No client, no date and no note is on it; it is called what the plan is called.",
    hasFront: true,
    layOut: handout,
  },
  "take-home": {
    name: "To take home",
    aside:
      "For the client, in large print: what was done, her skin, her care, when to come back. No formula and no health answer is on it. Write the salon’s name and phone at its foot.",
    hasFront: false,
    layOut: takeHome,
  },
  record: {
    name: "Record card",
    aside:
      "The salon’s own: the hair, what was asked and answered, the mixes, planned and real times, looks, and the notes for next time, written here or on Timing. It holds health answers.",
    hasFront: false,
    hasNote: true,
    layOut: recordCard,
  },
}

const isName = (name: string): name is SheetName => Object.hasOwn(sheetKinds, name)
export const sheetNames: readonly SheetName[] = Object.keys(sheetKinds).filter(isName)
