import type { SheetName } from "../../presets/sheets/sheetNames"
import { planAsDone } from "../core/chair/liveService"
import type { Plan } from "../core/document/schema"
import { recordCard } from "./cards/recordCard"
import { takeHome } from "./cards/takeHome"
import { handout, taught } from "./handout/handout"
import { placementMap } from "./map/placementMap"
import type { Fonts } from "./pens/fontFile"
import type { Page, Sheet } from "./pens/page"
import { titleOf } from "./setting/heading"
import type { SheetOptions } from "./setting/sheetOptions"
import { takeHomePage } from "./twin/takeHomePage"

/** A sheet that can be printed of every plan. */
type SheetKind = {
  /** It shows a front that can be looked at from either side. */
  hasFront: boolean
  /** It prints the notes for next time, which are then written beside it. */
  hasNote?: boolean
  /** It is for a class: what it says can be said otherwise beside it, and its title is the technique's. */
  isLesson?: boolean
  /** The client takes it along: it is in the client’s language. */
  isForClient?: boolean
  /** After a service it shows what was carried out, whatever the plan has become since. */
  isOfService: boolean
  layOut: (plan: Plan, options: SheetOptions, fonts: Fonts) => Page[]
  /** The same for a browser, as one file. */
  toHtml?: (plan: Plan, options: SheetOptions) => string
}

/** Every sheet: a new one is one row here, and its name and words. */
export const sheetKinds: Readonly<Record<SheetName, SheetKind>> = {
  placement: { hasFront: true, isOfService: true, layOut: placementMap },
  technique: { hasFront: true, isLesson: true, isOfService: false, layOut: handout },
  "take-home": {
    hasFront: false,
    isForClient: true,
    isOfService: true,
    layOut: takeHome,
    toHtml: takeHomePage,
  },
  record: { hasFront: false, hasNote: true, isOfService: true, layOut: recordCard },
}

export function layOutSheet(name: SheetName, plan: Plan, options: SheetOptions, fonts: Fonts): Sheet {
  return {
    pages: sheetKinds[name].layOut(planOf(name, plan), options, fonts),
    title: titleOf(sheetKinds[name].isLesson ? taught(plan, options.words) : plan, options.words),
    date: plan.date,
    language: options.language,
  }
}

/** The sheet as a page for a browser; null where it is for paper alone. */
export const sheetAsHtml = (name: SheetName, plan: Plan, options: SheetOptions): string | null =>
  sheetKinds[name].toHtml?.(planOf(name, plan), options) ?? null

const planOf = (name: SheetName, plan: Plan) => (sheetKinds[name].isOfService && planAsDone(plan)) || plan
