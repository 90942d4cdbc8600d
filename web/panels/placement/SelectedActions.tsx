import { lazy, Suspense, useState } from "react"
import type { Section } from "../../../geometry/section/section"
import { usualGapMm } from "../../../presets/placement/stacking"
import type { Edit } from "../../core/document/edit"
import { leaveBabyHairs, leaveBetween, leaveVeil } from "../../core/edits/lay/leaveOut"
import { repeatBehind } from "../../core/edits/lay/repeatBehind"
import { moveSections } from "../../core/edits/parting/moveSections"
import { thickenSections } from "../../core/edits/sections/thickenSections"
import { commit } from "../../session/commit"
import { copySelected, mirrorSelected, removeSelected } from "../../session/selected"
import { usePlan, useSession } from "../../session/usePlan"
import { applyBy } from "./list/listKeys"

const StackPanel = lazy(async () => ({ default: (await import("./stack/StackPanel")).StackPanel }))

/** What one tap does to the sections in hand, or with none in hand to the head: always within reach beside the map. */
export function SelectedActions() {
  const sections = usePlan((plan) => plan.sections)
  const selectedIds = useSession((session) => session.selectedIds)
  const selected = sections.filter(({ id }) => selectedIds.includes(id))
  // On an empty plan the techniques come first.
  return sections.length === 0 ? null : <Actions selected={selected} />
}

function Actions({ selected }: { selected: readonly Section[] }) {
  const [stackedId, stack] = useState<string | null>(null)
  const [first, second, ...more] = selected
  const isOne = first !== undefined && second === undefined
  const isTwo = second !== undefined && more.length === 0
  // A pair goes on behind as one does, for what is made behind the one is made behind the other.
  const isPair = isTwo && first.twin === second.id
  const leads = isOne || isPair
  const isStacking = leads && stackedId === first.id
  return (
    <>
      <section className="selected-actions actions" aria-label="What to do">
        {leads && (
          <Action
            label="Same again behind"
            said={first.twin ? "Same again behind, on both sides" : "Same again behind"}
            change={repeatBehind(first.id, usualGapMm.value)}
          />
        )}
        {first && <Reshaping ids={selected.map(({ id }) => id)} />}
        {leads && (
          <button
            type="button"
            className="button"
            aria-expanded={isStacking}
            onClick={() => stack(isStacking ? null : first.id)}
          >
            Stack behind…
          </button>
        )}
        {isTwo && !isPair && (
          <Action
            label="Leave the space between these two"
            change={leaveBetween(selected.map(({ id }) => id))}
          />
        )}
        <LeavingOut ids={selected.map(({ id }) => id)} />
        {first && <Press label="Copy" onClick={copySelected} />}
        {isOne && <Press label="Earlier" onClick={() => applyBy(-1)} />}
        {isOne && <Press label="Later" onClick={() => applyBy(1)} />}
        {first && <Press label="Delete" onClick={removeSelected} />}
      </section>
      <Suspense>
        {isStacking && <StackPanel key={first.id} first={first} onClose={() => stack(null)} />}
      </Suspense>
    </>
  )
}

/** One tap, one change; taps with the same key are taken back together. */
function Action({
  label,
  change,
  said = label,
  merge,
}: {
  label: string
  change: Edit
  said?: string
  merge?: string
}) {
  return <Press label={label} onClick={() => commit(said, change, merge)} />
}

const Press = ({ label, onClick }: { label: string; onClick: () => void }) => (
  <button type="button" className="button" onClick={onClick}>
    {label}
  </button>
)

const depthStepMm = 1
const nudgeMm = 2

function Reshaping({ ids }: { ids: readonly string[] }) {
  const key = ids.join(",")
  const moved = (behindMm: number) => moveSections(ids, { alongMm: 0, behindMm })
  return (
    <>
      <Action label="Thinner" change={thickenSections(ids, -depthStepMm)} merge={`depth:${key}`} />
      <Action label="Thicker" change={thickenSections(ids, depthStepMm)} merge={`depth:${key}`} />
      <Press label="Mirror" onClick={mirrorSelected} />
      <Action
        label="Toward hairline"
        said="Move toward the hairline"
        change={moved(-nudgeMm)}
        merge={`move:${key}`}
      />
      <Action
        label="Away from it"
        said="Move away from the hairline"
        change={moved(nudgeMm)}
        merge={`move:${key}`}
      />
    </>
  )
}

const LeavingOut = ({ ids }: { ids: readonly string[] }) => (
  <>
    <Action label="Leave a veil" change={leaveVeil(ids)} />
    <Action label="Leave baby hairs" change={leaveBabyHairs(ids)} />
  </>
)
