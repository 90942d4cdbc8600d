import { useEffect, useMemo, useState } from "react"
import { sessionStore } from "../plan/sessionStore"
import { usePlan, useSession } from "../plan/usePlan"
import { stopsWords } from "../service/stopsWords"
import { nowHere } from "../service/visitOfPlan"
import type { Fonts } from "./fontFile"
import { type Page, papers } from "./layout/page"
import { layoutSheet } from "./layout/placementMap"
import { loadFonts } from "./loadFonts"
import { PagePreview } from "./PagePreview"
import { SheetActions } from "./SheetActions"
import { SheetChoices } from "./SheetChoices"
import { usePaper } from "./usePaper"

/** The placement map as it will print, page by page. */
export function SheetsScreen() {
  const plan = usePlan((open) => open)
  const mirror = useSession((session) => session.mirrorView)
  const [paper, choosePaper] = usePaper()
  const [fonts, fault] = useFonts()
  const pages = useMemo<Page[]>(
    () =>
      fonts
        ? layoutSheet(plan, { paper: papers[paper], mirror, stops: stopsWords(plan, nowHere()) }, fonts)
        : [],
    [plan, paper, mirror, fonts],
  )
  return (
    <main className="page sheets">
      <h1>Sheets</h1>
      <div className="sheets-bar">
        <SheetChoices
          paper={paper}
          onPaper={choosePaper}
          mirror={mirror}
          onMirror={(mirrorView) => sessionStore.setState({ mirrorView })}
        />
        {fonts && <SheetActions pages={pages} plan={plan} fonts={fonts} />}
      </div>
      <p className="aside">
        The map is taped to the mirror, where others read it: it carries initials only. Print it at 100 %, not
        fitted to the page, so that the comb strip is life size.
      </p>
      {fault && (
        <p className="fault" role="alert">
          {fault}
        </p>
      )}
      {!fonts && !fault && <p>Laying out the pages…</p>}
      {pages.length > 0 && <PagePreview pages={pages} />}
    </main>
  )
}

function useFonts(): [fonts: Fonts | null, fault: string] {
  const [fonts, setFonts] = useState<Fonts | null>(null)
  const [fault, setFault] = useState("")
  useEffect(() => {
    loadFonts().then(setFonts, () =>
      setFault("The type for the sheets did not load. Look at the connection and reload the page."),
    )
  }, [])
  return [fonts, fault]
}
