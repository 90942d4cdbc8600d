import { useState } from "react"
import { type Now, whyNotCounting } from "../../../core/cautions/rules/alertTest"
import { isTestAsked } from "../../../core/cautions/rules/clientRules"
import { visitOf } from "../../../core/cautions/visitOfPlan"
import type { AlertTest } from "../../../core/document/consultation"
import { productSheets } from "../../../core/document/salon"
import { letters } from "../../../core/fields/limits"
import { dayIn, momentMs } from "../../../core/text/zonedTime"
import { nowHere } from "../../../session/nowHere"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import type { Words } from "../../../words/en/words"
import { say } from "../../../words/say"
import { Choices } from "../../fields/Choices"
import { DateField } from "../../fields/DateField"
import { SelectField } from "../../fields/SelectField"
import { TextField } from "../../fields/TextField"
import { optionsOf, yesNoOptions } from "./consultationOptions"
import { MomentField } from "./MomentField"
import type { PartProps } from "./partProps"

/** Alert tests on skin: when put on, when read and by whom. Hours alone clear nobody. */
export function AlertTests({ known, write }: PartProps) {
  const { alertTests } = known
  const { tests: said } = useWords().client
  const change = (index: number, test: AlertTest) =>
    write("record-test", { alertTests: alertTests.with(index, test) })
  const reader = alertTests.find(({ result }) => result?.readBy)?.result?.readBy ?? ""
  return (
    <section aria-labelledby="alert-tests-title">
      <h3 id="alert-tests-title">{said.title}</h3>
      {alertTests.map((test, index) => (
        <OneTest
          // biome-ignore lint/suspicious/noArrayIndexKey: tests have no name of their own and keep their places
          key={index}
          test={test}
          reader={reader}
          onChange={(next) => change(index, next)}
          onRemove={() => write("remove-test", { alertTests: alertTests.toSpliced(index, 1) })}
        />
      ))}
      <PutOn
        tested={alertTests.map(({ product }) => product)}
        onPutOn={(test) => write("apply-test", { alertTests: [...alertTests, test] })}
      />
    </section>
  )
}

type PutOnProps = { tested: readonly string[]; onPutOn: (test: AlertTest) => void }

/** One touch for each product of the plan that asks for a test; any other from the list. */
function PutOn({ tested, onPutOn }: PutOnProps) {
  const { tests: said } = useWords().client
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
          {said.applyNow(wanted)}
        </button>
      ))}
      <SelectField
        name={missing.length > 0 ? said.orOther : said.product}
        options={products}
        empty={said.choose}
        value={product}
        onChange={setProduct}
      />
      <button
        type="button"
        className="button"
        disabled={product === null}
        onClick={() => product !== null && onPutOn(putOnNow(product))}
      >
        {said.apply}
      </button>
    </div>
  )
}

const putOnNow = (product: string): AlertTest => ({
  product,
  place: "",
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
  const words = useWords()
  const { tests: said } = words.client
  const { result, product, place, appliedAt, validUntil, changedSince } = test
  const now = nowHere()
  return (
    <fieldset className="alert-test">
      <legend>{product}</legend>
      <p className="aside">{standing(test, now, words)}</p>
      <div className="with-fields">
        <TextField
          name={said.place}
          hint={said.placeHint}
          value={place}
          most={letters.name}
          onCommit={(next) => onChange({ ...test, place: next })}
        />
        <MomentField
          name={said.applied}
          value={appliedAt}
          zone={now.zone}
          onCommit={(next) => onChange({ ...test, appliedAt: next })}
        />
        <Choices
          legend={said.result}
          options={optionsOf(said.results)}
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
              name={said.readBy}
              value={result.readBy}
              most={letters.name}
              onCommit={(readBy) => onChange({ ...test, result: { ...result, readBy } })}
            />
            <MomentField
              name={said.readOn}
              value={result.readAt}
              zone={now.zone}
              onCommit={(readAt) => onChange({ ...test, result: { ...result, readAt } })}
            />
          </>
        )}
        <Choices
          legend={said.changed}
          options={yesNoOptions(words)}
          value={changedSince}
          onChange={(next) => onChange({ ...test, changedSince: next })}
          onClear={() => onChange({ ...test, changedSince: null })}
        />
        <DateField
          name={said.validUntil}
          value={validUntil ?? ""}
          onCommit={(next) => onChange({ ...test, validUntil: next })}
        />
        <button type="button" className="button quiet" onClick={onRemove}>
          {said.remove}
        </button>
      </div>
    </fieldset>
  )
}

/** Whether a test counts today, or why not. */
function standing(test: AlertTest, { moment, zone }: Now, { cautions, client }: Words): string {
  const fault = whyNotCounting(test, { moment, zone })
  if (fault) return say(cautions.testFaults, fault)
  return client.tests.clear(dayIn(zone, momentMs(test.result?.readAt ?? moment) ?? 0))
}
