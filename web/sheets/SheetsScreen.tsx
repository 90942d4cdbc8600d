import "./sheets.css"
import { type ComponentType, Suspense, useCallback, useEffect, useMemo, useState } from "react"
import type { Plan } from "../core/document/schema"
import { sessionStore } from "../session/sessionStore"
import { usePlan, useSession } from "../session/usePlan"
import { useWords } from "../session/words"
import type { Words } from "../words/en/words"
import { PagePreview } from "./PagePreview"
import type { Fonts } from "./pens/fontFile"
import { loadFonts } from "./pens/loadFonts"
import { ReadAsPage } from "./ReadAsPage"
import { SheetActions } from "./SheetActions"
import { SheetChoices } from "./SheetChoices"
import { SheetProgress } from "./SheetProgress"
import { sheetKinds } from "./sheetKinds"
import { type Laying, useLaidSheet } from "./useLaidSheet"
import { useSheetOptions } from "./useSheetOptions"
import { useSheetSettings } from "./useSheetSettings"

type Props = { Note: ComponentType<{ plan: Plan }>; Lesson: ComponentType<{ plan: Plan; words: Words }> }

/** A sheet as it will print: small pages beside a large one; `Note` is where what it says of next time is written, `Lesson` where what it says to a class is. */
export function SheetsScreen({ Note, Lesson }: Props) {
  const plan = usePlan((open) => open)
  const name = useSession(({ sheet }) => sheet)
  const mirror = useSession(({ mirrorView }) => mirrorView)
  const { sheets: said, plans } = useWords()
  const { language, chooseLanguage, paper, choosePaper, words, hasFailed } = useSheetSettings(name)
  const { fonts, hasFailed: hasNoFont, again } = useFonts()
  const options = useSheetOptions(plan, { paper, mirror, language, words })
  const asked = useMemo(
    () => fonts && options && { name, plan, options, fonts },
    [plan, name, fonts, options],
  )
  const { sheet, laying, end, endPdf, again: layOutAgain, sheetNow, pagesNow } = useLaidSheet(asked)
  const fault = hasNoFont ? said.screen.noFont : hasFailed ? said.screen.noWords : ""
  return (
    <main className="page sheets">
      <h1>{said.screen.title}</h1>
      <div className="sheets-choices">
        <SheetChoices
          sheet={name}
          onSheet={(next) => sessionStore.setState({ sheet: next })}
          paper={paper}
          onPaper={choosePaper}
          language={language}
          onLanguage={chooseLanguage}
          mirror={mirror}
          onMirror={(mirrorView) => sessionStore.setState({ mirrorView })}
        />
      </div>
      <p className="aside">{said.asides[name]}</p>
      {fault && (
        <p className="fault" role="alert">
          {fault}{" "}
          {hasNoFont && (
            <button type="button" className="button" onClick={again}>
              {plans.parts.tryAgain}
            </button>
          )}
        </p>
      )}
      {!fault && <LayingOut laying={laying} hasSheet={sheet !== null} onEnd={end} onAgain={layOutAgain} />}
      {sheetKinds[name].hasNote && (
        <Suspense>
          <Note plan={plan} />
        </Suspense>
      )}
      {sheetKinds[name].isLesson && words && (
        <Suspense>
          <Lesson plan={plan} words={words} />
        </Suspense>
      )}
      {sheet && options && (
        <PagePreview sheet={sheet} paper={paper} pagesNow={pagesNow}>
          <SheetActions name={name} sheet={sheet} sheetNow={sheetNow} plan={plan} onEnd={endPdf} />
          {sheetKinds[name].toHtml && <ReadAsPage name={name} plan={plan} options={options} />}
        </PagePreview>
      )}
    </main>
  )
}

type LayingProps = { laying: Laying; hasSheet: boolean; onEnd: () => void; onAgain: () => void }

/** Where the laying out takes time, or did not end well. What is in sight is not moved for a short one. */
function LayingOut({ laying, hasSheet, onEnd, onAgain }: LayingProps) {
  const { screen } = useWords().sheets
  if (laying.state === "here") return null
  if (laying.state === "coming") {
    const { step } = laying
    if (hasSheet && !step) return null
    const { done, count } = step ?? { done: 0, count: 0 }
    const text = step ? screen.workingOn(done, count) : screen.working
    return <SheetProgress text={text} done={done} count={count} onEnd={onEnd} />
  }
  return (
    <p className="fault" role="alert">
      {screen.stopped}{" "}
      <button type="button" className="button" onClick={onAgain}>
        {screen.again}
      </button>
    </p>
  )
}

/** The type of the sheets; where it did not come it is fetched again, by hand or when the network is back. */
function useFonts() {
  const [fonts, setFonts] = useState<Fonts | null>(null)
  const [hasFailed, setHasFailed] = useState(false)
  const again = useCallback(() => {
    setHasFailed(false)
    loadFonts().then(setFonts, () => setHasFailed(true))
  }, [])
  useEffect(again, [again])
  useEffect(() => {
    if (!hasFailed) return
    window.addEventListener("online", again)
    return () => window.removeEventListener("online", again)
  }, [hasFailed, again])
  return { fonts, hasFailed, again }
}
