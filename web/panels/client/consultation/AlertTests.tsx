import { useState } from "react"
import { whyNotCounting } from "../../../core/cautions/rules/alertTest"
import { isTestAsked } from "../../../core/cautions/rules/clientRules"
import { visitOf } from "../../../core/cautions/visitOfPlan"
import type { AlertTest } from "../../../core/document/consultation"
import { letters } from "../../../core/document/limits"
import { productSheets } from "../../../core/document/salon"
import { nowHere } from "../../../session/nowHere"
import { usePlan } from "../../../session/usePlan"
import { Choices } from "../../fields/Choices"
import { DateField } from "../../fields/DateField"
import { SelectField } from "../../fields/SelectField"
import { TextField } from "../../fields/TextField"
import { yesNoOptions } from "./consultationWords"
import { MomentField } from "./MomentField"
import type { PartProps } from "./partProps"

const outcomes = [
  { value: "unread", label: "Not read yet" },
  { value: "clear", label: "Clear" },
  { value: "reacted", label: "Reacted" },
] as const

/** Alert tests on skin: when put on, when read and by whom. Hours alone clear nobody. */
export function AlertTests({ known, write }: PartProps) {
  const { alertTests } = known
  const change = (index: number, test: AlertTest) =>
    write("Write down an alert test", { alertTests: alertTests.with(index, test) })
  const reader = alertTests.find(({ result }) => result?.readBy)?.result?.readBy ?? ""
  return (
    <section aria-labelledby="alert-tests-title">
      <h3 id="alert-tests-title">Alert tests</h3>
      {alertTests.map((test, index) => (
        <OneTest
          // biome-ignore lint/suspicious/noArrayIndexKey: tests have no name of their own and keep their places
          key={index}
          test={test}
          reader={reader}
          onChange={(next) => change(index, next)}
          onRemove={() => write("Take an alert test out", { alertTests: alertTests.toSpliced(index, 1) })}
        />
      ))}
      <PutOn
        tested={alertTests.map(({ product }) => product)}
        onPutOn={(test) => write("Put on an alert test", { alertTests: [...alertTests, test] })}
      />
    </section>
  )
}

type PutOnProps = { tested: readonly string[]; onPutOn: (test: AlertTest) => void }

/** One touch for each product of the plan that asks for a test; any other from the list. */
function PutOn({ tested, onPutOn }: PutOnProps) {
  const plan = usePlan((open) => open)
  const products = productSheets(plan).map(({ name }) => ({ value: name, label: name }))
  const asked = visitOf(plan, nowHere())
    .mixes.filter(isTestAsked)
    .map((mix) => mix.product)
  const missing = [...new Set(asked)].filter((product) => !tested.includes(product))
  const [product, setProduct] = useState<string | null>(null)
  return (
    <div className="with-fields">
      {missing.map((wanted) => (
        <button type="button" className="button" key={wanted} onClick={() => onPutOn(putOnNow(wanted))}>
          Put on now: {wanted}
        </button>
      ))}
      <SelectField
        name={missing.length > 0 ? "or another product" : "Product to test"}
        options={products}
        empty="Choose one"
        value={product}
        onChange={setProduct}
      />
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

type TestProps = {
  test: AlertTest
  reader: string
  onChange: (test: AlertTest) => void
  onRemove: () => void
}

function OneTest({ test, reader, onChange, onRemove }: TestProps) {
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
          value={result?.outcome ?? "unread"}
          onChange={(outcome) =>
            onChange({
              ...test,
              result:
                outcome === "unread" ? null : { readBy: reader, readAt: now.moment, ...result, outcome },
            })
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
          onClear={() => onChange({ ...test, changedSince: null })}
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
