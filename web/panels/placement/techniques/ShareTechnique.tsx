import { useState } from "react"
import type { Technique } from "../../../../presets/techniques/technique"
import { fileStem } from "../../../core/file/fileName"
import { saveTechnique } from "../../../core/file/techniqueFile"
import { saveFile } from "../../../session/saveFile"
import { useWords } from "../../../session/words"
import { addressOf } from "./techniqueAddress"

/** Passing a technique on: as a link that holds all of it, or as a file. */
export function ShareTechnique({ technique }: { technique: Technique }) {
  const w = useWords().techniques.share
  const [said, setSaid] = useState("")
  const [shown, setShown] = useState("")
  const withLink = async (use: (link: string) => Promise<string>) => {
    const link = await addressOf(technique)
    setShown("")
    if (!link) setSaid(w.tooLong)
    else setSaid(await use(link).catch(() => showLink(link)))
  }
  const showLink = (link: string) => {
    setShown(link)
    return w.copyFromHere
  }
  const copy = async (link: string) => {
    await navigator.clipboard.writeText(link)
    return w.copied
  }
  const share = async (url: string) => {
    await navigator.share({ title: technique.name, url })
    return ""
  }
  return (
    <>
      <button type="button" className="button" onClick={() => void withLink(copy)}>
        {w.copyLink}
      </button>
      {typeof navigator.share === "function" && (
        <button type="button" className="button" onClick={() => void withLink(share)}>
          {w.share}
        </button>
      )}
      <button
        type="button"
        className="button"
        onClick={() =>
          saveFile(
            saveTechnique(technique),
            `${fileStem(technique.name, "technique")}.partline-technique.json`,
            "application/json",
          )
        }
      >
        {w.toFile}
      </button>
      <output className="technique-said">{said}</output>
      {shown && (
        <label className="field technique-link">
          <span className="unseen">{w.link}</span>
          <input readOnly value={shown} onFocus={({ target }) => target.select()} />
        </label>
      )}
    </>
  )
}
