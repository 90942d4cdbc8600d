import { useCallback, useEffect, useMemo, useRef, useState } from "react"
import type { SheetName } from "../../presets/sheets/sheetNames"
import type { Plan } from "../core/document/schema"
import { isCalledOff } from "../session/saveFile"
import { renewed } from "./optionsOf"
import type { Fonts } from "./pens/fontFile"
import { svgPages } from "./pens/svgPages"
import type { SheetOptions } from "./setting/sheetOptions"
import { layOutSheet } from "./sheetKinds"
import { type LaidSheet, sheetMaker } from "./sheetMaker"

export type SheetAsked = { name: SheetName; plan: Plan; options: SheetOptions; fonts: Fonts }
/** How it goes: on its way with the steps that are done, here, ended by hand, or failed. */
export type Laying =
  | { state: "coming"; step: { done: number; count: number } | null }
  | { state: "here" | "ended" | "failed" }

const begun: Laying = { state: "coming", step: null }

/** The sheet that is asked for, laid out beside the screen; of the same name the one before stays in sight until it is here. */
export function useLaidSheet(asked: SheetAsked | null) {
  const maker = useMemo(sheetMaker, [])
  const [laid, setLaid] = useState<{ sheet: LaidSheet; of: SheetAsked } | null>(null)
  const [laying, setLaying] = useState<Laying>(begun)
  const coming = useRef<Promise<LaidSheet> | null>(null)
  const begin = useCallback(
    (of: SheetAsked): Promise<LaidSheet> => {
      const { name, plan, fonts, options } = of
      const { words, ...rest } = options
      const isWanted = () => coming.current === sheet
      const onStep = (done: number, count: number) =>
        isWanted() && setLaying({ state: "coming", step: { done, count } })
      const sheet = maker.layOut({ name, plan, options: rest }, { fonts, words, onStep })
      coming.current = sheet
      setLaying(begun)
      sheet.then(
        (here) => {
          if (!isWanted()) return
          setLaid({ sheet: here, of })
          setLaying({ state: "here" })
        },
        (error) => isWanted() && setLaying({ state: isCalledOff(error) ? "ended" : "failed" }),
      )
      return sheet
    },
    [maker],
  )
  useEffect(() => {
    if (asked) void begin(asked).catch(() => {})
  }, [asked, begin])
  useEffect(() => maker.end, [maker])
  const shown = laid && laid.of.name === asked?.name ? laid : null
  const again = () => void (asked && begin(asked).catch(() => {}))
  return {
    sheet: shown?.sheet ?? null,
    laying,
    end: maker.end,
    again,
    /** Ends a PDF that is being made, and whoever makes it: the sheet is laid out once more for the next. */
    endPdf: () => {
      maker.end()
      again()
    },
    /** The sheet as it is true at this moment: what it says of the plan ages while it is looked at. */
    sheetNow: async () => {
      if (!asked || !coming.current) throw new Error("no sheet has been asked for")
      const now = renewed(asked.options, asked.plan)
      return now === asked.options ? coming.current : begin({ ...asked, options: now })
    },
    pagesNow: (drawn: readonly string[] | null): readonly string[] => {
      if (!asked) return []
      const now = renewed(asked.options, asked.plan)
      if (drawn && now === asked.options && shown?.of === asked) return drawn
      return svgPages(layOutSheet(asked.name, asked.plan, now, asked.fonts).pages)
    },
  }
}
