import { useEffect, useMemo, useReducer } from "react"
import { flushSync } from "react-dom"
import type { PaperName } from "../../presets/sheets/papers"
import type { Plan } from "../core/document/schema"
import { useMinute } from "../session/clearance/useMinute"
import { useSalon } from "../session/salon/useSalon"
import type { Words } from "../words/en/words"
import type { Language } from "../words/every/languages"
import { optionsOf, renewed } from "./optionsOf"
import type { SheetOptions } from "./setting/sheetOptions"

type Chosen = { paper: PaperName; mirror: boolean; language: Language; words: Words | null }

/** How a sheet of the plan is set: told anew by each change, by each minute and before the browser prints, since answers age. Null until its words are here. */
export function useSheetOptions(plan: Plan, { paper, mirror, language, words }: Chosen): SheetOptions | null {
  useMinute()
  useTheHourOfPrinting()
  const { contact } = useSalon().salon
  const chosen = useMemo(
    () => words && optionsOf(plan, { paper, mirror, language, words, contact }),
    [plan, paper, mirror, language, words, contact],
  )
  const now = chosen && renewed(chosen, plan)
  // biome-ignore lint/correctness/useExhaustiveDependencies: what says the same stays the same, so that no page is laid out for it
  return useMemo(() => now, [chosen, now?.stops, now?.alert, now?.zone])
}

/** Draws once more before the browser photographs the page. */
function useTheHourOfPrinting() {
  const [, again] = useReducer((before: number) => before + 1, 0)
  useEffect(() => {
    const pass = () => flushSync(again)
    window.addEventListener("beforeprint", pass)
    return () => window.removeEventListener("beforeprint", pass)
  }, [])
}
