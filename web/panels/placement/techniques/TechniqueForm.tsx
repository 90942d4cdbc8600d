import { type FormEvent, useState } from "react"
import type { Technique } from "../../../../presets/techniques/technique"
import { letters } from "../../../core/fields/limits"
import { checkTechnique } from "../../../core/file/techniqueFile"
import { keepOwn } from "../../../session/ownTechniques"
import { techniqueStore } from "../../../session/techniqueShelf"
import { notKeptWords, problemWords, useWords } from "../../../session/words"

type Props = {
  technique: Technique
  /** Closes the form. */
  onLeave: () => void
}

/** The words of a technique of one's own: what it is called, what it is for, and how it is done. */
export function TechniqueForm({ technique, onLeave }: Props) {
  const { common, techniques } = useWords()
  const w = techniques.own
  const [faults, setFaults] = useState<readonly string[]>([])
  const keep = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault()
    const checked = checkTechnique({ ...technique, ...wordsOf(new FormData(event.currentTarget)) })
    if (!checked.ok) setFaults(checked.problems.map(problemWords))
    else if (await keepOwn(checked.technique)) onLeave()
    // What was typed stays on the screen.
    else setFaults([techniqueStore.getState().fault].flatMap((fault) => fault ?? []).map(notKeptWords))
  }
  return (
    <form className="editor" onSubmit={(event) => void keep(event)}>
      <label className="field">
        <span className="name">{w.name}</span>
        <input
          name="name"
          pattern=".*\S.*"
          title={w.nameHint}
          required
          defaultValue={technique.name}
          maxLength={letters.name}
          autoComplete="off"
        />
      </label>
      <label className="field">
        <span className="name">{w.aim}</span>
        <input name="aim" defaultValue={technique.aim} maxLength={letters.aim} autoComplete="off" />
      </label>
      <label className="field">
        <span className="name">{w.steps}</span>
        <textarea name="steps" rows={8} defaultValue={technique.steps.join("\n")} />
      </label>
      <label className="field">
        <span className="name">{w.notes}</span>
        <textarea name="notes" rows={4} defaultValue={technique.notes} maxLength={letters.note} />
      </label>
      {faults.map((fault) => (
        <p className="fault" role="alert" key={fault}>
          {fault}
        </p>
      ))}
      <p className="aside">{w.private}</p>
      <div className="actions">
        <button type="submit" className="button strong">
          {w.saveThis}
        </button>
        <button type="button" className="button" onClick={onLeave}>
          {common.actions.cancel}
        </button>
      </div>
    </form>
  )
}

function wordsOf(form: FormData): Pick<Technique, "name" | "aim" | "steps" | "notes"> {
  const text = (field: string) =>
    String(form.get(field) ?? "")
      .replaceAll("\r\n", "\n")
      .trim()
  const steps = text("steps")
    .split("\n")
    .map((step) => step.trim())
  return { name: text("name"), aim: text("aim"), notes: text("notes"), steps: steps.filter(Boolean) }
}
