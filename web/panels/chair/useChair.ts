import { useEffect } from "react"
import { useStore } from "zustand"
import { useShallow } from "zustand/react/shallow"
import type { Chair } from "../../service/chairClock"
import { type ChairState, chairStore, closeChair, keep, openChair, tick, watchChair } from "./chairStore"

/** What is read from the chair must be plain words, numbers or a flat list of them: then a second repaints little. */
export const useChair = <T>(part: (state: ChairState) => T): T => useStore(chairStore, useShallow(part))

/** A part of the running service; null while there is none. */
export const useService = <T>(part: (chair: Chair) => T): T | null =>
  useChair(({ live }) => (live ? part(live.chair) : null))

const keepEverySeconds = 5

/** Holds the chair of a plan while the screen is shown, and lets its seconds go by. */
export function useOpenChair(planId: string) {
  useEffect(() => {
    void openChair(planId)
    let seconds = 0
    const timer = setInterval(() => {
      tick()
      seconds += 1
      if (seconds % keepEverySeconds === 0) keep()
      if (chairStore.getState().hold === "elsewhere") void watchChair(planId)
    }, 1000)
    const wake = () => {
      tick()
      keep()
    }
    document.addEventListener("visibilitychange", wake)
    window.addEventListener("pagehide", keep)
    return () => {
      clearInterval(timer)
      document.removeEventListener("visibilitychange", wake)
      window.removeEventListener("pagehide", keep)
      closeChair()
    }
  }, [planId])
}
