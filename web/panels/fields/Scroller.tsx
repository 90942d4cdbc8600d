import type { ReactNode } from "react"

/** Something wider than the screen, scrolled by finger, wheel or key. */
export function Scroller({ name, children }: { name: string; children: ReactNode }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by key
    <section className="scroller" tabIndex={0} aria-label={name}>
      {children}
    </section>
  )
}
