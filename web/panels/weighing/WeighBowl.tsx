import { useState } from "react"
import { type Weighable, weighables } from "../../core/bowls/weighables"
import { newId } from "../../core/document/newId"
import type { Plan } from "../../core/document/schema"
import { letters, limits } from "../../core/fields/limits"
import { needOf } from "../../core/weighing/salonOfPlan"
import type { KeptWeighing } from "../../core/weighing/salonRecord"
import { placedFrom } from "../../core/weighing/weighedBowl"
import { nowHere } from "../../session/nowHere"
import { changeSalonHere } from "../../session/salon/useSalon"
import { usePlan } from "../../session/usePlan"
import { useWords } from "../../session/words"
import type { WeighingWords } from "../../words/en/weighing"
import { say } from "../../words/say"
import { NumberField } from "../fields/NumberField"
import { SelectField } from "../fields/SelectField"

type Readings = { beforeG: number | null; afterG: number | null }
const unread: Readings = { beforeG: null, afterG: null }

/** A bowl of this plan, or one foil, on the scale before and after. */
export function WeighBowl() {
  const w = useWords().weighing.bowl
  const plan = usePlan((open) => open)
  const [chosen, choose] = useState<string | null>(null)
  const [readings, read] = useState(unread)
  const things = weighables(plan)
  if (things.length === 0) return <p className="aside">{w.noFoils}</p>
  const thing = things.find(({ key }) => key === chosen) ?? things[0]
  const keep = (productG: number) => {
    void changeSalonHere({ chapter: "weighing", code: "keep-weighing" }, (salon) => ({
      ...salon,
      weighings: [...salon.weighings, weighingOf(thing, productG, plan, w)].slice(-mostKept),
    }))
    read(unread)
  }
  return (
    <>
      <p>{w.how}</p>
      <div className="with-fields">
        <SelectField
          name={w.what}
          options={things.map(({ key, name }) => ({ value: key, label: say(w.name, name) }))}
          value={thing.key}
          empty={w.chooseOne}
          onChange={choose}
        />
        <Reading
          name={w.before}
          grams={readings.beforeG}
          onRead={(beforeG) => read({ ...readings, beforeG })}
        />
        <Reading name={w.after} grams={readings.afterG} onRead={(afterG) => read({ ...readings, afterG })} />
      </div>
      <KeepWeighing readings={readings} onKeep={keep} />
    </>
  )
}

const mostKept = 5000

type ReadingProps = { name: string; grams: number | null; onRead: (grams: number | null) => void }

const Reading = ({ name, grams, onRead }: ReadingProps) => (
  <NumberField
    name={name}
    unit={useWords().common.units.g}
    value={grams ?? 0}
    isUnset={grams === null}
    range={limits.bowlG}
    onClear={() => onRead(null)}
    onCommit={onRead}
  />
)

function KeepWeighing({ readings, onKeep }: { readings: Readings; onKeep: (productG: number) => void }) {
  const w = useWords().weighing.bowl
  const { beforeG, afterG } = readings
  if (beforeG === null || afterG === null) return null
  const placed = placedFrom({ beforeG, afterG })
  if (!placed.ok)
    return (
      <p className="fault" role="alert">
        {say(w.problem, placed.problem)}
      </p>
    )
  return (
    <div className="actions">
      <button type="button" className="button strong" onClick={() => onKeep(placed.productG)}>
        {w.save({ productG: placed.productG })}
      </button>
    </div>
  )
}

function weighingOf(
  { ids, name, product, mix }: Weighable,
  productG: number,
  plan: Plan,
  w: WeighingWords["bowl"],
): KeptWeighing {
  const said = w.ofPlan({ date: plan.date, plan: plan.name, what: say(w.name, name) })
  const { need, kind } = needOf(ids, mix, plan)
  return {
    id: newId(),
    weighedAt: nowHere().moment,
    name: [...said].slice(0, letters.name).join(""),
    planId: plan.id,
    product,
    kind,
    ...need,
    productG,
    leftOut: false,
  }
}
