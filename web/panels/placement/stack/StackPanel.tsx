import "./stack.css"
import { useEffect, useMemo, useRef, useState } from "react"
import { isFoil, type Section } from "../../../../geometry/section/section"
import { stackCount, usualGapMm } from "../../../../presets/placement/stacking"
import type { Plan } from "../../../core/document/schema"
import { sectionNameOf } from "../../../core/document/sectionNameCode"
import { sidesBehind } from "../../../core/edits/lay/pairBehind"
import { type StackWish, stackBehind, stackRefusal, stackRows } from "../../../core/edits/lay/stackBehind"
import { headOf } from "../../../core/figures/measured"
import { directionIn } from "../../../core/placement/places"
import { announce } from "../../../session/announcements"
import { commit } from "../../../session/commit"
import { type StackInHand, stackStore } from "../../../session/stackStore"
import { usePlan } from "../../../session/usePlan"
import { type Done, refusalWords, useWords } from "../../../session/words"
import { CountField } from "./CountField"
import { StackFields } from "./StackFields"
import { usePreview } from "./usePreview"

type Props = { first: Section; onClose: () => void }

/** So many more behind a section, seen on the map while they are chosen; one act, one undo. */
export function StackPanel({ first, onClose }: Props) {
  const { common, placement } = useWords()
  const w = placement.stack
  const plan = usePlan((open) => open)
  const [count, setCount] = useState(stackCount.value)
  const [wish, setWish] = useState(() => usualWish(first, plan))
  const rows = useMemo(() => stackRows(first, plan, wish), [first, plan, wish])
  const shown = rows(count)
  const sides = sidesBehind(first, plan)
  const fits = shown.length / sides
  const section = useMemo(() => sectionNameOf(first), [first])
  const total = { foils: shown.filter(isFoil).length, sections: shown.length }
  useHandle({ rows, sides, shown: fits, most: stackCount.range[1], ask: setCount })
  usePreview(
    plan,
    useMemo(() => ({ chapter: "placement", code: "stack-behind", section }), [section]),
    shown,
  )
  const callOff = () => {
    announce(w.cancelled)
    onClose()
  }
  useEscape(callOff)
  const panel = useSight()
  const lay = () => {
    const done: Done = { chapter: "placement", code: "stack", section, each: fits, sides, ...total }
    if (commit(done, stackBehind(first.id, wish, fits))) onClose()
  }
  return (
    <section ref={panel} className="stack-panel" aria-labelledby="stack-title">
      <h2 id="stack-title">{w.title(section)}</h2>
      <CountField count={count} onChange={setCount} />
      <p aria-live="polite">
        {fits < count ? refusalWords(stackRefusal(first, fits, count)) : w.allFit(count)}
        {wish.gapMm === 0 && ` ${w.touching}`}
        {sides === 2 && shown.length > 0 && ` ${w.bothSides(total)}`}
      </p>
      <div className="actions">
        <button type="button" className="button strong" disabled={shown.length === 0} onClick={lay}>
          {w.place({ fits, asked: count, sides })}
        </button>
        <button type="button" className="button" onClick={callOff}>
          {common.actions.cancel}
        </button>
      </div>
      <StackFields first={first} wish={wish} onChange={setWish} />
    </section>
  )
}

const usualWish = (first: Section, plan: Plan): StackWish => ({
  follow: directionIn(first, headOf(plan)).name === "parallel to hairline" ? "hairline" : "parting",
  gapMm: usualGapMm.value,
  shiftMm: 0,
  depthMm: first.depthMm,
  second: null,
})

/** Gives the map its handle for as long as the stack is being chosen. */
function useHandle({ rows, sides, shown, most, ask }: StackInHand) {
  useEffect(
    () => stackStore.setState({ stack: shown > 0 ? { rows, sides, shown, most, ask } : null }),
    [rows, sides, shown, most, ask],
  )
  useEffect(() => () => stackStore.setState({ stack: null }), [])
}

/** What was asked for is in sight, however far down the list the hand was. */
function useSight() {
  const panel = useRef<HTMLElement>(null)
  useEffect(() => {
    panel.current?.scrollIntoView({ block: "start" })
  }, [])
  return panel
}

/** Escape works wherever the focus is. */
function useEscape(callOff: () => void) {
  useEffect(() => {
    const onKey = ({ key }: KeyboardEvent) => {
      if (key === "Escape") callOff()
    }
    window.addEventListener("keydown", onKey)
    return () => window.removeEventListener("keydown", onKey)
  })
}
