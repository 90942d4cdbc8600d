import type { Plan } from "../../core/document/schema"
import type { RecordedBowl } from "../../core/document/serviceRecord"
import { setBowlLeft } from "../../core/edits/plan/setBowlLeft"
import { limits } from "../../core/fields/limits"
import { commit } from "../../session/commit"
import { useWords } from "../../session/words"
import { NumberField } from "../fields/NumberField"

/** What is left of each bowl that was mixed, on the scale. */
export function WeighLeft({ plan: { service } }: { plan: Plan }) {
  const w = useWords().chair.floor.weigh
  const bowls = (service?.bowls ?? []).map((bowl, at) => ({ bowl, at }))
  const mixed = bowls.filter(({ bowl }) => bowl.mixedAtMs !== null)
  const shown = mixed.length > 0 ? mixed : bowls
  if (shown.length === 0) return null
  return (
    <section aria-labelledby="weigh-title">
      <h2 id="weigh-title">{w.title}</h2>
      {shown.map(({ bowl, at }) => (
        <BowlLeft key={at} bowl={bowl} at={at} />
      ))}
    </section>
  )
}

function BowlLeft({ bowl, at }: { bowl: RecordedBowl; at: number }) {
  const { chair, common } = useWords()
  const w = chair.floor.weigh
  const { mix, lightenerG, developerG, leftG, additives = [] } = bowl
  const madeG = lightenerG + developerG + additives.reduce((sum, { grams }) => sum + grams, 0)
  const save = (grams: number | null) =>
    commit({ chapter: "chair", code: "weigh-left" }, setBowlLeft(at, grams))
  return (
    <div className="with-fields">
      <p>
        <b>{w.bowl({ bowl: at + 1, mix })}</b>, {w.made({ lightenerG, developerG })}
      </p>
      <NumberField
        name={w.left}
        unit={common.units.g}
        value={leftG ?? 0}
        isUnset={leftG === null}
        range={limits.bowlG}
        onClear={() => save(null)}
        onCommit={save}
      />
      {leftG !== null && <p className="advice">{w.used(Math.max(0, madeG - leftG))}</p>}
    </div>
  )
}
