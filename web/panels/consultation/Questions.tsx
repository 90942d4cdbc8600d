import { type Question, questionNames, questions } from "../../plan/consultation"
import { limits } from "../../plan/limits"
import { Choices } from "../Choices"
import { NumberField } from "../NumberField"
import type { PartProps } from "./Consultation"
import { scalpOptions, yesNoOptions } from "./consultationWords"

const usualAge = 30

/** Age, scalp and the questions on health, each answered or left open. */
export function Questions({ known, write }: PartProps) {
  const { answers, ageYears, scalp } = known
  const open = questionNames.filter(
    (name) => name !== "blackHennaReaction" || answers.blackHennaTattoo === "yes",
  )
  return (
    <>
      <h3>Health</h3>
      <div className="with-fields">
        <NumberField
          name={ageYears === null ? "Age, not known" : "Age"}
          unit="years"
          value={ageYears ?? usualAge}
          range={limits.ageYears}
          isUnset={ageYears === null}
          onCommit={(years) => write("Write down the age", { ageYears: years })}
        />
        <Choices
          legend="Scalp"
          options={scalpOptions}
          value={scalp}
          onChange={(value) => write("Write down the scalp", { scalp: value })}
        />
      </div>
      <ul className="questions">
        {open.map((name) => (
          <li key={name}>
            <Choices
              legend={questions[name]}
              options={yesNoOptions}
              value={answers[name] ?? null}
              onChange={(answer) =>
                write("Answer a question", { answers: { ...answers, [name satisfies Question]: answer } })
              }
            />
          </li>
        ))}
      </ul>
    </>
  )
}
