import { useState } from "react"
import { productsToTest } from "../../../core/cautions/productsToTest"
import { type TestMoment, whyNotCounting } from "../../../core/cautions/rules/alertTest"
import { testMomentOf } from "../../../core/cautions/rules/testRules"
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
import { labelledOptions } from "../../fields/options"
import { SelectField } from "../../fields/SelectField"
import { TextField } from "../../fields/TextField"
import { yesNoOptions } from "./consultationOptions"
import { MomentField } from "./MomentField"
import type { AskProps, PartProps } from "./partProps"
import { StopsHere } from "./StopsHere"

/** Patch tests on skin: when applied, when read and by whom. Hours alone clear nobody. */
export function PatchTests({ known, write, days, told }: AskProps & PartProps) {
  const { alertTests } = known
  const { tests: said } = useWords().client
  const change = (index: number, test: AlertTest) =>
    write("record-test", { alertTests: alertTests.with(index, test) })
  const reader = alertTests.find(({ result }) => result?.readBy)?.result?.readBy ?? known.askedBy
  const at = testMomentOf(known, { now: nowHere(), days })
  return (
    <section aria-labelledby="alert-tests-title">
      <h3 id="alert-tests-title">{said.title}</h3>
      {alertTests.map((test, index) => (
        <OneTest
          // biome-ignore lint/suspicious/noArrayIndexKey: tests have no name of their own and keep their places
          key={index}
          test={test}
          reader={reader}
          at={at}
          today={days.today}
          onChange={(next) => change(index, next)}
          onRemove={() => write("remove-test", { alertTests: alertTests.toSpliced(index, 1) })}
        />
      ))}
      <PutOn
        visit={days.visit}
        onPutOn={(test) => write("apply-test", { alertTests: [...alertTests, test] })}
      />
      <StopsHere told={told} fields={["patch-tests"]} />
    </section>
  )
}

type PutOnProps = { visit: string; onPutOn: (test: AlertTest) => void }

/** One touch for each product of the plan and of the stock that asks for a test; any other from the list. */
function PutOn({ visit, onPutOn }: PutOnProps) {
  const { tests: said } = useWords().client
  const plan = usePlan((open) => open)
  const products = productSheets(plan).map(({ name }) => ({ value: name, label: name }))
  const missing = productsToTest(plan)
  const [product, setProduct] = useState<string | null>(null)
  return (
    <div className="with-fields">
      {missing.map((wanted) => (
        <button
          type="button"
          className="button"
          key={wanted}
          onClick={() => onPutOn(putOnNow(wanted, visit))}
        >
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
        onClick={() => product !== null && onPutOn(putOnNow(product, visit))}
      >
        {said.apply}
      </button>
    </div>
  )
}

const putOnNow = (product: string, visit: string): AlertTest => ({
  product,
  place: "",
  appliedAt: nowHere().moment,
  result: null,
  validUntil: null,
  visit,
  changedSince: null,
})

type TestProps = {
  test: AlertTest
  reader: string
  at: TestMoment
  today: string
  onChange: (test: AlertTest) => void
  onRemove: () => void
}

function OneTest({ test, reader, at, today, onChange, onRemove }: TestProps) {
  const words = useWords()
  const { tests: said } = words.client
  const { result, product, place, appliedAt, validUntil, changedSince } = test
  const { now } = at
  return (
    <fieldset className="alert-test">
      <legend>{product}</legend>
      <p className="aside">{standing(test, at, words)}</p>
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
          options={labelledOptions(said.results)}
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
          value={changedSince?.on === today ? changedSince.said : null}
          onChange={(said) => onChange({ ...test, changedSince: { said, on: today } })}
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
function standing(test: AlertTest, at: TestMoment, { cautions, client }: Words): string {
  const fault = whyNotCounting(test, at)
  if (fault) return say(cautions.testFaults, fault)
  return client.tests.clear(dayIn(at.now.zone, momentMs(test.result?.readAt ?? at.now.moment) ?? 0))
}
