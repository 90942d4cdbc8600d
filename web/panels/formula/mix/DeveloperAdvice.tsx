import type { DeveloperChoice } from "../../../core/mixing/developer"
import { useWords } from "../../../session/words"
import type { FormulaWords } from "../../../words/en/formula/formula"
import { say } from "../../../words/say"

type Props = { proposed: DeveloperChoice | null; volume: number; onUse: (volume: number) => void }

/** The weakest developer that reaches the goal by the sheet, why, and one step weaker where the hair asks for it. */
export function DeveloperAdvice({ proposed, volume, onUse }: Props) {
  const w = useWords().formula.mixing
  if (!proposed) return <p className="aside">{w.noSheet}</p>
  const offered = volumesOf(proposed).filter((each) => each !== volume)
  return (
    <>
      {sentencesOf(proposed, w).map((sentence) => (
        <p className="aside" key={sentence}>
          {sentence}
        </p>
      ))}
      {offered.length > 0 && (
        <div className="actions">
          {offered.map((wanted) => (
            <button type="button" className="button" key={wanted} onClick={() => onUse(wanted)}>
              {w.use(wanted)}
            </button>
          ))}
        </div>
      )}
    </>
  )
}

/** What may be taken with one touch: never a stronger one than the visit's, and nothing where nothing is known. */
function volumesOf(proposed: DeveloperChoice): number[] {
  if (proposed.kind === "chosen")
    return [proposed.volume, ...(proposed.weaker ? [proposed.weaker.volume] : [])]
  return proposed.kind === "stages" ? [proposed.stages[0].volume] : []
}

function sentencesOf(proposed: DeveloperChoice, w: FormulaWords["mixing"]): string[] {
  const why = say(w.why, proposed.why)
  if (proposed.kind === "stages")
    return [why, ...proposed.stages.map((stage, index) => w.visit({ ...stage, visit: index + 1 }))]
  if (proposed.kind !== "chosen") return [why]
  return [w.suggested(proposed), why, ...(proposed.weaker ? [w.weaker(proposed.weaker)] : [])]
}
