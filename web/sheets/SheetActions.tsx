import { useState } from "react"
import type { SheetName } from "../../presets/sheets/sheetNames"
import type { Plan } from "../core/document/schema"
import { fileName } from "../core/file/fileName"
import { announce, announceRefusal } from "../session/announcements"
import { canShare, isCalledOff, isInstalled, saveFile } from "../session/saveFile"
import { useWords } from "../session/words"
import { makePdf, usePdfAhead } from "./pdfAhead"
import type { Fonts } from "./pens/fontFile"
import type { Sheet } from "./pens/page"

type Props = {
  name: SheetName
  sheet: Sheet
  /** The sheet as it is true at the tap: what it says of the plan ages while it is looked at. */
  sheetNow: () => Sheet
  plan: Plan
  fonts: Fonts
}

const type = "application/pdf"

/** Save the pages as a PDF, print them, or hand them to another app where the system does that. */
export function SheetActions({ name, sheet, sheetNow, plan, fonts }: Props) {
  const { screen } = useWords().sheets
  const [isBusy, setIsBusy] = useState(false)
  const file = fileName(plan, name === "placement" ? "pdf" : `${name}.pdf`)
  const shares = canShare(new File([], file, { type }))
  const ahead = usePdfAhead({ sheet, fonts }, shares)
  const isComing = isInstalled() && ahead.isComing
  const withPdf = async (use: (bytes: Uint8Array<ArrayBuffer>) => void | Promise<void>) => {
    setIsBusy(true)
    try {
      const now = sheetNow()
      await use((now === sheet && ahead.bytes) || (await makePdf({ sheet: now, fonts })))
    } catch (error) {
      if (!isCalledOff(error)) announceRefusal(screen.noPdf)
    } finally {
      setIsBusy(false)
    }
  }
  const save = async (bytes: Uint8Array<ArrayBuffer>) => {
    if (await saveFile(bytes, file, type)) announce(screen.saved(file))
  }
  const share = (bytes: Uint8Array<ArrayBuffer>) =>
    navigator.share({ files: [new File([bytes], file, { type })] })
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
      <button type="button" className="button" onClick={() => window.print()}>
        {screen.print}
      </button>
      {shares && (
        <button type="button" className="button" disabled={isBusy} onClick={() => withPdf(share)}>
          {screen.share}
        </button>
      )}
    </div>
  )
}
