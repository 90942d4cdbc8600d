import { lazy, type ReactNode, Suspense, useId, useState } from "react"
import type { Section } from "../../../geometry/section/section"
import { usualGapMm } from "../../../presets/placement/stacking"
import type { Edit } from "../../core/document/edit"
import { leaveBabyHairs, leaveBetween, leaveVeil } from "../../core/edits/lay/leaveOut"
import { repeatBehind } from "../../core/edits/lay/repeatBehind"
import { moveSections } from "../../core/edits/parting/moveSections"
import { thickenSections } from "../../core/edits/sections/thickenSections"
import { commit } from "../../session/commit"
import { mirrorSelected } from "../../session/selected"
import { usePlan, useSession } from "../../session/usePlan"
import { useWords } from "../../session/words"
import { applyBy, removeInHand } from "./list/listKeys"

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
  const w = useWords().placement.actions
  const [stackedId, stack] = useState<string | null>(null)
  const [first, second, ...more] = selected
  const ids = selected.map(({ id }) => id)
  const isOne = first !== undefined && second === undefined
  const isTwo = second !== undefined && more.length === 0
  // A pair goes on behind as one does, for what is made behind the one is made behind the other.
  const isPair = isTwo && first.twin === second.id
  const leads = isOne || isPair
  const isStacking = leads && stackedId === first.id
  return (
    <>
      <section className="selected-actions actions" aria-label={w.title}>
        {first ? (
          <>
            <Group>
              {leads && (
                <Action
                  label={w.repeatBehind}
                  done={first.twin ? "repeat-behind-both" : "repeat-behind"}
                  change={repeatBehind(first.id, usualGapMm.value)}
                />
              )}
              <Press label={w.mirror} onClick={mirrorSelected} />
              {leads && (
                <button
                  type="button"
                  className="button"
                  aria-expanded={isStacking}
                  onClick={() => stack(isStacking ? null : first.id)}
                >
                  {w.stackBehind}
                </button>
              )}
            </Group>
            <Group>
              <Thickness ids={ids} />
            </Group>
            <More>
              <Group>
                <Nudges ids={ids} />
              </Group>
              {isOne && (
                <Group>
                  <Press label={w.earlier} onClick={() => applyBy(-1)} />
                  <Press label={w.later} onClick={() => applyBy(1)} />
                </Group>
              )}
              <Group>
                {isTwo && !isPair && (
                  <Action
                    label={w.leaveBetween}
                    done="leave-between"
                    change={leaveBetween(ids, w.names.between)}
                  />
                )}
                <LeavingOut ids={ids} />
              </Group>
            </More>
            <Group>
              <Press label={w.delete} onClick={removeInHand} />
            </Group>
          </>
        ) : (
          <Group>
            <LeavingOut ids={ids} />
          </Group>
        )}
      </section>
      <Suspense>
        {isStacking && <StackPanel key={first.id} first={first} onClose={() => stack(null)} />}
      </Suspense>
    </>
  )
}

/** What is done seldom, behind one button that keeps what it showed from foil to foil. */
function More({ children }: { children: ReactNode }) {
  const w = useWords().placement.actions
  const [isOpen, open] = useState(false)
  const id = useId()
  return (
    <>
      <button
        type="button"
        className="button more"
        aria-expanded={isOpen}
        aria-controls={isOpen ? id : undefined}
        onClick={() => open(!isOpen)}
      >
        {w.more}
      </button>
      {isOpen && (
        <div id={id} className="more-actions">
          {children}
        </div>
      )}
    </>
  )
}

/** What belongs together stands together: repeat, shape, order, leave out, remove. */
const Group = ({ children }: { children: ReactNode }) => <div className="action-group">{children}</div>

/** One tap, one change; taps with the same key are taken back together. */
function Action({
  label,
  done,
  change,
  merge,
}: {
  label: string
  done: ActionDone
  change: Edit
  merge?: string
}) {
  return <Press label={label} onClick={() => commit({ chapter: "placement", code: done }, change, merge)} />
}

type ActionDone =
  | "repeat-behind"
  | "repeat-behind-both"
  | "thinner"
  | "thicker"
  | "towards-hairline"
  | "away-from-hairline"
  | "leave-between"
  | "leave-veil"
  | "leave-baby-hairs"

const Press = ({ label, onClick }: { label: string; onClick: () => void }) => (
  <button type="button" className="button" onClick={onClick}>
    {label}
  </button>
)

const depthStepMm = 1
const nudgeMm = 2

function Thickness({ ids }: { ids: readonly string[] }) {
  const w = useWords().placement.actions
  const merge = `depth:${ids.join(",")}`
  return (
    <>
      <Action label={w.thinner} done="thinner" change={thickenSections(ids, -depthStepMm)} merge={merge} />
      <Action label={w.thicker} done="thicker" change={thickenSections(ids, depthStepMm)} merge={merge} />
    </>
  )
}

function Nudges({ ids }: { ids: readonly string[] }) {
  const w = useWords().placement.actions
  const merge = `move:${ids.join(",")}`
  const moved = (behindMm: number) => moveSections(ids, { alongMm: 0, behindMm })
  return (
    <>
      <Action label={w.towardsHairline} done="towards-hairline" change={moved(-nudgeMm)} merge={merge} />
      <Action label={w.awayFromHairline} done="away-from-hairline" change={moved(nudgeMm)} merge={merge} />
    </>
  )
}

function LeavingOut({ ids }: { ids: readonly string[] }) {
  const w = useWords().placement.actions
  return (
    <>
      <Action label={w.leaveVeil} done="leave-veil" change={leaveVeil(ids, w.names.veil)} />
      <Action
        label={w.leaveBabyHairs}
        done="leave-baby-hairs"
        change={leaveBabyHairs(ids, w.names.babyHairs)}
      />
    </>
  )
}
