import type { Head } from "../../../geometry/scalp/head"
import type { Section } from "../../../geometry/section/section"
import { facing, fixedViews } from "../../../geometry/surface/views"
import type { Plan } from "../../core/document/schema"
import { type PaperView, pictureOf } from "../../drawing/headDrawing"
import { bandMiddle } from "../../drawing/marks"

/** The views every map has, and those it has only for sections that the others show too flat. */
const always = ["front", "right", "left"] as const satisfies readonly PaperView[]
const atNeed = ["top", "back"] as const satisfies readonly PaperView[]

/** A place seen flatter than this, cosine, is not shown well: it is drawn at less than half its width. */
const plainly = 0.5

/** The views a map of these sections needs, in the order of the page. */
export function chooseViews(sections: readonly Section[], head: Head): PaperView[] {
  const hidden = sections.filter((section) => !always.some((view) => isPlain(view, section, head)))
  const extra = atNeed.filter((view) => hidden.some((section) => bestView(atNeed, section, head) === view))
  return [...always, ...extra]
}

/** More names than this round one drawing crowd it. */
const mostNames = 30

/** The sections whose number or name is written at each view: all that it shows any of, or, in a crowd, those it shows best. */
export function nameSections(
  views: readonly PaperView[],
  plan: Plan,
  head: Head,
): ReadonlyMap<PaperView, readonly Section[]> {
  const { sections } = plan
  return new Map(
    views.map((view) => {
      const { scene } = pictureOf(head, view)
      const best = sections.filter((section) => bestView(views, section, head) === view)
      const shown = sections.filter(
        (section) => bandMiddle(section, plan, scene) !== null || best.includes(section),
      )
      return [view, shown.length > mostNames ? best : shown]
    }),
  )
}

const isPlain = (view: PaperView, section: Section, head: Head) => facingOf(view, section, head) > plainly

const bestView = (views: readonly PaperView[], section: Section, head: Head) =>
  views.reduce((best, view) => (facingOf(view, section, head) > facingOf(best, section, head) ? view : best))

const facingOf = (view: PaperView, { parting }: Section, head: Head) =>
  facing(fixedViews[view], head.surface, parting[parting.length >> 1])
