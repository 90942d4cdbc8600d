import { type ReactNode, Suspense, useState } from "react"
import type { LatePart } from "./latePart"
import { PartBoundary } from "./PartBoundary"
import type { PartShape } from "./PartFault"
import { PartWaiting } from "./PartWaiting"

type Props<P extends object> = { part: LatePart<P>; shape: PartShape; given: P; waiting?: ReactNode }

/** A late part in its frame: the frame at once, then the part, or what to do where it did not come. */
export function Late<P extends object>({ part, shape, given, waiting }: Props<P>) {
  const [Part, setPart] = useState(part.now)
  return (
    <PartBoundary shape={shape} onRetry={() => setPart(part.again)}>
      <Suspense fallback={waiting === undefined ? <PartWaiting shape={shape} /> : waiting}>
        <Part {...given} />
      </Suspense>
    </PartBoundary>
  )
}
