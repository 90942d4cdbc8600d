import { type ReactNode, useState } from "react"
import type { PaperName } from "../../presets/sheets/papers"
import { useWords } from "../session/words"
import { PagesToPrint } from "./PagesToPrint"
import type { Sheet } from "./pens/page"
import { svgPage } from "./pens/svgPages"
import { SmallPage } from "./SmallPage"

type Props = { sheet: Sheet; paper: PaperName; children: ReactNode }

/** A column of small pages, and one at its side as large as the screen allows: the very items that the PDF prints. */
export function PagePreview({ sheet: { pages }, paper, children }: Props) {
  const { screen } = useWords().sheets
  const [wanted, setWanted] = useState(0)
  const current = Math.min(wanted, pages.length - 1)
  const markup = svgPage(pages[current], "page", screen.asPrinted)
  return (
    <section className="preview" aria-label={screen.pages}>
      <div className="sheet-actions">
        {children}
        <span aria-live="polite">{screen.pageOf(current + 1, pages.length)}</span>
      </div>
      {pages.length > 1 && (
        <nav className="small-pages" aria-label={screen.pages}>
          {pages.map((page, i) => (
            <SmallPage
              // biome-ignore lint/suspicious/noArrayIndexKey: a page is known by its place alone
              key={i}
              page={page}
              number={i + 1}
              isCurrent={i === current}
              onChoose={() => setWanted(i)}
            />
          ))}
        </nav>
      )}
      {/* biome-ignore lint/security/noDangerouslySetInnerHtml: our own pen writes it and escapes every word of the plan */}
      <div className="sheet" dangerouslySetInnerHTML={{ __html: markup }} />
      <PagesToPrint pages={pages} paper={paper} />
    </section>
  )
}
