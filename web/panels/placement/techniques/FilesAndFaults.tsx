import { useEffect, useRef, useState } from "react"
import { useStore } from "zustand"
import type { Problem } from "../../../core/checks/problem"
import { countText } from "../../../core/text/figureText"
import { putBack, removedStore, takeInFile } from "../../../session/ownTechniques"
import { FileProblems } from "../../fields/FileProblems"
import { OpenFileButton } from "../../fields/OpenFileButton"
import { useTechniques } from "./useTechniques"

/** Techniques that come as files, the one deleted last, and what the browser could not keep or read. */
export function FilesAndFaults() {
  const { unreadable, fault } = useTechniques()
  const [problems, setProblems] = useState<readonly Problem[]>([])
  const open = async (file: File) => {
    const opened = await takeInFile(file)
    setProblems(opened.ok ? [] : opened.problems)
  }
  return (
    <div className="technique-files">
      <Removed />
      <OpenFileButton
        words="Open a technique file…"
        name="Technique file"
        onOpen={(file) => void open(file)}
      />
      {problems.length > 0 && <FileProblems problems={problems} />}
      {fault && (
        <p className="fault" role="alert">
          {fault}
        </p>
      )}
      {unreadable > 0 && (
        <p className="aside">
          {countText(unreadable, "technique")} kept here cannot be read by this Partline, and{" "}
          {unreadable === 1 ? "stays as it is" : "stay as they are"}.
        </p>
      )}
    </div>
  )
}

function Removed() {
  const removed = useStore(removedStore, (state) => state.removed)
  const undo = useRef<HTMLButtonElement>(null)
  // The button that had the focus went with its technique.
  useEffect(() => {
    if (removed) undo.current?.focus()
  }, [removed])
  return (
    removed && (
      <p className="removed">
        “{removed.name}” was deleted.
        <button ref={undo} type="button" className="button" onClick={() => void putBack(removed)}>
          Undo
        </button>
      </p>
    )
  )
}
