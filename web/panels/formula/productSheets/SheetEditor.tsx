import { useState } from "react"
import type { ProductSheet } from "../../../../presets/formula/productSheet"
import { heatHabits } from "../../../../presets/timing/pace"
import { letters, limits } from "../../../core/document/limits"
import { sheetProblems } from "../../../core/mixing/productSheet"
import { capital } from "../../../core/text/capital"
import { Choices } from "../../fields/Choices"
import { NumberField } from "../../fields/NumberField"
import { TextField } from "../../fields/TextField"
import { AdditiveRows } from "./AdditiveRows"
import { DeveloperRows } from "./DeveloperRows"
import { GapField } from "./GapField"

type Props = {
  sheet: ProductSheet
  /** Names of the salon's other sheets: a plan finds a sheet by its name. */
  others: readonly string[]
  onKeep: (sheet: ProductSheet) => void
  onLeave: () => void
  onRemove: (() => void) | null
}

export type EditSheet = (change: Partial<ProductSheet>) => void

/** What is printed on a tub, typed in; what the tub does not say stays empty. */
export function SheetEditor({ sheet, others, onKeep, onLeave, onRemove }: Props) {
  const [draft, setDraft] = useState(sheet)
  const edit: EditSheet = (change) => setDraft({ ...draft, ...change })
  const problems = [
    ...sheetProblems(draft),
    ...(others.includes(draft.name.trim())
      ? [{ path: "name", expected: `name: there is a sheet of ${draft.name} already; open that one.` }]
      : []),
  ]
  return (
    <div className="sheet-editor">
      <NameAndKind draft={draft} edit={edit} />
      {draft.kind !== "direct-toner" && (
        <>
          <RatioFields draft={draft} edit={edit} />
          <DeveloperRows developers={draft.developers} onChange={(developers) => edit({ developers })} />
        </>
      )}
      <MinuteFields draft={draft} edit={edit} />
      <AdditiveRows additives={draft.additives} onChange={(additives) => edit({ additives })} />
      <PriceFields draft={draft} edit={edit} />
      {problems.length > 0 && (
        <ul className="cautions" aria-label="Before it can be kept">
          {problems.map(({ expected }) => (
            <li key={expected}>{capital(expected)}</li>
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
          Keep this sheet
        </button>
        <button type="button" className="button" onClick={onLeave}>
          Leave it as it was
        </button>
        {onRemove && (
          <button type="button" className="button quiet" onClick={onRemove}>
            Take this sheet out
          </button>
        )}
      </div>
    </div>
  )
}

type PartProps = { draft: ProductSheet; edit: EditSheet }

const kinds = [
  { value: "lightener", label: "Lightener" },
  { value: "oxidative-toner", label: "Toner with developer" },
  { value: "root-shade", label: "Root shade" },
  { value: "direct-toner", label: "Toner without developer" },
] as const
const forms = [
  { value: "powder", label: "Powder" },
  { value: "clay", label: "Clay" },
  { value: "cream", label: "Cream" },
  { value: "liquid", label: "Liquid" },
] as const

/** Without developer there is nothing to mix it with. */
const undiluted = { ratio: { low: 1, high: 1 }, developers: [] }

const NameAndKind = ({ draft, edit }: PartProps) => (
  <>
    <TextField
      name="Name on the tub"
      value={draft.name}
      most={letters.name}
      onCommit={(name) => edit({ name })}
    />
    <Choices
      legend="It is a"
      options={kinds}
      value={draft.kind}
      onChange={(kind) => edit({ kind, ...(kind === "direct-toner" && undiluted) })}
    />
    <Choices legend="It comes as" options={forms} value={draft.form} onChange={(form) => edit({ form })} />
  </>
)

const RatioFields = ({ draft: { ratio }, edit }: PartProps) => (
  <fieldset>
    <legend>Parts of developer to 1 of product, by weight</legend>
    <div className="with-fields">
      <NumberField
        name="Thickest"
        unit="parts"
        value={ratio.low}
        isUnset={ratio.low === 0}
        range={limits.sheetParts}
        step={0.25}
        onCommit={(low) => edit({ ratio: { low, high: ratio.high === 0 ? low : ratio.high } })}
      />
      <NumberField
        name="Loosest"
        unit="parts"
        value={ratio.high}
        isUnset={ratio.high === 0}
        range={limits.sheetParts}
        step={0.25}
        onCommit={(high) => edit({ ratio: { ...ratio, high } })}
      />
    </div>
  </fieldset>
)

const MinuteFields = ({ draft, edit }: PartProps) => (
  <>
    <div className="pairs">
      <NumberField
        name="Longest on the hair"
        unit="min"
        value={draft.longestMin ?? 0}
        isUnset={draft.longestMin === null}
        range={limits.heldMin}
        onClear={() => edit({ longestMin: null })}
        onCommit={(longestMin) => edit({ longestMin })}
      />
      <NumberField
        name="A mix lasts"
        unit="min"
        value={draft.potLifeMin ?? 0}
        isUnset={draft.potLifeMin === null}
        range={limits.heldMin}
        onClear={() => edit({ potLifeMin: null })}
        onCommit={(potLifeMin) => edit({ potLifeMin })}
      />
      <NumberField
        name="First look at"
        unit="min"
        value={draft.firstLookMin ?? 0}
        isUnset={draft.firstLookMin === null || draft.firstLookMin === undefined}
        range={limits.heldMin}
        onClear={() => edit({ firstLookMin: null })}
        onCommit={(firstLookMin) => edit({ firstLookMin })}
      />
    </div>
    <HeatFields draft={draft} edit={edit} />
    <div className="with-fields">
      <GapField
        legend="May it touch the scalp?"
        value={draft.onScalp}
        onChange={(onScalp) => edit({ onScalp })}
      />
      <GapField
        legend="Does it ask for an alert test?"
        value={draft.alertTest}
        onChange={(alertTest) => edit({ alertTest })}
      />
    </div>
  </>
)

const HeatFields = ({ draft: { heatMin }, edit }: PartProps) => (
  <div className="with-fields">
    <GapField
      legend="May heat be used?"
      value={heatMin === null ? null : heatMin > 0}
      onChange={(allowed) => edit({ heatMin: allowed === null ? null : allowed ? heatHabits.mostMin : 0 })}
    />
    {heatMin !== null && heatMin > 0 && (
      <NumberField
        name="Heat, at most"
        unit="min"
        value={heatMin}
        range={limits.sheetHeatMin}
        onCommit={(minutes) => edit({ heatMin: minutes })}
      />
    )}
  </div>
)

const PriceFields = ({ draft: { price }, edit }: PartProps) => (
  <div className="with-fields">
    <NumberField
      name="It costs"
      unit=""
      value={price?.amount ?? 0}
      isUnset={price === null}
      range={limits.price}
      onClear={() => edit({ price: null })}
      onCommit={(amount) => edit({ price: { amount, forG: price?.forG ?? 500 } })}
    />
    <NumberField
      name="for"
      unit="g"
      value={price?.forG ?? 500}
      range={limits.priceForG}
      onCommit={(forG) => edit({ price: { amount: price?.amount ?? 0, forG } })}
    />
  </div>
)
