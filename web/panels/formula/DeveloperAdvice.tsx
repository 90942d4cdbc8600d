import type { DeveloperChoice } from "../../core/mixing/developer"
import { numberText } from "../../core/text/numberText"

type Props = { proposed: DeveloperChoice | null; volume: number; onUse: (volume: number) => void }

/** The weakest developer that reaches the goal by the sheet, why, and one step weaker where the hair asks for it. */
export function DeveloperAdvice({ proposed, volume, onUse }: Props) {
  if (!proposed)
    return <p className="aside">There is no sheet for this product: its own directions decide.</p>
  const offered = volumesOf(proposed).filter((each) => each !== volume)
  return (
    <>
      {wordsOf(proposed).map((sentence) => (
        <p className="aside" key={sentence}>
          {sentence}
        </p>
      ))}
      {offered.length > 0 && (
        <div className="actions">
          {offered.map((wanted) => (
            <button type="button" className="button" key={wanted} onClick={() => onUse(wanted)}>
              Use {wanted} vol
            </button>
          ))}
        </div>
      )}
    </>
  )
}

/** What may be taken with one touch. A stronger one than the visit's is never among them. */
function volumesOf(proposed: DeveloperChoice): number[] {
  if (proposed.kind === "chosen")
    return [proposed.volume, ...(proposed.weaker ? [proposed.weaker.volume] : [])]
  if (proposed.kind === "stages") return [proposed.stages[0].volume]
  return proposed.kind === "unknown" && proposed.usualVolume !== null ? [proposed.usualVolume] : []
}

function wordsOf(proposed: DeveloperChoice): string[] {
  if (proposed.kind === "unknown")
    return [
      proposed.usualVolume === null
        ? proposed.why
        : `${proposed.why} Until then ${proposed.usualVolume} vol is usual.`,
    ]
  if (proposed.kind === "none") return [proposed.why]
  if (proposed.kind === "stages")
    return [
      proposed.why,
      ...proposed.stages.map(
        ({ fromLevel, toLevel, volume }, visit) =>
          `Visit ${visit + 1}: from level ${fromLevel} to ${toLevel} with ${volume} vol.`,
      ),
    ]
  const { weaker } = proposed
  return [
    `Proposed: ${proposed.volume} vol. ${proposed.why}`,
    ...(weaker
      ? [
          `Or ${weaker.volume} vol: ${weaker.reasons.join("; ")}${weaker.shortByLevels > 0 ? `, but it stops ${numberText(weaker.shortByLevels)} ${weaker.shortByLevels === 1 ? "level" : "levels"} short of the goal` : ""}.`,
        ]
      : []),
  ]
}
