import { useEffect } from "react"
import { useStore } from "zustand"
import { act } from "../../plan/act"
import { setSalon } from "../../plan/edits/setSalon"
import type { SalonShelf } from "../../plan/salonRecord"
import { changeSalon, readSalon, salonStore } from "../../plan/salonShelf"
import { salonForPlans } from "../../service/salonOfPlan"

/** What the salon keeps in this browser, read when a panel that shows it comes to the screen. */
export function useSalon() {
  useEffect(() => void readSalon(), [])
  return useStore(salonStore)
}

/** Changes what the salon keeps, and the copy of it that rules the plan on the screen. */
export async function changeSalonHere(label: string, change: (salon: SalonShelf) => SalonShelf) {
  const salon = await changeSalon(change)
  act(label, setSalon(salonForPlans(salon)))
}
