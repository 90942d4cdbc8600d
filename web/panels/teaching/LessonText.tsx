import { useState } from "react"
import type { Plan } from "../../core/document/schema"
import { setLesson } from "../../core/edits/plan/setLesson"
import { commit } from "../../session/commit"
import { useWords } from "../../session/words"
import type { Words } from "../../words/en/words"
import { Modal } from "../fields/Modal"
import { LessonForm } from "./LessonForm"

type Props = {
  plan: Plan
  /** The words of the sheet, whose language need not be that of the screen. */
  words: Words
}

/** What the handout says beside its drawings: the educator may say it otherwise. */
export function LessonText({ plan, words }: Props) {
  const w = useWords().sheets.lesson
  const [isOpen, setIsOpen] = useState(false)
  const own = plan.lesson?.own
  return (
    <div className="actions">
      <button type="button" className="button" onClick={() => setIsOpen(true)}>
        {w.edit}
      </button>
      {own && (
        <button
          type="button"
          className="button quiet"
          onClick={() => commit({ chapter: "sheets", code: "lesson-as-drawn" }, setLesson({}))}
        >
          {w.asDrawn}
        </button>
      )}
      {isOpen && (
        <Modal title={w.title} wide writing onClose={() => setIsOpen(false)}>
          <LessonForm plan={plan} words={words} onLeave={() => setIsOpen(false)} />
        </Modal>
      )}
    </div>
  )
}
