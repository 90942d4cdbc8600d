import "./sheets.css"
import { type ComponentType, Suspense, useEffect, useMemo, useState } from "react"
import type { Plan } from "../core/document/schema"
import { sessionStore } from "../session/sessionStore"
import { usePlan, useSession } from "../session/usePlan"
import { PagePreview } from "./PagePreview"
import type { Fonts } from "./pens/fontFile"
import { loadFonts } from "./pens/loadFonts"
import { type Page, papers } from "./pens/page"
import { SheetActions } from "./SheetActions"
import { SheetChoices } from "./SheetChoices"
import { sheetKinds } from "./sheetKinds"
import { stopsAtPrintTime } from "./stopsAtPrintTime"
import { usePaper } from "./usePaper"

/** A sheet as it will print, page by page; `Note` is where what it says of next time is written. */
export function SheetsScreen({ Note }: { Note: ComponentType<{ plan: Plan }> }) {
  const plan = usePlan((open) => open)
  const name = useSession(({ sheet }) => sheet)
  const mirror = useSession(({ mirrorView }) => mirrorView)
  const kind = sheetKinds[name]
  const [paper, choosePaper] = usePaper()
  const [fonts, fault] = useFonts()
  const pages = useMemo<Page[]>(
    () =>
      fonts ? kind.layOut(plan, { paper: papers[paper], mirror, ...stopsAtPrintTime(plan) }, fonts) : [],
    [plan, kind, paper, mirror, fonts],
  )
  return (
    <main className="page sheets">
      <h1>Sheets</h1>
      <div className="sheets-bar">
        <SheetChoices
          sheet={name}
          onSheet={(sheet) => sessionStore.setState({ sheet })}
          paper={paper}
          onPaper={choosePaper}
          mirror={mirror}
          onMirror={(mirrorView) => sessionStore.setState({ mirrorView })}
        />
        {fonts && <SheetActions sheet={name} pages={pages} plan={plan} fonts={fonts} />}
      </div>
      <p className="aside">{kind.aside}</p>
      {fault && (
        <p className="fault" role="alert">
          {fault}
        </p>
      )}
      {!fonts && !fault && <p>Laying out the pages…</p>}
      {kind.hasNote && (
        <Suspense>
          <Note plan={plan} />
        </Suspense>
      )}
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
