import { useState } from "react"
import { houseProducts } from "../../../presets/houseProducts"
import type { AlertTest } from "../../plan/consultation"
import { inWords, momentMs } from "../../service/clock"
import { nowHere } from "../../service/visitOfPlan"
import { Choices } from "../Choices"
import { TextField } from "../TextField"
import type { PartProps } from "./Consultation"
import { yesNoOptions } from "./consultationWords"
import { SelectField } from "./SelectField"

const products = houseProducts.map(({ name }) => ({ value: name, label: name }))
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
  const [product, setProduct] = useState<string | null>(null)
  return (
    <div className="with-fields">
      <SelectField name="Product to test" options={products} value={product} onChange={setProduct} />
      <button
        type="button"
        className="button"
        disabled={product === null}
        onClick={() =>
          product !== null &&
          onPutOn({
            product,
            place: "behind the ear",
            appliedAt: nowHere().moment,
            result: null,
            validUntil: null,
            changedSince: null,
          })
        }
      >
        Put on now
      </button>
    </div>
  )
}

type TestProps = { test: AlertTest; onChange: (test: AlertTest) => void; onRemove: () => void }

function OneTest({ test, onChange, onRemove }: TestProps) {
  const { result } = test
  const put = momentMs(test.appliedAt)
  const read = (outcome: "clear" | "reacted") =>
    onChange({ ...test, result: { outcome, readBy: result?.readBy ?? "", readAt: nowHere().moment } })
  return (
    <fieldset className="alert-test">
      <legend>
        {test.product}, {test.place}
      </legend>
      <p className="aside">
        Put on {put === null ? "at a time nobody wrote down" : inWords(nowHere().zone, put)}
        {result &&
          momentMs(result.readAt) !== null &&
          `; read ${inWords(nowHere().zone, momentMs(result.readAt) ?? 0)}`}
      </p>
      <div className="with-fields">
        <Choices legend="Read as" options={outcomes} value={result?.outcome ?? null} onChange={read} />
        {result && (
          <TextField
            name="Read by"
            value={result.readBy}
            most={40}
            onCommit={(readBy) => onChange({ ...test, result: { ...result, readBy } })}
          />
        )}
        <Choices
          legend="Anything changed since?"
          options={yesNoOptions}
          value={test.changedSince}
          onChange={(changedSince) => onChange({ ...test, changedSince })}
        />
        <button type="button" className="button quiet" onClick={onRemove}>
          Take out
        </button>
      </div>
    </fieldset>
  )
}
