import { useState } from "react"
import type { Plan } from "../core/document/schema"
import { fileName } from "../core/file/fileName"
import { announce, announceRefusal } from "../session/announcements"
import { saveFile } from "../session/saveFile"
import type { SheetName } from "../session/sessionStore"
import type { Fonts } from "./pens/fontFile"
import type { Page } from "./pens/page"

type Props = { sheet: SheetName; pages: readonly Page[]; plan: Plan; fonts: Fonts }

const type = "application/pdf"

/** Save the pages as a PDF, or hand them to another app where the system does that. */
export function SheetActions({ sheet, pages, plan, fonts }: Props) {
  const [isBusy, setIsBusy] = useState(false)
  const name = fileName(plan, sheet === "placement" ? "pdf" : `${sheet}.pdf`)
  const withPdf = async (use: (bytes: Uint8Array<ArrayBuffer>) => void | Promise<void>) => {
    setIsBusy(true)
    try {
      // The PDF code is heavy and few visits to this screen need it.
      const { toPdf } = await import("./printPlan")
      await use(Uint8Array.from(toPdf(pages, plan, fonts)))
    } catch (error) {
      if (!isCalledOff(error)) announceRefusal("The PDF could not be made. Reload the page and try again.")
    } finally {
      setIsBusy(false)
    }
  }
  const save = (bytes: Uint8Array<ArrayBuffer>) => {
    saveFile(bytes, name, type)
    announce(`${name} saved`)
  }
  return (
    <div className="actions">
      <button type="button" className="button strong" disabled={isBusy} onClick={() => withPdf(save)}>
        Save PDF
      </button>
      {canShare(name) && (
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

const canShare = (name: string) => navigator.canShare?.({ files: [new File([], name, { type })] }) ?? false

/** Whoever closes the system's share sheet has changed their mind; that is no fault. */
const isCalledOff = (error: unknown) => error instanceof DOMException && error.name === "AbortError"
