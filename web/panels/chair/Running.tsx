import { useState } from "react"
import { onNow } from "../../core/chair/chairRecord"
import type { Plan } from "../../core/document/schema"
import type { TimedPlan } from "../../core/schedule/timedPlan"
import { useService } from "../../session/chair/useChair"
import { useRestKeeper } from "../../session/chair/useRest"
import { BowlAndRinse } from "./BowlAndRinse"
import { Calls } from "./Calls"
import { FoilActions } from "./FoilActions"
import { FoilTiles } from "./FoilTiles"
import { NextFoil } from "./NextFoil"
import { Outlook } from "./Outlook"

/** The service while it goes on: what is next, what is due, and every foil that is on. */
export function Running({ plan, timed }: { plan: Plan; timed: TimedPlan }) {
  useRestKeeper(timed)
  const [chosen, choose] = useState<string | null>(null)
  const [lookedAt, lookAt] = useState<string | null>(null)
  const isOn = useService((chair) => onNow(chair, chosen) !== undefined)
  const isLooking = isOn === true && lookedAt === chosen
  return (
    <>
      <Calls onChoose={choose} />
      <div className="chair-floor">
        <section className="next" aria-label="Next">
          <NextFoil plan={plan} />
          <BowlAndRinse />
        </section>
        <section className="on-now" aria-label="On now">
          {/* A look has the whole side while it is written down: nothing it asks for may lie below the fold. */}
          {!isLooking && <FoilTiles chosen={chosen} onChoose={choose} />}
          <FoilActions
            foil={chosen}
            plan={plan}
            isLooking={isLooking}
            onLook={(looks) => lookAt(looks ? chosen : null)}
            onDone={() => choose(null)}
          />
          {!isLooking && <Outlook />}
        </section>
      </div>
    </>
  )
}
