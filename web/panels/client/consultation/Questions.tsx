import { isAsked, isCurrent, questionRows } from "../../../core/cautions/asking/questions"
import { openTogether } from "../../../core/cautions/clearance"
import { type Answer, type Question, questionNames } from "../../../core/document/consultation"
import { answerQuestions, clearAnswer, confirmAnswers } from "../../../core/edits/plan/answerQuestions"
import { commit } from "../../../session/commit"
import { nowHere } from "../../../session/nowHere"
import { useWords } from "../../../session/words"
import { Choices } from "../../fields/Choices"
import { HennaDate, OtherAllergy } from "./AnswerDetails"
import { yesNoOptions } from "./consultationOptions"
import type { AskProps } from "./partProps"
import { StopsHere } from "./StopsHere"

/** The questions on health: first those asked one by one, then those that may be answered together. */
export function Questions({ known, days, told }: AskProps) {
  const { ask: said } = useWords().client
  const asked = questionNames.filter((name) => isAsked(name, known))
  const together = openTogether(told.notAsked)
  const inherited = together.filter((name) => known.answers[name] !== undefined)
  const unanswered = together.filter((name) => known.answers[name] === undefined)
  const list = (isAlone: boolean) =>
    asked
      .filter((name) => questionRows[name].alone === isAlone)
      .map((name) => <OneQuestion key={name} name={name} known={known} days={days} told={told} />)
  return (
    <>
      <h3>{said.alone}</h3>
      <ul className="questions">{list(true)}</ul>
      <h3>{said.together}</h3>
      <ul className="questions">{list(false)}</ul>
      <div className="actions">
        {inherited.length > 0 && (
          <button
            type="button"
            className="button"
            onClick={() =>
              commit({ chapter: "client", code: "confirm-answers" }, confirmAnswers(inherited, nowHere()))
            }
          >
            {said.confirm(inherited.length)}
          </button>
        )}
        {unanswered.length > 0 && (
          <button
            type="button"
            className="button"
            onClick={() =>
              commit({ chapter: "client", code: "answer-rest" }, answerQuestions(unanswered, "no", nowHere()))
            }
          >
            {said.rest(unanswered.length)}
          </button>
        )}
      </div>
    </>
  )
}

/** One question; an answer of another day or visit is dotted until it is confirmed by the same touch. */
function OneQuestion({ name, known, days, told }: AskProps & { name: Question }) {
  const words = useWords()
  const answer = known.answers[name]
  const isOld = answer !== undefined && !isCurrent(name, answer, days)
  const give = (said: Answer["said"]) =>
    commit({ chapter: "client", code: "answer" }, answerQuestions([name], said, nowHere()))
  return (
    <li id={`field-question-${name}`} className={isOld ? "inherited" : undefined}>
      <Choices
        legend={words.client.questions[name]}
        options={yesNoOptions(words)}
        value={answer?.said ?? null}
        onChange={give}
        onAgain={(said) => isOld && give(said)}
        onClear={() => commit({ chapter: "client", code: "clear-answer" }, clearAnswer(name, nowHere()))}
      />
      {isOld && <p className="aside">{words.client.ask.inherited(answer.on)}</p>}
      {name === "otherAllergy" && answer?.said === "yes" && <OtherAllergy known={known} />}
      {name === "blackHennaTattoo" && answer?.said === "yes" && <HennaDate known={known} />}
      <StopsHere
        told={told}
        fields={name === "otherAllergy" ? ["question-otherAllergy", "allergy"] : [`question-${name}`]}
      />
    </li>
  )
}
