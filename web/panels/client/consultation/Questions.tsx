import { type Question, questionNames, questions } from "../../../core/document/consultation"
import { limits } from "../../../core/document/limits"
import { Choices } from "../../fields/Choices"
import { NumberField } from "../../fields/NumberField"
import { scalpOptions, yesNoOptions } from "./consultationWords"
import type { PartProps } from "./partProps"

const usualAge = 30

/** Age, scalp and the questions on health, each answered or left open. */
export function Questions({ known, write }: PartProps) {
  const { answers, ageYears, scalp } = known
  const asked = questionNames.filter(
    (name) => name !== "blackHennaReaction" || answers.blackHennaTattoo === "yes",
  )
  const unanswered = asked.filter((name) => answers[name] === undefined)
  const answer = (names: readonly Question[], said: "yes" | "no", label = "Answer a question") =>
    write(label, { answers: { ...answers, ...Object.fromEntries(names.map((name) => [name, said])) } })
  const leaveOpen = (name: Question) => {
    const { [name]: _, ...others } = answers
    write("Leave a question open", { answers: others })
  }
  return (
    <section aria-labelledby="health-title">
      <h3 id="health-title">Health</h3>
      <div className="with-fields">
        <NumberField
          name={ageYears === null ? "Age, not known" : "Age"}
          unit="years"
          value={ageYears ?? usualAge}
          range={limits.ageYears}
          isUnset={ageYears === null}
          onClear={() => write("Leave the age open", { ageYears: null })}
          onCommit={(years) => write("Write down the age", { ageYears: years })}
        />
        <Choices
          legend="Scalp"
          options={scalpOptions}
          value={scalp}
          onChange={(value) => write("Write down the scalp", { scalp: value })}
          onClear={() => write("Leave the scalp open", { scalp: null })}
        />
      </div>
      <ul className="questions">
        {asked.map((name) => (
          <li key={name}>
            <Choices
              legend={questions[name]}
              options={yesNoOptions}
              value={answers[name] ?? null}
              onChange={(said) => answer([name], said)}
              onClear={() => leaveOpen(name)}
            />
          </li>
        ))}
      </ul>
      {unanswered.length > 0 && (
        <div className="actions">
          <button
            type="button"
            className="button"
            onClick={() => answer(unanswered, "no", "Answer the rest with no")}
          >
            All asked: no to the {unanswered.length === 1 ? "last one" : `other ${unanswered.length}`}
          </button>
        </div>
      )}
    </section>
  )
}
