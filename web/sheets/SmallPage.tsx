import { useEffect, useRef, useState } from "react"
import { useWords } from "../session/words"
import type { Paper } from "./pens/page"
import type { LaidSheet } from "./sheetMaker"
import { useMarkup } from "./useMarkup"

type Props = { sheet: LaidSheet; size: Paper; number: number; isCurrent: boolean; onChoose: () => void }

/** A page in the column, drawn once it has come into sight: a long handout has more than the eye sees at once. */
export function SmallPage({ sheet, size, number, isCurrent, onChoose }: Props) {
  const { screen } = useWords().sheets
  const ref = useRef<HTMLButtonElement>(null)
  const isSeen = useSeen(ref)
  const { widthMm, heightMm } = size
  const markup = useMarkup(sheet, {
    page: number - 1,
    prefix: `small-${number}`,
    label: "",
    isWanted: isSeen,
  })
  return (
    <button
      ref={ref}
      type="button"
      className="small-page"
      aria-label={screen.page(number)}
      aria-current={isCurrent ? "page" : undefined}
      onClick={onChoose}
    >
      {markup ? (
        <span
          aria-hidden="true"
          // biome-ignore lint/security/noDangerouslySetInnerHtml: our own pen writes it and escapes every word of the plan
          dangerouslySetInnerHTML={{ __html: markup }}
        />
      ) : (
        <svg viewBox={`0 0 ${widthMm} ${heightMm}`} aria-hidden="true" />
      )}
      <b>{number}</b>
    </button>
  )
}

function useSeen(ref: { readonly current: Element | null }): boolean {
  const [isSeen, setIsSeen] = useState(false)
  useEffect(() => {
    if (!ref.current) return
    const watcher = new IntersectionObserver((entries) => {
      if (entries.some((entry) => entry.isIntersecting)) setIsSeen(true)
    })
    watcher.observe(ref.current)
    return () => watcher.disconnect()
  }, [ref])
  return isSeen
}
