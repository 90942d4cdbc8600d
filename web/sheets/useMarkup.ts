import { useEffect, useState } from "react"
import type { LaidSheet } from "./sheetMaker"

/** A page of a sheet as SVG, once it has been drawn; the one before stays until then. */
export function useMarkup(
  sheet: LaidSheet,
  { page, prefix, label, isWanted }: { page: number; prefix: string; label: string; isWanted: boolean },
): string {
  const [markup, setMarkup] = useState("")
  useEffect(() => {
    if (!isWanted) return
    let isAwaited = true
    sheet.page(page, prefix, label).then(
      (svg) => isAwaited && setMarkup(svg),
      // Overtaken by a newer sheet, which is asked in its turn.
      () => {},
    )
    return () => {
      isAwaited = false
    }
  }, [sheet, page, prefix, label, isWanted])
  return markup
}
