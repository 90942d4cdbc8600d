import { useState } from "react"
import type { ProductSheet } from "../../../../presets/formula/productSheet"
import { letters } from "../../../core/fields/limits"
import { sheetProblems } from "../../../core/mixing/productSheet"
import { useWords } from "../../../session/words"
import { say } from "../../../words/say"
import { Choices } from "../../fields/Choices"
import { TextField } from "../../fields/TextField"
import { AdditiveRows } from "./AdditiveRows"
import { DeveloperRows } from "./DeveloperRows"
import { MinuteFields } from "./MinuteFields"
import { PriceFields } from "./PriceFields"
import { RatioFields } from "./RatioFields"
import type { SheetPart } from "./sheetPart"

type Props = {
  sheet: ProductSheet
  /** Names of the salon's other sheets: a plan finds a sheet by its name. */
  others: readonly string[]
  onKeep: (sheet: ProductSheet) => void
  onLeave: () => void
  onRemove: (() => void) | null
}

/** What is printed on a tub, typed in; what the tub does not say stays empty. */
export function SheetEditor({ sheet, others, onKeep, onLeave, onRemove }: Props) {
  const w = useWords().formula.productSheets
  const [draft, setDraft] = useState(sheet)
  const part: SheetPart = { draft, edit: (change) => setDraft({ ...draft, ...change }) }
  const { edit } = part
  const problems = [
    ...sheetProblems(draft).map((problem) => say(w.problem, problem)),
    ...(others.includes(draft.name.trim()) ? [w.nameTaken(draft)] : []),
  ]
  return (
    <div className="sheet-editor">
      <NameAndKind {...part} />
      {draft.kind !== "direct-toner" && (
        <>
          <RatioFields {...part} />
          <DeveloperRows developers={draft.developers} onChange={(developers) => edit({ developers })} />
        </>
      )}
      <MinuteFields {...part} />
      <AdditiveRows additives={draft.additives} onChange={(additives) => edit({ additives })} />
      <PriceFields {...part} />
      {problems.length > 0 && (
        <ul className="cautions" aria-label={w.beforeSaving}>
          {problems.map((problem) => (
            <li key={problem}>{problem}</li>
          ))}
        </ul>
      )}
      <div className="actions">
        <button
          type="button"
          className="button strong"
          // Not disabled: the Tab that leaves the last field cures it and must find this button.
          aria-disabled={problems.length > 0}
          onClick={() => {
            if (problems.length === 0) onKeep({ ...draft, name: draft.name.trim() })
          }}
        >
          {w.save}
        </button>
        <button type="button" className="button" onClick={onLeave}>
          {w.cancel}
        </button>
        {onRemove && (
          <button type="button" className="button quiet" onClick={onRemove}>
            {w.remove}
          </button>
        )}
      </div>
    </div>
  )
}

const kinds = ["lightener", "oxidative-toner", "root-shade", "direct-toner"] as const
const forms = ["powder", "clay", "cream", "liquid"] as const

/** Without developer there is nothing to mix it with. */
const undiluted = { ratio: { low: 1, high: 1 }, developers: [] }

function NameAndKind({ draft, edit }: SheetPart) {
  const w = useWords().formula.productSheets
  return (
    <>
      <TextField name={w.name} value={draft.name} most={letters.name} onCommit={(name) => edit({ name })} />
      <Choices
        legend={w.kind}
        options={kinds.map((kind) => ({ value: kind, label: w.kinds[kind] }))}
        value={draft.kind}
        onChange={(kind) => edit({ kind, ...(kind === "direct-toner" && undiluted) })}
      />
      <Choices
        legend={w.form}
        options={forms.map((form) => ({ value: form, label: w.forms[form] }))}
        value={draft.form}
        onChange={(form) => edit({ form })}
      />
    </>
  )
}
