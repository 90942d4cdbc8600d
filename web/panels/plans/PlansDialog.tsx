import { useState } from "react"
import { copyOf } from "../../core/document/newPlan"
import type { Plan } from "../../core/document/schema"
import { exampleVisit } from "../../core/file/exampleVisit"
import { markExample } from "../../session/markExample"
import { nowHere } from "../../session/nowHere"
import { openInto } from "../../session/planStore"
import { usePlan } from "../../session/usePlan"
import { useWords } from "../../session/words"
import { FileProblems } from "../fields/FileProblems"
import { Modal } from "../fields/Modal"
import { OpenFileButton } from "../fields/OpenFileButton"
import { Late } from "../parts/Late"
import { latePart } from "../parts/latePart"
import { AsideList } from "./AsideList"
import { Backup } from "./Backup"
import { BinList } from "./BinList"
import { beginPlan } from "./beginPlan"
import { LanguageChoice } from "./LanguageChoice"
import { OnThisDevice } from "./OnThisDevice"
import { ReadOnlyList } from "./ReadOnlyList"
import { ShelfList } from "./ShelfList"
import { saveForColleague, savePlanToFile } from "./savePlanToFile"
import { desk } from "./shelfActions"
import { type ShelfOnScreen, useShelf } from "./useShelf"

/** The plans of this browser: open, begin, save, delete. */
export function PlansDialog({ onClose }: { onClose: () => void }) {
  const w = useWords().plans.dialog
  const plan = usePlan((open) => open)
  const shelf = useShelf(desk)
  const [areClients, setClients] = useState(false)
  if (areClients) return <Late part={cardsDialog} shape="line" given={{ onClose }} />
  return (
    <Modal title={w.title} onClose={onClose}>
      <Begin shelf={shelf} plan={plan} onClose={onClose} onClients={() => setClients(true)} />
      {shelf.problems.length > 0 && <FileProblems problems={shelf.problems} />}
      {shelf.fault && (
        <p className="fault" role="alert">
          {shelf.fault}
        </p>
      )}
      {shelf.readOnly ? (
        <ReadOnlyList records={shelf.readOnly} />
      ) : (
        <ShelfList shelf={shelf} openId={plan.id} onOpened={onClose} />
      )}
      <BinList shelf={shelf} />
      <AsideList shelf={shelf} />
      <LanguageChoice />
      <Backup onRestored={shelf.readAgain} />
      <OnThisDevice />
      <p className="aside">{w.stay}</p>
    </Modal>
  )
}

const cardsDialog = latePart(async () => (await import("../cards/CardsDialog")).CardsDialog)

type BeginProps = { shelf: ShelfOnScreen; plan: Plan; onClose: () => void; onClients: () => void }

function Begin({ shelf, plan, onClose, onClients }: BeginProps) {
  const { plans, cards } = useWords()
  const w = plans.dialog
  return (
    <>
      <div className="actions">
        <button
          type="button"
          className="button strong"
          onClick={async () => {
            await beginPlan()
            onClose()
          }}
        >
          {w.newPlan}
        </button>
        <button
          type="button"
          className="button"
          onClick={() => {
            const example = copyOf(exampleVisit(nowHere()))
            openInto(example)
            void markExample(example, desk.shelf)
            onClose()
          }}
        >
          {w.fromExample}
        </button>
        <button type="button" className="button" onClick={onClients}>
          {cards.open}
        </button>
        <OpenFileButton onOpen={async (file) => (await shelf.openFile(file)) && onClose()} />
        <button type="button" className="button" onClick={() => saveForColleague(plan)}>
          {w.saveForColleague}
        </button>
        <button type="button" className="button" onClick={() => savePlanToFile(plan)}>
          {w.saveEverything}
        </button>
      </div>
      <p className="aside">{w.fileHolds}</p>
    </>
  )
}
