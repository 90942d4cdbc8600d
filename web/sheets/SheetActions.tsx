import { useState } from "react"
import type { SheetName } from "../../presets/sheets/sheetNames"
import type { Plan } from "../core/document/schema"
import { fileName } from "../core/file/fileName"
import { announce, announceRefusal } from "../session/announcements"
import { canShare, isCalledOff, isInstalled, saveFile } from "../session/saveFile"
import { useWords } from "../session/words"
import { usePdfAhead } from "./pdfAhead"
import { SheetProgress } from "./SheetProgress"
import type { LaidSheet } from "./sheetMaker"

type Props = {
  name: SheetName
  sheet: LaidSheet
  /** The sheet as it is true at the tap: what it says of the plan ages while it is looked at. */
  sheetNow: () => Promise<LaidSheet>
  plan: Plan
  /** Ends whatever is being made. */
  onEnd: () => void
}

const type = "application/pdf"

/** Save the pages as a PDF, print them, or hand them to another app where the system does that. */
export function SheetActions({ name, sheet, sheetNow, plan, onEnd }: Props) {
  const { screen } = useWords().sheets
  const [isBusy, setIsBusy] = useState(false)
  const [at, setAt] = useState<{ done: number; count: number } | null>(null)
  const file = fileName(plan, name === "placement" ? "pdf" : `${name}.pdf`)
  const shares = canShare(new File([], file, { type }))
  const ahead = usePdfAhead(sheet, shares)
  const isComing = isInstalled() && ahead.isComing
  const withPdf = async (use: (bytes: Uint8Array<ArrayBuffer>) => void | Promise<void>) => {
    setIsBusy(true)
    try {
      const now = await sheetNow()
      const onPage = (done: number, count: number) => setAt({ done, count })
      await use((now === sheet && ahead.bytes) || (await now.pdf(onPage)))
    } catch (error) {
      if (!isCalledOff(error)) announceRefusal(screen.noPdf)
    } finally {
      setAt(null)
      setIsBusy(false)
    }
  }
  const save = async (bytes: Uint8Array<ArrayBuffer>) => {
    if (await saveFile(bytes, file, type)) announce(screen.saved(file))
  }
  const share = (bytes: Uint8Array<ArrayBuffer>) =>
    navigator.share({ files: [new File([bytes], file, { type })] })
  const print = async () => {
    // The browser photographs the pages at once, so they are drawn first; what failed is drawn as it prints.
    const failed = await sheet.pages().then(
      () => null,
      (error) => error,
    )
    if (!isCalledOff(failed)) window.print()
  }
  return (
    <div className="actions">
      <button
        type="button"
        className="button strong"
        disabled={isBusy || isComing}
        onClick={() => withPdf(save)}
      >
        {screen.save}
      </button>
      <button type="button" className="button" onClick={print}>
        {screen.print}
      </button>
      {shares && (
        <button type="button" className="button" disabled={isBusy} onClick={() => withPdf(share)}>
          {screen.share}
        </button>
      )}
      {at && <SheetProgress {...at} text={screen.printing(at.done, at.count)} onEnd={onEnd} />}
    </div>
  )
}
