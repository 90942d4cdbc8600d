import { isFoil } from "../../../geometry/section/section"
import { sectionNameOf } from "../../core/document/sectionNameCode"
import { headOf } from "../../core/figures/measured"
import { placeOf } from "../../core/placement/places"
import { ranksBehind } from "../../core/placement/rankBehind"
import { announce } from "../../session/announcements"
import { planStore } from "../../session/planStore"
import { words } from "../../session/words"
import { say } from "../../words/say"

/** Says which sections a tap on the map has taken in hand, called as the list calls them. */
export function tellSelected(ids: readonly string[]) {
  const plan = planStore.getState().present
  const [section, ...more] = plan.sections.filter(({ id }) => ids.includes(id))
  if (!section) return
  const { common, placement } = words()
  if (more.length > 0) return announce(placement.list.selected(1 + more.length))
  const head = headOf(plan)
  const called = {
    at: placeOf(section, head),
    rank: ranksBehind(plan.sections, head).get(section.id) ?? null,
  }
  const what = isFoil(section)
    ? placement.list.whatAndWhere({ kind: section.kind, ...called })
    : placement.list.leftOut({ name: section.name, ...called })
  const name = say(common.sectionName, sectionNameOf(section))
  announce(placement.map.selected({ name: isFoil(section) ? name : null, what }))
}
