import type { MouseEvent } from "react"
import { coatsOf, isFoil, type Section } from "../../../../geometry/section/section"
import type { Plan } from "../../../core/document/schema"
import { figuresOf, headOf } from "../../../core/figures/measured"
import { coatCodes } from "../../../core/placement/coatCodes"
import { mixPlace } from "../../../core/placement/mixPlaces"
import { pairOf } from "../../../core/placement/pairCode"
import { directionIn, placeOf } from "../../../core/placement/places"
import { mixColors } from "../../../drawing/inks"
import { toggleSelected } from "../../../session/selected"
import { sessionStore } from "../../../session/sessionStore"
import { useWords } from "../../../session/words"
import { CrossingWord } from "../working/ListGroup"
import { dragRow } from "./dragRow"
import { selectThrough } from "./listKeys"

export const optionId = (id: string) => `foil-${id}`

/** `place` counts the foils that go on up to this one; null for hair left out. */
type Props = {
  section: Section
  plan: Plan
  place: number | null
  /** Which of those of its kind at its place it is, from the hairline back; null where it is alone. */
  rank: number | null
  selected: boolean
  several: boolean
}

/** One section: its place in the order of application at its handle, its number on the map, what it is and takes. */
export function FoilRow({ section, plan, place, rank, selected, several }: Props) {
  const w = useWords().placement.list
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
        title={w.dragHint}
        onPointerDown={(event) => {
          if (event.button > 0) return
          event.preventDefault()
          dragRow(event, section.id)
        }}
      >
        {place !== null && <span className="place">{w.ordinal(place)}</span>}
      </span>
      <span className="number">{isFoil(section) ? section.mapNumber : "–"}</span>
      <RowWords section={section} plan={plan} rank={rank} />
      {several && <span className="tick">{selected ? "✓" : ""}</span>}
      <RowGrams section={section} plan={plan} />
      {selected && <RowFigures section={section} plan={plan} />}
      <CrossingWord section={section} plan={plan} />
    </div>
  )
}

function RowWords({ section, plan, rank }: Pick<Props, "section" | "plan" | "rank">) {
  const w = useWords().placement.list
  const at = placeOf(section, headOf(plan))
  if (!isFoil(section)) return <span className="what">{w.leftOut({ name: section.name, at, rank })}</span>
  return (
    <span className="what">
      {w.whatAndWhere({ kind: section.kind, at, rank })}
      {section.name && <b className="own-name">{section.name}</b>}
    </span>
  )
}

/** What goes on a foil, and the mix in its ink; hair left out takes none. */
function RowGrams({ section, plan }: Pick<Props, "section" | "plan">) {
  const { common, placement } = useWords()
  if (!isFoil(section)) return <span className="grams none">{placement.list.noProduct}</span>
  const { productG } = figuresOf(section, plan)
  const inkOf = (mix: string) => mixColors[mixPlace(mix, plan) % mixColors.length]
  return (
    <span className="grams">
      <b>{common.figures.gramsNumber(productG.mid)}</b> {common.units.g}
      <span className="unseen">, {common.coats(coatCodes(section))}</span>
      {coatsOf(section).map(({ mix }) => (
        <b key={mix} className="ink" aria-hidden="true" style={{ color: inkOf(mix) }}>
          {mix}
        </b>
      ))}
    </span>
  )
}

/** The rest of a section in hand, on a line of its own. */
function RowFigures({ section, plan }: Pick<Props, "section" | "plan">) {
  const { partingMm, productG, coats } = figuresOf(section, plan)
  const { common, placement } = useWords()
  const w = placement.list
  const { start, end } = section.depthMm
  const pair = pairOf(section, plan)
  return (
    <span className="aside">
      {w.lengthAndDepth({ lengthMm: partingMm, startMm: start, endMm: end })},{" "}
      {common.direction(directionIn(section, headOf(plan)))}
      {isFoil(section) && (
        <>
          ; <span className="nowrap">{common.figures.gramsRange(productG)}</span>
          {coats.length > 1 && (
            <>
              :{" "}
              {coats.map(({ mix, productG: own }) => `${mix} ${common.figures.gramsRange(own)}`).join(" + ")};{" "}
              {common.coats(coatCodes(section))}
            </>
          )}
        </>
      )}
      {pair && <>; {w.pair(pair)}</>}
    </span>
  )
}

function choose(id: string, { shiftKey, ctrlKey, metaKey }: MouseEvent) {
  if (shiftKey) selectThrough(id)
  else if (ctrlKey || metaKey || sessionStore.getState().several) toggleSelected(id)
  else sessionStore.setState({ selectedIds: [id] })
}
