import type { Technique } from "../../../../presets/techniques/technique"

import { useWords } from "../../../session/words"

/** What a technique is for and what the hands do, in letters to be read from across the chair. */
export function TechniqueReading({ technique: { aim, steps, notes } }: { technique: Technique }) {
  const w = useWords().techniques.panel
  return (
    <div className="technique-reading">
      {aim && <p className="technique-aim">{aim}</p>}
      {steps.length > 0 && (
        <>
          <h3>{w.steps}</h3>
          <ol className="technique-steps">
            {steps.map((step, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a step is known by its place
              <li key={i}>{unbroken(step)}</li>
            ))}
          </ol>
        </>
      )}
      {notes && (
        <>
          <h3>{w.notes}</h3>
          <p className="technique-notes">{notes}</p>
        </>
      )}
    </div>
  )
}

/** A number stays on the line of its unit. */
const unbroken = (step: string) => step.replace(/(\d) mm\b/g, "$1\u00a0mm")
