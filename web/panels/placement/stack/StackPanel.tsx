import "./stack.css"
import { useEffect, useMemo, useRef, useState } from "react"
import { isFoil, type Section } from "../../../../geometry/section/section"
import { stackCount, usualGapMm } from "../../../../presets/placement/stacking"
import type { Plan } from "../../../core/document/schema"
import { sidesBehind } from "../../../core/edits/lay/pairBehind"
import { fitWords, type StackWish, stackBehind, stackRows } from "../../../core/edits/lay/stackBehind"
import { headOf } from "../../../core/figures/measured"
import { countText } from "../../../core/text/figureText"
import { sectionName } from "../../../core/text/sectionName"
import { directionIn } from "../../../core/text/words"
import { announce } from "../../../session/announcements"
import { commit } from "../../../session/commit"
import { type StackInHand, stackStore } from "../../../session/stackStore"
import { usePlan } from "../../../session/usePlan"
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
  const sides = sidesBehind(first, plan)
  const fits = shown.length / sides
  const name = sectionName(first).toLowerCase()
  useHandle({ rows, sides, shown: fits, most: stackCount.range[1], ask: setCount })
  usePreview(plan, `Stack behind ${name}`, shown)
  const callOff = () => {
    announce("Stack called off")
    onClose()
  }
  useEscape(callOff)
  const panel = useSight()
  const lay = () => {
    if (commit(laidWords(name, shown, sides), stackBehind(first.id, wish, fits))) onClose()
  }
  return (
    <section ref={panel} className="stack-panel" aria-labelledby="stack-title">
      <h2 id="stack-title">Stack behind {name}</h2>
      <CountField count={count} onChange={setCount} />
      <p aria-live="polite">
        {words(first, wish, fits, count)}
        {sides === 2 && shown.length > 0 && ` ${bothSides(shown)}`}
      </p>
      <div className="actions">
        <button type="button" className="button strong" disabled={shown.length === 0} onClick={lay}>
          {fits < count && fits > 0 ? `Lay the ${fits} that fit` : `Lay ${fits}`}
          {sides === 2 && " on each side"}
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

/** A pair goes on as pairs: how many foils that comes to. */
const bothSides = (shown: readonly Section[]) => `On both sides, as pairs: ${foilsText(shown)} in all.`

const laidWords = (name: string, shown: readonly Section[], sides: 1 | 2) =>
  `Stack ${shown.length / sides} behind ${name}${sides === 2 ? ` on each side: ${foilsText(shown)}` : ""}`

function foilsText(shown: readonly Section[]) {
  const foils = shown.filter(isFoil).length
  if (foils === shown.length) return countText(foils, "foil")
  const all = countText(shown.length, "section")
  return foils === 0 ? all : `${all}, ${foils} of them foils`
}

function words(first: Section, { gapMm }: StackWish, fits: number, asked: number): string {
  const fit = fits < asked ? fitWords(first, fits, asked) : `All ${asked} fit.`
  const touch =
    gapMm === 0 ? " Gap 0 mm: they lie back to back and share hairs at the edges; 1 mm keeps them apart." : ""
  return fit + touch
}

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
