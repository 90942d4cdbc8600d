import { useEffect } from "react"
import { useStore } from "zustand"
import { setSalon } from "../../core/edits/plan/setSalon"
import { salonForPlans } from "../../core/weighing/salonOfPlan"
import type { SalonShelf } from "../../core/weighing/salonRecord"
import { commit } from "../commit"
import type { Done } from "../words"
import { changeSalon, readSalon, salonStore } from "./salonShelf"

/** What the salon keeps in this browser, read when a panel that shows it comes to the screen. */
export function useSalon() {
  useEffect(() => void readSalon(), [])
  return useStore(salonStore)
}

/** Changes what the salon keeps, and the copy of it that rules the plan on the screen. */
export async function changeSalonHere(label: Done, change: (salon: SalonShelf) => SalonShelf) {
  const salon = await changeSalon(change)
  commit(label, setSalon(salonForPlans(salon)))
}
