import { useEffect, useRef, useState } from "react"
import { createPortal, flushSync } from "react-dom"
import type { PaperName } from "../../presets/sheets/papers"
import type { LaidSheet } from "./sheetMaker"

type Props = { sheet: LaidSheet; paper: PaperName; pagesNow: PagesNow }
/** The pages as they are true at this moment: those that have been drawn, where they still are. */
export type PagesNow = (drawn: readonly string[] | null) => readonly string[]

/** All pages at life size, in place of the screen while the browser prints it; nothing at other times. */
export function PagesToPrint({ sheet, paper, pagesNow }: Props) {
  useDrawnAhead(sheet)
  const pages = usePrinted(() => pagesNow(sheet.drawn()))
  if (!pages) return null
  return createPortal(
    <div className={`printed ${paper}`}>
      {pages.map((page, i) => (
        <div
          // biome-ignore lint/suspicious/noArrayIndexKey: a page is known by its place alone
          key={i}
          className="printed-page"
          // biome-ignore lint/security/noDangerouslySetInnerHtml: our own pen writes it and escapes every word of the plan
          dangerouslySetInnerHTML={{ __html: page }}
        />
      ))}
    </div>,
    document.body,
  )
}

/** More pages than this are drawn when they are asked for: until then whoever draws them has no time for the screen. */
const mostAhead = 30
/** What is in sight is drawn first. */
const aheadMs = 500

/** A browser that prints by its own menu does not wait for pages to be drawn. */
function useDrawnAhead(sheet: LaidSheet) {
  useEffect(() => {
    if (sheet.papers.length > mostAhead) return
    // One that is overtaken by a newer sheet is drawn with that.
    const wait = setTimeout(() => sheet.pages().catch(() => {}), aheadMs)
    return () => clearTimeout(wait)
  }, [sheet])
}

/** The pages while the browser prints, null at other times. */
function usePrinted(pagesNow: () => readonly string[]): readonly string[] | null {
  const [printed, setPrinted] = useState<readonly string[] | null>(null)
  const latest = useRef(pagesNow)
  useEffect(() => {
    latest.current = pagesNow
  })
  useEffect(() => {
    // The browser photographs the page as soon as its listeners return.
    const begin = () => flushSync(() => setPrinted(latest.current()))
    const end = () => setPrinted(null)
    window.addEventListener("beforeprint", begin)
    window.addEventListener("afterprint", end)
    return () => {
      window.removeEventListener("beforeprint", begin)
      window.removeEventListener("afterprint", end)
    }
  }, [])
  return printed
}
