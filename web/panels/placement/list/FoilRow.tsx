import type { MouseEvent } from "react"
import { isFoil, type Section } from "../../../../geometry/section/section"
import type { Plan } from "../../../core/document/schema"
import { figuresOf, headOf } from "../../../core/figures/measured"
import { gramsNumber, gramsRange, mmText } from "../../../core/text/figureText"
import { directionText, kindWords, pairWords, whereOf } from "../../../core/text/words"
import { toggleSelected } from "../../../session/selected"
import { sessionStore } from "../../../session/sessionStore"
import { CrossingWord } from "../working/ListGroup"
import { dragRow } from "./dragRow"
import { selectThrough } from "./listKeys"
import { ordinal } from "./ordinal"

export const optionId = (id: string) => `foil-${id}`

/** `place` counts the foils that go on up to this one; null for hair left out. */
type Props = { section: Section; plan: Plan; place: number | null; selected: boolean; several: boolean }

/** One section: its place in the order of application at its handle, its number on the map, what it is and takes. */
export function FoilRow({ section, plan, place, selected, several }: Props) {
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the listbox hears the keys for its options
    // biome-ignore lint/a11y/useFocusableInteractive: the listbox keeps the focus and names its active option
    <div
      id={optionId(section.id)}
      role="option"
      aria-selected={selected}
      data-section={section.id}
      onClick={(event) => choose(section.id, event)}
    >
      <span
        className="grip"
        title="Drag to apply earlier or later"
        onPointerDown={(event) => {
          if (event.button > 0) return
          event.preventDefault()
          dragRow(event.currentTarget, event.pointerId, section.id)
        }}
      >
        {place !== null && <span className="place">{ordinal(place)}</span>}
      </span>
      <span className="number">{isFoil(section) ? section.mapNumber : "–"}</span>
      <RowWords section={section} plan={plan} />
      {several && <span className="tick">{selected ? "✓" : ""}</span>}
      <RowFigures section={section} plan={plan} />
      <CrossingWord section={section} plan={plan} />
    </div>
  )
}

function RowWords({ section, plan }: { section: Section; plan: Plan }) {
  const where = whereOf(section, headOf(plan))
  if (!isFoil(section))
    return (
      <span>
        {section.name || kindWords[section.kind]}, {where}
      </span>
    )
  return (
    <span>
      {kindWords[section.kind]}, {where}
      {section.name && <b className="own-name">{section.name}</b>}
    </span>
  )
}

function RowFigures({ section, plan }: { section: Section; plan: Plan }) {
  const { partingMm, productG } = figuresOf(section, plan)
  const { start, end } = section.depthMm
  const depth = start === end ? mmText(start) : `${start}–${mmText(end)}`
  const pair = pairWords(section, plan)
  return (
    <>
      <span className="grams">
        {isFoil(section) ? (
          <>
            <b>{gramsNumber(productG.mid)}</b> g
          </>
        ) : (
          "no product"
        )}
      </span>
      <span className="aside">
        {mmText(partingMm)} × {depth}, {directionText(section, headOf(plan))}
        {isFoil(section) && (
          <>
            ; <span className="nowrap">{gramsRange(productG)}</span>
          </>
        )}
        {pair && <>; {pair}</>}
      </span>
    </>
  )
}

function choose(id: string, { shiftKey, ctrlKey, metaKey }: MouseEvent) {
  if (shiftKey) selectThrough(id)
  else if (ctrlKey || metaKey || sessionStore.getState().several) toggleSelected(id)
  else sessionStore.setState({ selectedIds: [id] })
}
