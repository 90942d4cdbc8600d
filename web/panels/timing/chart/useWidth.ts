import { type RefObject, useLayoutEffect, useState } from "react"

/** How wide an element is, in pixels, as it changes; a guess until it is on the page. */
export function useWidth(of: RefObject<HTMLElement | null>, guess: number): number {
  const [width, setWidth] = useState(guess)
  useLayoutEffect(() => {
    const element = of.current
    if (!element) return
    setWidth(element.clientWidth)
    const observer = new ResizeObserver(() => setWidth(element.clientWidth))
    observer.observe(element)
    return () => observer.disconnect()
  }, [of])
  return width
}
