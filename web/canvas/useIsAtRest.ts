import { useEffect, useState } from "react"
import type { HeadPicture } from "./paint/headPicture"

const restMs = 120

/** Whether a picture has stood still for a moment: what takes long to draw waits for that, so that the hand is not held up. */
export function useIsAtRest(picture: HeadPicture) {
  const [rested, setRested] = useState<HeadPicture | null>(null)
  useEffect(() => {
    const timer = setTimeout(() => setRested(picture), restMs)
    return () => clearTimeout(timer)
  }, [picture])
  return rested === picture
}
