import "./list/list.css"
import { useEffect, useMemo, useRef } from "react"
import { isFoil } from "../../../geometry/section/section"
import { headOf } from "../../core/figures/measured"
import { pieceOf } from "../../core/kinds/kindRecords"
import { ranksBehind } from "../../core/placement/rankBehind"
import { usePlan, useSession } from "../../session/usePlan"
import { useWords } from "../../session/words"
import { FoilRow, optionId } from "./list/FoilRow"
import { ListBar } from "./list/ListBar"
import { onListKey } from "./list/listKeys"
import { ListGroups } from "./working/ListGroup"

/** The foils in the order they are applied: the map's twin for keys and screen readers. */
export function FoilList() {
  const w = useWords().placement.list
  const plan = usePlan((open) => open)
  const selectedIds = useSession((session) => session.selectedIds)
  const several = useSession((session) => session.several)
  const list = useRef<HTMLDivElement>(null)
  const selected = selectedIds.at(-1)
  const current = selected ?? plan.sections[0]?.id

  useEffect(() => {
    if (selected && list.current) bringIntoView(list.current, optionId(selected))
  }, [selected])

  const foils = plan.sections.filter(isFoil)
  const ranks = useMemo(() => ranksBehind(plan.sections, headOf(plan)), [plan])
  const placeOf = new Map(foils.map(({ id }, i) => [id, i + 1]))
  return (
    <section aria-labelledby="foils-title">
      <h2 id="foils-title" tabIndex={-1}>
        {w.title(foils.length, pieceOf(foils))}
        <span className="aside"> {w.inOrder}</span>
      </h2>
      <ListBar plan={plan} />
      {plan.sections.length === 0 ? (
        <p className="aside">{w.empty}</p>
      ) : (
        <div
          ref={list}
          className="foils"
          role="listbox"
          aria-label={w.label}
          aria-multiselectable="true"
          aria-activedescendant={current ? optionId(current) : undefined}
          tabIndex={0}
          onKeyDown={onListKey}
        >
          <ListGroups
            plan={plan}
            row={(section) => (
              <FoilRow
                key={section.id}
                section={section}
                plan={plan}
                place={placeOf.get(section.id) ?? null}
                rank={ranks.get(section.id) ?? null}
                selected={selectedIds.includes(section.id)}
                several={several}
              />
            )}
          />
        </div>
      )}
    </section>
  )
}

/** The row of the foil in hand is brought into view, but never by scrolling the map away from under the hand. */
function bringIntoView(list: HTMLElement, id: string) {
  const panel = list.closest(".list")
  const scrollsAlone = panel !== null && panel.scrollHeight > panel.clientHeight
  if (scrollsAlone || document.activeElement === list)
    list.querySelector(`#${id}`)?.scrollIntoView({ block: "nearest" })
}
