import { type ReactNode, useState } from "react"
import type { PaperName } from "../../presets/sheets/papers"
import { useWords } from "../session/words"
import { type PagesNow, PagesToPrint } from "./PagesToPrint"
import { SmallPage } from "./SmallPage"
import type { LaidSheet } from "./sheetMaker"
import { useMarkup } from "./useMarkup"

type Props = {
  sheet: LaidSheet
  paper: PaperName
  pagesNow: PagesNow
  children: ReactNode
}

/** A column of small pages, and one at its side as large as the screen allows: the very items that the PDF prints. */
export function PagePreview({ sheet, paper, pagesNow, children }: Props) {
  const { screen } = useWords().sheets
  const [wanted, setWanted] = useState(0)
  const { papers } = sheet
  const current = Math.min(wanted, papers.length - 1)
  const markup = useMarkup(sheet, {
    page: current,
    prefix: "page",
    label: screen.asPrinted,
    isWanted: true,
  })
  return (
    <section className="preview" aria-label={screen.pages}>
      <div className="sheet-actions">
        {children}
        <span aria-live="polite">{screen.pageOf(current + 1, papers.length)}</span>
      </div>
      {papers.length > 1 && (
        <nav className="small-pages" aria-label={screen.pages}>
          {papers.map((size, i) => (
            <SmallPage
              // biome-ignore lint/suspicious/noArrayIndexKey: a page is known by its place alone
              key={i}
              sheet={sheet}
              size={size}
              number={i + 1}
              isCurrent={i === current}
              onChoose={() => setWanted(i)}
            />
          ))}
        </nav>
      )}
      {/* biome-ignore lint/security/noDangerouslySetInnerHtml: our own pen writes it and escapes every word of the plan */}
      <div className="sheet" dangerouslySetInnerHTML={{ __html: markup }} />
      <PagesToPrint sheet={sheet} paper={paper} pagesNow={pagesNow} />
    </section>
  )
}
