import { isAsked } from "../../../core/cautions/notKnown"
import { type Question, questionNames } from "../../../core/document/consultation"
import { limits } from "../../../core/fields/limits"
import { useWords } from "../../../session/words"
import { Choices } from "../../fields/Choices"
import { NumberField } from "../../fields/NumberField"
import { optionsOf, yesNoOptions } from "./consultationOptions"
import type { PartProps } from "./partProps"

const usualAge = 30

/** Age, scalp and the questions on health, each answered or left open. */
export function Questions({ known, write }: PartProps) {
  const { answers, ageYears, scalp } = known
  const words = useWords()
  const { ask: said, questions } = words.client
  const asked = questionNames.filter((name) => isAsked(name, known))
  const unanswered = asked.filter((name) => answers[name] === undefined)
  const answer = (
    names: readonly Question[],
    said: "yes" | "no",
    label: "answer" | "answer-rest" = "answer",
  ) => write(label, { answers: { ...answers, ...Object.fromEntries(names.map((name) => [name, said])) } })
  const leaveOpen = (name: Question) => {
    const { [name]: _, ...others } = answers
    write("clear-answer", { answers: others })
  }
  return (
    <section aria-labelledby="health-title">
      <h3 id="health-title">{said.title}</h3>
      <div className="with-fields">
        <NumberField
          name={ageYears === null ? said.ageNotKnown : said.age}
          unit={said.years}
          value={ageYears ?? usualAge}
          range={limits.ageYears}
          isUnset={ageYears === null}
          onClear={() => write("clear-age", { ageYears: null })}
          onCommit={(years) => write("set-age", { ageYears: years })}
        />
        <Choices
          legend={said.scalp}
          options={optionsOf(said.scalps)}
          value={scalp}
          onChange={(value) => write("set-scalp", { scalp: value })}
          onClear={() => write("clear-scalp", { scalp: null })}
        />
      </div>
      <ul className="questions">
        {asked.map((name) => (
          <li key={name}>
            <Choices
              legend={questions[name]}
              options={yesNoOptions(words)}
              value={answers[name] ?? null}
              onChange={(said) => answer([name], said)}
              onClear={() => leaveOpen(name)}
            />
          </li>
        ))}
      </ul>
      {unanswered.length > 0 && (
        <div className="actions">
          <button type="button" className="button" onClick={() => answer(unanswered, "no", "answer-rest")}>
            {said.rest(unanswered.length)}
          </button>
        </div>
      )}
    </section>
  )
}
