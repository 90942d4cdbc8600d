import "./stack.css"
import { useEffect, useMemo, useState } from "react"
import type { Section } from "../../../geometry/section/section"
import { stackCount, usualGapMm } from "../../../presets/stacking"
import { act } from "../../plan/act"
import { announce } from "../../plan/announcements"
import { fitWords, type StackWish, stackBehind, stackRows } from "../../plan/edits/stackBehind"
import { headOf } from "../../plan/measured"
import type { Plan } from "../../plan/schema"
import { sectionName } from "../../plan/sectionName"
import { usePlan } from "../../plan/usePlan"
import { directionIn } from "../../plan/words"
import { CountField } from "./CountField"
import { StackFields } from "./StackFields"
import { usePreview } from "./usePreview"

type Props = { first: Section; onClose: () => void }

/** So many more behind a section, seen on the map while they are chosen; one act, one undo. */
export function StackPanel({ first, onClose }: Props) {
  const plan = usePlan((open) => open)
  const [count, setCount] = useState(stackCount.value)
  const [wish, setWish] = useState(() => usualWish(first, plan))
  const rows = useMemo(() => stackRows(first, plan, wish), [first, plan, wish])
  const shown = rows(count)
  const name = sectionName(first).toLowerCase()
  usePreview(plan, `Stack behind ${name}`, shown)
  const callOff = () => {
    announce("Stack called off")
    onClose()
  }
  useEscape(callOff)
  const lay = () => {
    if (act(`Stack ${shown.length} behind ${name}`, stackBehind(first.id, wish, shown.length))) onClose()
  }
  return (
    <section className="stack-panel" aria-labelledby="stack-title">
      <h2 id="stack-title">Stack behind {name}</h2>
      <CountField count={count} onChange={setCount} />
      <p aria-live="polite">{words(first, wish, shown.length, count)}</p>
      <div className="actions">
        <button type="button" className="button strong" disabled={shown.length === 0} onClick={lay}>
          {shown.length < count && shown.length > 0
            ? `Lay the ${shown.length} that fit`
            : `Lay ${shown.length}`}
        </button>
        <button type="button" className="button" onClick={callOff}>
          Call off
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

function words(first: Section, { gapMm }: StackWish, fits: number, asked: number): string {
  const fit = fits < asked ? fitWords(first, fits, asked) : `All ${asked} fit.`
  const touch =
    gapMm === 0 ? " Gap 0 mm: they lie back to back and share hairs at the edges; 1 mm keeps them apart." : ""
  return fit + touch
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
