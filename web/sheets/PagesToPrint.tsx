import { useEffect, useState } from "react"
import { createPortal, flushSync } from "react-dom"
import type { PaperName } from "../../presets/sheets/papers"
import type { Page } from "./pens/page"
import { svgPage } from "./pens/svgPages"

/** All pages at life size, in place of the screen while the browser prints it; nothing at other times. */
export function PagesToPrint({ pages, paper }: { pages: readonly Page[]; paper: PaperName }) {
  const isPrinting = useIsPrinting()
  if (!isPrinting) return null
  return createPortal(
    <div className={`printed ${paper}`}>
      {pages.map((page, i) => (
        <div
          // biome-ignore lint/suspicious/noArrayIndexKey: a page is known by its place alone
          key={i}
          className="printed-page"
          // biome-ignore lint/security/noDangerouslySetInnerHtml: our own pen writes it and escapes every word of the plan
          dangerouslySetInnerHTML={{ __html: svgPage(page, `print-${i + 1}`, "") }}
        />
      ))}
    </div>,
    document.body,
  )
}

function useIsPrinting(): boolean {
  const [isPrinting, setIsPrinting] = useState(false)
  useEffect(() => {
    // The browser photographs the page as soon as its listeners return.
    const begin = () => flushSync(() => setIsPrinting(true))
    const end = () => setIsPrinting(false)
    window.addEventListener("beforeprint", begin)
    window.addEventListener("afterprint", end)
    return () => {
      window.removeEventListener("beforeprint", begin)
      window.removeEventListener("afterprint", end)
    }
  }, [])
  return isPrinting
}
