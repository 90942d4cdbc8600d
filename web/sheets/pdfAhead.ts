import { useEffect, useState } from "react"
import type { Fonts } from "./pens/fontFile"
import type { Sheet } from "./pens/page"

type Printed = { sheet: Sheet; fonts: Fonts }

/** The PDF code is heavy and few visits to the sheets need it. */
export async function makePdf({ sheet, fonts }: Printed): Promise<Uint8Array<ArrayBuffer>> {
  const { toPdf } = await import("./printPlan")
  return Uint8Array.from(toPdf(sheet, fonts))
}

type Ahead = { sheet: Sheet; bytes: Uint8Array<ArrayBuffer> | null }

/** The PDF made before anyone asks for it, where the tap itself has no time for it; what failed is tried again by the tap. */
export function usePdfAhead({ sheet, fonts }: Printed, isWanted: boolean) {
  const [made, setMade] = useState<Ahead | null>(null)
  useEffect(() => {
    if (!isWanted) return
    let isAwaited = true
    const keep = (bytes: Ahead["bytes"]) => isAwaited && setMade({ sheet, bytes })
    makePdf({ sheet, fonts }).then(keep, () => keep(null))
    return () => {
      isAwaited = false
    }
  }, [sheet, fonts, isWanted])
  const isHere = made?.sheet === sheet
  return { bytes: isHere ? made.bytes : null, isComing: isWanted && !isHere }
}
