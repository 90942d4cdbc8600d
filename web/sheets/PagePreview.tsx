import { useState } from "react"
import type { Page } from "./pens/page"
import { svgPages } from "./pens/svgPages"

/** One page at a time, as large as the screen allows: the very items that the PDF prints. */
export function PagePreview({ pages }: { pages: readonly Page[] }) {
  const [wanted, setWanted] = useState(0)
  const current = Math.min(wanted, pages.length - 1)
  const [markup] = svgPages([pages[current]])
  return (
    <section className="preview" aria-label="Preview">
      {pages.length > 1 && (
        <nav className="page-steps" aria-label="Pages">
          <button
            type="button"
            className="button"
            disabled={current === 0}
            onClick={() => setWanted(current - 1)}
          >
            Page before
          </button>
          <span aria-live="polite">
            Page {current + 1} of {pages.length}
          </span>
          <button
            type="button"
            className="button"
            disabled={current === pages.length - 1}
            onClick={() => setWanted(current + 1)}
          >
            Page after
          </button>
        </nav>
      )}
      {/* biome-ignore lint/security/noDangerouslySetInnerHtml: our own pen writes it and escapes every word of the plan */}
      <div className="sheet" dangerouslySetInnerHTML={{ __html: markup }} />
    </section>
  )
}
