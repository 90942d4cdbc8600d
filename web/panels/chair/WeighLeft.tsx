import type { Plan } from "../../core/document/schema"
import type { RecordedBowl } from "../../core/document/serviceRecord"
import { setBowlLeft, setTonerLeft } from "../../core/edits/plan/setBowlLeft"
import { limits } from "../../core/fields/limits"
import { type MixedToner, tonerBowlsMixed } from "../../core/record/asMixed"
import { commit } from "../../session/commit"
import { useWords } from "../../session/words"
import { NumberField } from "../fields/NumberField"

/** What is left of each bowl that was mixed, of lightener and of toner, on the scale. */
export function WeighLeft({ plan: { service } }: { plan: Plan }) {
  const w = useWords().chair.floor.weigh
  const bowls = (service?.bowls ?? []).map((bowl, at) => ({ bowl, at }))
  const mixed = bowls.filter(({ bowl }) => bowl.mixedAtMs !== null)
  const shown = mixed.length > 0 ? mixed : bowls
  const toners = service ? tonerBowlsMixed(service) : []
  if (shown.length + toners.length === 0) return null
  return (
    <section aria-labelledby="weigh-title">
      <h2 id="weigh-title">{w.title}</h2>
      {shown.map(({ bowl, at }) => (
        <BowlLeft key={at} bowl={bowl} at={at} />
      ))}
      {toners.map((toner) => (
        <TonerLeft key={toner.at} toner={toner} />
      ))}
    </section>
  )
}

function BowlLeft({ bowl, at }: { bowl: RecordedBowl; at: number }) {
  const w = useWords().chair.floor.weigh
  const { mix, lightenerG, developerG, leftG, additives = [] } = bowl
  const madeG = lightenerG + developerG + additives.reduce((sum, { grams }) => sum + grams, 0)
  const save = (grams: number | null) =>
    commit({ chapter: "chair", code: "weigh-left" }, setBowlLeft(at, grams))
  return (
    <div className="weigh-left">
      <p>
        <b>{w.bowl({ bowl: at + 1, mix })}</b>, {w.made({ lightenerG, developerG })}
      </p>
      <OnScale leftG={leftG} madeG={madeG} onSave={save} />
    </div>
  )
}

function TonerLeft({ toner: { at, product, productG: tonerG, clearG, developerG, leftG } }: TonerProps) {
  const { onSheet } = useWords().formula
  const save = (grams: number | null) =>
    commit({ chapter: "chair", code: "weigh-left" }, setTonerLeft(at, grams))
  return (
    <div className="weigh-left">
      <p>
        <b>{product}</b>, {onSheet.tonerWeighed({ tonerG, clearG, developerG })}
      </p>
      <OnScale leftG={leftG} madeG={tonerG + clearG + developerG} onSave={save} />
    </div>
  )
}

type TonerProps = { toner: MixedToner }
type ScaleProps = { leftG: number | null; madeG: number; onSave: (grams: number | null) => void }

/** The grams that the scale shows, and what was used by them. */
function OnScale({ leftG, madeG, onSave }: ScaleProps) {
  const { chair, common } = useWords()
  const w = chair.floor.weigh
  return (
    <>
      <NumberField
        name={w.left}
        unit={common.units.g}
        value={leftG ?? 0}
        isUnset={leftG === null}
        range={limits.bowlG}
        onClear={() => onSave(null)}
        onCommit={onSave}
      />
      {leftG !== null && <p className="advice">{w.used(Math.max(0, madeG - leftG))}</p>}
    </>
  )
}
