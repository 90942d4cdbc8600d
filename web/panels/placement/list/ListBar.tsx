import { useEffect } from "react"
import { useStore } from "zustand"
import { isFoil } from "../../../../geometry/section/section"
import type { Plan } from "../../../core/document/schema"
import { renumberSections } from "../../../core/edits/sections/renumberSections"
import { clipboard, listenToClipboard } from "../../../session/clipboard"
import { commit } from "../../../session/commit"
import { copySelected, pasteCopied, selectAll } from "../../../session/selected"
import { sessionStore } from "../../../session/sessionStore"
import { useSession } from "../../../session/usePlan"
import { useWords } from "../../../session/words"

/** What is done with several rows at once, and with what was copied. */
export function ListBar({ plan }: { plan: Plan }) {
  const w = useWords().placement.list
  const several = useSession((session) => session.several)
  const isAnySelected = useSession((session) => session.selectedIds.length > 0)
  const { count } = useStore(clipboard)
  useEffect(listenToClipboard, [])
  const isEmpty = plan.sections.length === 0
  if (isEmpty && count === 0) return null
  return (
    <div className="choices list-bar">
      {!isEmpty && (
        <>
          <label>
            <input
              type="checkbox"
              checked={several}
              onChange={(event) => sessionStore.setState({ several: event.target.checked })}
            />
            <span>{w.selectSeveral}</span>
          </label>
          <Button label={w.all} onClick={selectAll} />
          <Button label={w.copy} disabled={!isAnySelected} onClick={copySelected} />
        </>
      )}
      {count > 0 && <Button label={w.paste(count)} onClick={pasteCopied} />}
      {isOutOfOrder(plan) && (
        <Button
          label={w.numberInOrder}
          onClick={() => commit({ chapter: "placement", code: "number-in-order" }, renumberSections)}
        />
      )}
    </div>
  )
}

const isOutOfOrder = ({ sections }: Plan) =>
  sections.filter(isFoil).some(({ mapNumber }, i) => mapNumber !== i + 1)

function Button({
  label,
  onClick,
  disabled = false,
}: {
  label: string
  onClick: () => void
  disabled?: boolean
}) {
  return (
    <button type="button" className="button" disabled={disabled} onClick={onClick}>
      {label}
    </button>
  )
}
