import { useEffect, useRef, useState } from "react"
import { holdsMix } from "../../core/cautions/clearance"
import { onNow, standingOf } from "../../core/chair/chairRecord"
import { mixesOn } from "../../core/chair/inHand"
import type { Plan } from "../../core/document/schema"
import { pieceOf } from "../../core/kinds/kindRecords"
import type { TimedPlan } from "../../core/schedule/timedPlan"
import { useService } from "../../session/chair/useChair"
import { useRestKeeper } from "../../session/chair/useRest"
import { useClearance } from "../../session/clearance/useClearance"
import { useWords } from "../../session/words"
import { HeldBy } from "../clearance/HeldBy"
import { BowlAndRinse } from "./BowlAndRinse"
import { Calls } from "./Calls"
import { FoilActions } from "./FoilActions"
import { FoilTiles } from "./FoilTiles"
import { NextFoil } from "./NextFoil"
import { Outlook } from "./Outlook"
import { Toners } from "./Toners"

type Props = { plan: Plan; timed: TimedPlan; onBurning: (foil: string) => void }

/**
 * The service while it goes on: what is next, what is due, and every foil that is on; then the toners. Once a stop or a
 * question comes up nothing it holds is begun: no foil, no bowl, no heat, no toner. What is on goes on, and comes off.
 */
export function Running({ plan, timed, onBurning }: Props) {
  useRestKeeper(timed)
  const w = useWords().chair.floor
  const [chosen, choose] = useState<string | null>(null)
  const [lookedAt, lookAt] = useState<string | null>(null)
  const isOn = useService((chair) => onNow(chair, chosen) !== undefined)
  const isAllOff = useService((chair) => standingOf(chair).isAllOff)
  const mixes = useService((chair) => mixesOn(chair)) ?? []
  const piece = useService(({ foils }) => pieceOf(foils)) ?? "foil"
  const holds = useClearance()
  // The button that started the clock is gone: the focus goes on to what is next.
  const next = useRef<HTMLElement>(null)
  useEffect(() => {
    if (document.activeElement?.matches("body, main")) next.current?.focus({ preventScroll: true })
  }, [])
  const isLooking = isOn === true && lookedAt === chosen
  return (
    <>
      <Calls holds={holds} onChoose={choose} />
      <div className="chair-floor">
        <section className="next" ref={next} tabIndex={-1} aria-label={w.next}>
          <HeldBy holds={holds} held={!isAllOff && holdsMix(holds, ...mixes) ? piece : null} />
          {isAllOff ? <Toners holds={holds} /> : <NextFoil plan={plan} holds={holds} />}
          <BowlAndRinse holds={holds} />
        </section>
        <section className="on-now" aria-label={w.onNow}>
          {/* A look has the whole side while it is written down: nothing it asks for may lie below the fold. */}
          {!isLooking && <FoilTiles chosen={chosen} onChoose={choose} />}
          <FoilActions
            foil={chosen}
            plan={plan}
            holds={holds}
            isLooking={isLooking}
            onLook={(looks) => lookAt(looks ? chosen : null)}
            onDone={() => choose(null)}
            onBurning={onBurning}
          />
          {!isLooking && <Outlook />}
        </section>
      </div>
    </>
  )
}
