import { useEffect, useState } from "react"
import type { LaidSheet } from "./sheetMaker"

type Ahead = { sheet: LaidSheet; bytes: Uint8Array<ArrayBuffer> | null }

/** The PDF made before anyone asks for it, where the tap itself has no time for it; what failed is tried again by the tap. */
export function usePdfAhead(sheet: LaidSheet, isWanted: boolean) {
  const [made, setMade] = useState<Ahead | null>(null)
  useEffect(() => {
    if (!isWanted) return
    let isAwaited = true
    const keep = (bytes: Ahead["bytes"]) => isAwaited && setMade({ sheet, bytes })
    sheet.pdf().then(keep, () => keep(null))
    return () => {
      isAwaited = false
    }
  }, [sheet, isWanted])
  const isHere = made?.sheet === sheet
  return { bytes: isHere ? made.bytes : null, isComing: isWanted && !isHere }
}
