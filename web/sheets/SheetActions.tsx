import { useState } from "react"
import type { Plan } from "../core/document/schema"
import { fileName } from "../core/file/fileName"
import { announce, announceRefusal } from "../session/announcements"
import { canShare, isCalledOff, isInstalled, saveFile } from "../session/saveFile"
import type { SheetName } from "../session/sessionStore"
import { makePdf, usePdfAhead } from "./pdfAhead"
import type { Fonts } from "./pens/fontFile"
import type { Page } from "./pens/page"

type Props = { sheet: SheetName; pages: readonly Page[]; plan: Plan; fonts: Fonts }

const type = "application/pdf"

/** Save the pages as a PDF, or hand them to another app where the system does that. */
export function SheetActions({ sheet, pages, plan, fonts }: Props) {
  const [isBusy, setIsBusy] = useState(false)
  const name = fileName(plan, sheet === "placement" ? "pdf" : `${sheet}.pdf`)
  const shares = canShare(new File([], name, { type }))
  const ahead = usePdfAhead({ pages, plan, fonts }, shares)
  const isComing = isInstalled() && ahead.isComing
  const withPdf = async (use: (bytes: Uint8Array<ArrayBuffer>) => void | Promise<void>) => {
    setIsBusy(true)
    try {
      await use(ahead.bytes ?? (await makePdf({ pages, plan, fonts })))
    } catch (error) {
      if (!isCalledOff(error)) announceRefusal("The PDF could not be made. Reload the page and try again.")
    } finally {
      setIsBusy(false)
    }
  }
  const save = async (bytes: Uint8Array<ArrayBuffer>) => {
    if (await saveFile(bytes, name, type)) announce(`${name} saved`)
  }
  return (
    <div className="actions">
      <button
        type="button"
        className="button strong"
        disabled={isBusy || isComing}
        onClick={() => withPdf(save)}
      >
        Save PDF
      </button>
      {shares && (
        <button
          type="button"
          className="button"
          disabled={isBusy}
          onClick={() => withPdf((bytes) => navigator.share({ files: [new File([bytes], name, { type })] }))}
        >
          Share…
        </button>
      )}
    </div>
  )
}
