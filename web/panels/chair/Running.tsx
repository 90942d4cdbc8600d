import { useState } from "react"
import type { Plan } from "../../plan/schema"
import type { TimedPlan } from "../../service/timedPlan"
import { BowlAndRinse } from "./BowlAndRinse"
import { Calls } from "./Calls"
import { FoilActions } from "./FoilActions"
import { FoilTiles } from "./FoilTiles"
import { NextFoil } from "./NextFoil"
import { Outlook } from "./Outlook"
import { useReplanned } from "./useReplanned"

/** The service while it goes on: what is next, what is due, and every foil that is on. */
export function Running({ plan, timed }: { plan: Plan; timed: TimedPlan }) {
  const { schedule, conflicts } = useReplanned(timed)
  const [chosen, choose] = useState<string | null>(null)
  return (
    <>
      <Calls onChoose={choose} />
      <div className="chair-floor">
        <section className="next" aria-label="Next">
          <NextFoil plan={plan} schedule={schedule} />
          <BowlAndRinse schedule={schedule} />
        </section>
        <section className="on-now" aria-label="On now">
          <FoilTiles chosen={chosen} onChoose={choose} schedule={schedule} />
          <FoilActions foil={chosen} plan={plan} onDone={() => choose(null)} />
          <Outlook schedule={schedule} conflicts={conflicts} />
        </section>
      </div>
    </>
  )
}
