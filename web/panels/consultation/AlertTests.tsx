import { useState } from "react"
import type { AlertTest } from "../../plan/consultation"
import { letters } from "../../plan/limits"
import { productSheets } from "../../plan/salon"
import { usePlan } from "../../plan/usePlan"
import { whyNotCounting } from "../../service/alertTest"
import { nowHere } from "../../service/visitOfPlan"
import { Choices } from "../Choices"
import { DateField } from "../DateField"
import { SelectField } from "../SelectField"
import { TextField } from "../TextField"
import type { PartProps } from "./Consultation"
import { yesNoOptions } from "./consultationWords"
import { MomentField } from "./MomentField"

const outcomes = [
  { value: "clear", label: "Clear" },
  { value: "reacted", label: "Reacted" },
] as const

/** Alert tests on skin: when put on, when read and by whom. Hours alone clear nobody. */
export function AlertTests({ known, write }: PartProps) {
  const { alertTests } = known
  const change = (index: number, test: AlertTest) =>
    write("Write down an alert test", { alertTests: alertTests.with(index, test) })
  return (
    <>
      <h3>Alert tests</h3>
      {alertTests.map((test, index) => (
        <OneTest
          // biome-ignore lint/suspicious/noArrayIndexKey: tests have no name of their own and keep their places
          key={index}
          test={test}
          onChange={(next) => change(index, next)}
          onRemove={() => write("Take an alert test out", { alertTests: alertTests.toSpliced(index, 1) })}
        />
      ))}
      <PutOn onPutOn={(test) => write("Put on an alert test", { alertTests: [...alertTests, test] })} />
    </>
  )
}

function PutOn({ onPutOn }: { onPutOn: (test: AlertTest) => void }) {
  const salon = usePlan((plan) => plan.salon)
  const products = productSheets({ salon }).map(({ name }) => ({ value: name, label: name }))
  const [product, setProduct] = useState<string | null>(null)
  return (
    <div className="with-fields">
      <SelectField name="Product to test" options={products} value={product} onChange={setProduct} />
      <button
        type="button"
        className="button"
        disabled={product === null}
        onClick={() => product !== null && onPutOn(putOnNow(product))}
      >
        Put on now
      </button>
    </div>
  )
}

const putOnNow = (product: string): AlertTest => ({
  product,
  place: "behind the ear",
  appliedAt: nowHere().moment,
  result: null,
  validUntil: null,
  changedSince: null,
})

type TestProps = { test: AlertTest; onChange: (test: AlertTest) => void; onRemove: () => void }

function OneTest({ test, onChange, onRemove }: TestProps) {
  const { result, product, place, appliedAt, validUntil, changedSince } = test
  const now = nowHere()
  return (
    <fieldset className="alert-test">
      <legend>{product}</legend>
      <p className="aside">{whyNotCounting(test, now) ?? "Read as clear; it counts today."}</p>
      <div className="with-fields">
        <TextField
          name="Where on the skin"
          value={place}
          most={letters.name}
          onCommit={(next) => onChange({ ...test, place: next })}
        />
        <MomentField
          name="Put on"
          value={appliedAt}
          zone={now.zone}
          onCommit={(next) => onChange({ ...test, appliedAt: next })}
        />
        <Choices
          legend="Read as"
          options={outcomes}
          value={result?.outcome ?? null}
          onChange={(outcome) =>
            onChange({ ...test, result: { readBy: "", readAt: now.moment, ...result, outcome } })
          }
        />
        {result && (
          <>
            <TextField
              name="Read by"
              value={result.readBy}
              most={letters.name}
              onCommit={(readBy) => onChange({ ...test, result: { ...result, readBy } })}
            />
            <MomentField
              name="Read at"
              value={result.readAt}
              zone={now.zone}
              onCommit={(readAt) => onChange({ ...test, result: { ...result, readAt } })}
            />
          </>
        )}
        <Choices
          legend="Anything changed since?"
          options={yesNoOptions}
          value={changedSince}
          onChange={(next) => onChange({ ...test, changedSince: next })}
        />
        <DateField
          name="Counts until"
          value={validUntil ?? ""}
          onCommit={(next) => onChange({ ...test, validUntil: next })}
        />
        <button type="button" className="button quiet" onClick={onRemove}>
          Take out
        </button>
      </div>
    </fieldset>
  )
}
