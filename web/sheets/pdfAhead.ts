import { useEffect, useState } from "react"
import type { Plan } from "../core/document/schema"
import type { Fonts } from "./pens/fontFile"
import type { Page } from "./pens/page"

type Printed = { pages: readonly Page[]; plan: Plan; fonts: Fonts }

/** The PDF code is heavy and few visits to the sheets need it. */
export async function makePdf({ pages, plan, fonts }: Printed): Promise<Uint8Array<ArrayBuffer>> {
  const { toPdf } = await import("./printPlan")
  return Uint8Array.from(toPdf(pages, plan, fonts))
}

type Ahead = { pages: readonly Page[]; bytes: Uint8Array<ArrayBuffer> | null }

/** The PDF made before anyone asks for it, where the tap itself has no time for it; what failed is tried again by the tap. */
export function usePdfAhead({ pages, plan, fonts }: Printed, isWanted: boolean) {
  const [made, setMade] = useState<Ahead | null>(null)
  useEffect(() => {
    if (!isWanted) return
    let isAwaited = true
    const keep = (bytes: Ahead["bytes"]) => isAwaited && setMade({ pages, bytes })
    makePdf({ pages, plan, fonts }).then(keep, () => keep(null))
    return () => {
      isAwaited = false
    }
  }, [pages, plan, fonts, isWanted])
  const isHere = made?.pages === pages
  return { bytes: isHere ? made.bytes : null, isComing: isWanted && !isHere }
}
