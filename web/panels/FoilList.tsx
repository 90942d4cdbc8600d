import { type KeyboardEvent, useEffect, useRef } from "react"
import { isFoil, type Section } from "../../geometry/section/section"
import { act } from "../plan/act"
import { mirrorSections } from "../plan/edits/mirrorSections"
import { removeSections } from "../plan/edits/removeSections"
import { reorderSection } from "../plan/edits/reorderSection"
import { countText, gramsNumber, gramsRange, mmText } from "../plan/figureText"
import { figuresOf, headOf } from "../plan/measured"
import { planStore } from "../plan/planStore"
import type { Plan } from "../plan/schema"
import { sessionStore } from "../plan/sessionStore"
import { usePlan, useSession } from "../plan/usePlan"
import { directionText, kindWords, whereOf } from "../plan/words"
import { CrossingWord, ListGroups, listedSections } from "./working/ListGroup"

/** The foils in the order they are applied: the map's twin for keys and screen readers. */
export function FoilList() {
  const plan = usePlan((open) => open)
  const selectedIds = useSession((session) => session.selectedIds)
  const list = useRef<HTMLDivElement>(null)
  const selected = selectedIds.at(-1)
  const current = selected ?? plan.sections[0]?.id

  useEffect(() => {
    if (selected && list.current) bringIntoView(list.current, optionId(selected))
  }, [selected])

  const foils = plan.sections.filter(isFoil).length
  return (
    <section aria-labelledby="foils-title">
      <h2 id="foils-title">
        {foils === 0 ? "Foils" : countText(foils, "foil")}
        <span className="aside"> in order of application</span>
      </h2>
      {plan.sections.length === 0 ? (
        <p className="aside">
          None yet. Choose Slice, then drag along the hairline; or begin with a technique, or by words, below.
        </p>
      ) : (
        <div
          ref={list}
          className="foils"
          role="listbox"
          aria-label="Foils in order of application"
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
                selected={selectedIds.includes(section.id)}
              />
            )}
          />
        </div>
      )}
    </section>
  )
}

const optionId = (id: string) => `foil-${id}`

/** The row of the foil in hand is brought into view, but never by scrolling the map away from under the hand. */
function bringIntoView(list: HTMLElement, id: string) {
  const panel = list.closest(".list")
  const scrollsAlone = panel !== null && getComputedStyle(panel).overflowY !== "visible"
  if (scrollsAlone || document.activeElement === list)
    list.querySelector(`#${id}`)?.scrollIntoView({ block: "nearest" })
}

function FoilRow({ section, plan, selected }: { section: Section; plan: Plan; selected: boolean }) {
  const head = headOf(plan)
  const { partingMm, productG } = figuresOf(section, plan)
  const { start, end } = section.depthMm
  const depth = start === end ? mmText(start) : `${start}–${mmText(end)}`
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the listbox hears the keys for its options
    // biome-ignore lint/a11y/useFocusableInteractive: the listbox keeps the focus and names its active option
    <div
      id={optionId(section.id)}
      role="option"
      aria-selected={selected}
      onClick={(event) => select(section.id, event.shiftKey || event.ctrlKey || event.metaKey)}
    >
      <span className="number">{isFoil(section) ? section.mapNumber : "–"}</span>
      <span>
        {isFoil(section) ? kindWords[section.kind] : section.name || kindWords[section.kind]},{" "}
        {whereOf(section, head)}
      </span>
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
        {mmText(partingMm)} × {depth}, {directionText(section, head)}
        {isFoil(section) && (
          <>
            ; <span className="nowrap">{gramsRange(productG)}</span>
          </>
        )}
      </span>
      <CrossingWord section={section} plan={plan} />
    </div>
  )
}

function select(id: string, add: boolean) {
  const { selectedIds } = sessionStore.getState()
  if (!add) sessionStore.setState({ selectedIds: [id] })
  else if (selectedIds.includes(id))
    sessionStore.setState({ selectedIds: selectedIds.filter((other) => other !== id) })
  else sessionStore.setState({ selectedIds: [...selectedIds, id] })
}

function onListKey(event: KeyboardEvent) {
  const command = listKeys[event.altKey ? `Alt+${event.key}` : event.key]
  if (!command || event.ctrlKey || event.metaKey) return
  event.preventDefault()
  command(event.shiftKey)
}

const listKeys: Record<string, (extend: boolean) => void> = {
  ArrowDown: (extend) => step(1, extend),
  ArrowUp: (extend) => step(-1, extend),
  Home: () => select(listedSections()[0].id, false),
  End: () => select(listedSections().at(-1)?.id ?? "", false),
  "Alt+ArrowDown": () => shift(1),
  "Alt+ArrowUp": () => shift(-1),
  Delete: removeSelected,
  Backspace: removeSelected,
  m: mirrorSelected,
}

function step(by: number, extend: boolean) {
  const sections = listedSections()
  const { selectedIds } = sessionStore.getState()
  const at = sections.findIndex(({ id }) => id === selectedIds.at(-1))
  const next = sections[Math.max(0, Math.min(sections.length - 1, at < 0 ? 0 : at + by))]
  sessionStore.setState({
    selectedIds: extend ? [...selectedIds.filter((id) => id !== next.id), next.id] : [next.id],
  })
}

function shift(by: number) {
  const { sections } = planStore.getState().present
  const id = sessionStore.getState().selectedIds.at(-1)
  const at = sections.findIndex((section) => section.id === id)
  if (id === undefined || at < 0 || at + by < 0 || at + by >= sections.length) return
  act(by < 0 ? "Apply earlier" : "Apply later", reorderSection(id, at + by))
}

/** Take the selected sections off the plan. */
export function removeSelected() {
  const { selectedIds } = sessionStore.getState()
  if (selectedIds.length === 0) return
  act(
    selectedIds.length === 1 ? "Delete a section" : `Delete ${selectedIds.length} sections`,
    removeSections(...selectedIds),
  )
  sessionStore.setState({ selectedIds: [] })
}

/** Put copies of the selected sections on the other side of the head. */
export function mirrorSelected() {
  const { selectedIds } = sessionStore.getState()
  if (selectedIds.length > 0) act("Mirror to the other side", mirrorSections(...selectedIds))
}
