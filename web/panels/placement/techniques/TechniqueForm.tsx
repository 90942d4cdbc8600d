import { type FormEvent, useState } from "react"
import type { Technique } from "../../../../presets/techniques/technique"
import { letters } from "../../../core/document/limits"
import { checkTechnique } from "../../../core/file/techniqueFile"
import { keepOwn } from "../../../session/ownTechniques"
import { techniqueStore } from "../../../session/techniqueShelf"

type Props = {
  technique: Technique
  /** Closes the form. */
  onLeave: () => void
}

/** The words of a technique of one's own: what it is called, what it is for, and how it is done. */
export function TechniqueForm({ technique, onLeave }: Props) {
  const [faults, setFaults] = useState<readonly string[]>([])
  const keep = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault()
    const checked = checkTechnique({ ...technique, ...wordsOf(new FormData(event.currentTarget)) })
    if (!checked.ok) setFaults(checked.problems.map(({ expected }) => expected))
    else if (await keepOwn(checked.technique)) onLeave()
    // What was typed stays on the screen.
    else setFaults([techniqueStore.getState().fault])
  }
  return (
    <form className="editor" onSubmit={(event) => void keep(event)}>
      <label className="field">
        <span className="name">Name</span>
        <input
          name="name"
          pattern=".*\S.*"
          title="A name of at least one letter"
          required
          defaultValue={technique.name}
          maxLength={letters.name}
          autoComplete="off"
        />
      </label>
      <label className="field">
        <span className="name">What it is for, in a sentence</span>
        <input name="aim" defaultValue={technique.aim} maxLength={letters.aim} autoComplete="off" />
      </label>
      <label className="field">
        <span className="name">Steps, one a line</span>
        <textarea name="steps" rows={8} defaultValue={technique.steps.join("\n")} />
      </label>
      <label className="field">
        <span className="name">Notes</span>
        <textarea name="notes" rows={4} defaultValue={technique.notes} maxLength={letters.note} />
      </label>
      {faults.map((fault) => (
        <p className="fault" role="alert" key={fault}>
          {fault}
        </p>
      ))}
      <p className="aside">
        A technique can be passed on: write nothing of a client into it. Notes of single foils stay with the
        plan.
      </p>
      <div className="actions">
        <button type="submit" className="button strong">
          Keep this technique
        </button>
        <button type="button" className="button" onClick={onLeave}>
          Leave it
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
