import { useEffect, useState } from "react"
import { browserShelf } from "../storage/browserShelf"
import { keepSetting, readSetting } from "../storage/shelfList"
import { type PaperName, papers } from "./pens/page"

/** Where Letter is the paper in the printer. */
const letterRegions = /-(US|CA|MX|PH|CL|CO|CR|GT|PA|PR|SV|VE)\b/

const isPaper = (name: unknown): name is PaperName => typeof name === "string" && Object.hasOwn(papers, name)

/** The paper chosen last in this browser, else that of its region. */
export function usePaper(): [paper: PaperName, choose: (paper: PaperName) => void] {
  const [paper, setPaper] = useState<PaperName>(letterRegions.test(navigator.language) ? "letter" : "a4")
  useEffect(() => {
    readSetting(browserShelf, "paper").then(
      (kept) => isPaper(kept) && setPaper(kept),
      () => {},
    )
  }, [])
  const choose = (next: PaperName) => {
    setPaper(next)
    // A choice that cannot be kept still holds for today.
    keepSetting(browserShelf, "paper", next).catch(() => {})
  }
  return [paper, choose]
}
