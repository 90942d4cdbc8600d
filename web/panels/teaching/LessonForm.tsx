import "./lesson.css"
import { type FormEvent, useState } from "react"
import type { Plan } from "../../core/document/schema"
import { setLesson } from "../../core/edits/plan/setLesson"
import { letters } from "../../core/fields/limits"
import { checkLesson } from "../../core/file/lessonDoor"
import type { OwnLesson } from "../../core/technique/lessonSchema"
import { commit } from "../../session/commit"
import { problemWords, useWords } from "../../session/words"
import type { Words } from "../../words/en/words"
import { type LessonWords, lessonWords } from "../../words/every/lessonWords"
import { FaultRows } from "./FaultRows"

type Props = { plan: Plan; words: Words; onLeave: () => void }

const lists = ["tools", "steps", "checks"] as const

/** All that a class reads, to be said otherwise. What is left as it stands goes on following the drawing. */
export function LessonForm({ plan, words, onLeave }: Props) {
  const { common, sheets } = useWords()
  const w = sheets.lesson
  const [refused, setRefused] = useState<readonly string[]>([])
  const said = lessonWords(plan, words)
  const keep = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault()
    const bare = lessonWords({ ...plan, lesson: { laid: [], ...plan.lesson, own: undefined } }, words)
    const checked = checkLesson(changed(typed(new FormData(event.currentTarget)), bare))
    if (!checked.ok) setRefused(checked.problems.map(problemWords))
    else if (commit({ chapter: "sheets", code: "lesson" }, setLesson(checked.own))) onLeave()
  }
  return (
    <form className="editor lesson" onSubmit={keep}>
      <label className="field">
        <span className="name">{w.name}</span>
        <input name="title" defaultValue={said.title} maxLength={letters.name} autoComplete="off" />
      </label>
      <label className="field">
        <span className="name">{w.aim}</span>
        <textarea name="aim" rows={4} defaultValue={said.aim} maxLength={letters.note} />
      </label>
      {lists.map((name) => (
        <label className="field" key={name}>
          <span className="name">{w[name]}</span>
          <textarea name={name} rows={name === "steps" ? 8 : 5} defaultValue={said[name].join("\n")} />
        </label>
      ))}
      <FaultRows faults={said.faults} />
      {refused.map((each) => (
        <p className="fault" role="alert" key={each}>
          {each}
        </p>
      ))}
      <p className="aside">{w.follows}</p>
      <div className="actions">
        <button type="submit" className="button strong">
          {w.keep}
        </button>
        <button type="button" className="button" onClick={onLeave}>
          {common.actions.cancel}
        </button>
      </div>
    </form>
  )
}

function typed(form: FormData): LessonWords {
  const texts = (name: string) =>
    form.getAll(name).map((text) => String(text).replaceAll("\r\n", "\n").trim())
  const one = (name: string) => texts(name).join("\n")
  const lines = (name: string) =>
    one(name)
      .split("\n")
      .map((line) => line.trim())
      .filter(Boolean)
  const [causes, cures] = [texts("cause"), texts("cure")]
  const faults = texts("fault").map((fault, i) => ({ fault, cause: causes[i], cure: cures[i] }))
  return {
    title: one("title"),
    aim: one("aim"),
    tools: lines("tools"),
    steps: lines("steps"),
    faults: faults.filter(({ fault, cause, cure }) => fault || cause || cure),
    checks: lines("checks"),
  }
}

/** Only what is said otherwise than it would be without it. */
const changed = (now: LessonWords, bare: LessonWords): OwnLesson =>
  Object.fromEntries(
    Object.entries(now).filter(
      ([name, value]) => JSON.stringify(value) !== JSON.stringify(bare[name as keyof LessonWords]),
    ),
  )
