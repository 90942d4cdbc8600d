import { useEffect, useRef, useState } from "react"
import { looks } from "../../../presets/timing/pace"
import type { StrandTest } from "../../core/document/timingChoices"
import { limits } from "../../core/fields/limits"
import { useWords } from "../../session/words"
import { NumberField } from "../fields/NumberField"

type Props = { test: StrandTest; most: number; onChange: (test: StrandTest) => void }
/** A look at the strand; one that was only begun has no level yet. */
type Look = { minutes: number; level: number | null }

/** What was seen on the strand, look by look. One that is begun counts from the moment its level is written. */
export function StrandRows({ test, most, onChange }: Props) {
  const { rows, startLevel } = test
  const w = useWords().timing.strand
  const [begunMin, begin] = useState<number | null>(null)
  const list = useRef<HTMLOListElement>(null)
  const isBegun = begunMin !== null
  // Whoever begins a look writes its level next.
  useEffect(() => {
    if (isBegun) [...(list.current?.querySelectorAll("input") ?? [])].at(-1)?.focus()
  }, [isBegun])
  const looked: readonly Look[] = isBegun ? [...rows, { minutes: begunMin, level: null }] : rows
  const last = rows.at(-1)
  const write = (index: number, { minutes, level }: Look) => {
    if (level === null) return begin(minutes)
    onChange({ ...test, rows: [...rows.slice(0, index), { minutes, level }, ...rows.slice(index + 1)] })
    if (index === rows.length) begin(null)
  }
  const takeOut = (index: number) =>
    index === rows.length ? begin(null) : onChange({ ...test, rows: rows.toSpliced(index, 1) })
  return (
    <ol className="strand-rows" ref={list}>
      {looked.map((look, index) => (
        <LookRow
          // biome-ignore lint/suspicious/noArrayIndexKey: looks have no name of their own and keep their places
          key={index}
          look={look}
          usualLevel={last?.level ?? startLevel}
          onChange={(part) => write(index, { ...look, ...part })}
          onTakeOut={() => takeOut(index)}
        />
      ))}
      {!isBegun && rows.length < most && (
        <li>
          <button
            type="button"
            className="button"
            onClick={() => begin(last ? last.minutes + looks.everyMin : looks.firstMin)}
          >
            {w.add}
          </button>
        </li>
      )}
    </ol>
  )
}

type RowProps = {
  look: Look
  usualLevel: number
  onChange: (part: Partial<Look>) => void
  onTakeOut: () => void
}

function LookRow({ look: { minutes, level }, usualLevel, onChange, onTakeOut }: RowProps) {
  const { timing, common } = useWords()
  const w = timing.strand
  return (
    <li className="with-fields">
      <NumberField
        name={w.minutes}
        unit={common.units.min}
        value={minutes}
        range={limits.heldMin}
        step={5}
        onCommit={(next) => onChange({ minutes: next })}
      />
      <NumberField
        name={w.level}
        unit=""
        value={level ?? usualLevel}
        isUnset={level === null}
        range={limits.level}
        step={0.5}
        onCommit={(next) => onChange({ level: next })}
      />
      <button type="button" className="button quiet" onClick={onTakeOut}>
        {w.removeRow}
      </button>
    </li>
  )
}
