import type { Plan } from "../plan/schema"
import type { SheetName } from "../plan/sessionStore"
import type { Fonts } from "./fontFile"
import type { Page } from "./layout/page"
import { placementMap } from "./layout/placementMap"
import type { SheetOptions } from "./layout/sheetOptions"

/** A sheet that can be printed of every plan. */
type SheetKind = {
  /** As it is chosen on the screen. */
  name: string
  /** Who reads it, and what to mind when it is printed. */
  aside: string
  /** It shows a front that can be looked at from either side. */
  hasFront: boolean
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
}

const isName = (name: string): name is SheetName => Object.hasOwn(sheetKinds, name)
export const sheetNames: readonly SheetName[] = Object.keys(sheetKinds).filter(isName)
