import { useEffect } from "react"
import { planStore } from "../planStore"
import { usePlan, useSession } from "../usePlan"
import {
  chairStore,
  closeChair,
  isRunning,
  keep,
  keepTime,
  openChair,
  takeIfFree,
  tick,
  watchChair,
} from "./chairStore"
import { findRunning } from "./findRunning"
import { keepAwake, wakeSound } from "./signals"
import { useChair } from "./useChair"

/**
 * Keeps the chair whatever screen is shown: one that runs goes on, of this plan or of another; one that does not is
 * open only while its own screen is shown.
 */
export function useChairKeeper() {
  const planId = usePlan(({ id }) => id)
  const atChair = useSession(({ screen }) => screen === "chair")
  const runs = useChair(isRunning)
  const hold = useChair((state) => state.hold)
  useEffect(() => void takeUpRunning(), [])
  useEffect(() => {
    if (runs && hold === "held") return
    const isOpen = chairStore.getState().planId
    if (atChair && isOpen !== planId) void openChair(planId)
    // While it opens nobody knows yet whether a service runs there.
    if (!atChair && isOpen !== null && !runs && hold !== "opening") closeChair()
  }, [planId, atChair, runs, hold])
  useEffect(() => (runs ? keepAwake() : undefined), [runs])
  useSeconds()
}

/** After a reload, or where another plan is opened first, a service that was going on is called out again. */
async function takeUpRunning() {
  const planId = await findRunning(planStore.getState().present.id, Date.now())
  if (planId !== null && chairStore.getState().planId === null) await openChair(planId)
}

/** Lets the seconds go by, and keeps them. A page may sound only after a touch, once for each load. */
function useSeconds() {
  useEffect(() => {
    const second = () => {
      const { planId, hold } = chairStore.getState()
      if (planId === null) return
      tick()
      keepTime()
      if (hold === "elsewhere") void watchChair(planId).then(() => takeIfFree(planId))
    }
    const wake = () => {
      tick()
      keep()
    }
    const touched = () => isRunning(chairStore.getState()) && wakeSound()
    const timer = setInterval(second, 1000)
    document.addEventListener("visibilitychange", wake)
    window.addEventListener("pagehide", wake)
    window.addEventListener("pointerdown", touched)
    window.addEventListener("keydown", touched)
    return () => {
      clearInterval(timer)
      document.removeEventListener("visibilitychange", wake)
      window.removeEventListener("pagehide", wake)
      window.removeEventListener("pointerdown", touched)
      window.removeEventListener("keydown", touched)
      closeChair()
    }
  }, [])
}
