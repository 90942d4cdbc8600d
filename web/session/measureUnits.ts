import { createStore } from "zustand/vanilla"

/** How a head's measures are read and typed; kept in the browser and never in a plan, which is in mm. */
export type MeasureUnits = "metric" | "inches"

const key = "partline-measure-units"

export const measureUnits = createStore<{ units: MeasureUnits }>(() => ({ units: readUnits() }))

/** Chooses the units, for the next visit too where the browser lets anything be kept. */
export function chooseUnits(units: MeasureUnits) {
  measureUnits.setState({ units })
  try {
    localStorage.setItem(key, units)
  } catch {
    // They hold until the window closes.
  }
}

function readUnits(): MeasureUnits {
  try {
    return localStorage.getItem(key) === "inches" ? "inches" : "metric"
  } catch {
    return "metric"
  }
}
