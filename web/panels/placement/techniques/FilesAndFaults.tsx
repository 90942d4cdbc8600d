import { useEffect, useRef, useState } from "react"
import { useStore } from "zustand"
import type { Problem } from "../../../core/fields/problem"
import { putBack, removedStore, takeInFile } from "../../../session/ownTechniques"
import { notKeptWords, useWords } from "../../../session/words"
import { FileProblems } from "../../fields/FileProblems"
import { OpenFileButton } from "../../fields/OpenFileButton"
import { useTechniques } from "./useTechniques"

/** Techniques that come as files, the one deleted last, and what the browser could not keep or read. */
export function FilesAndFaults() {
  const w = useWords().techniques.own
  const { unreadable, fault } = useTechniques()
  const [problems, setProblems] = useState<readonly Problem[]>([])
  const open = async (file: File) => {
    const opened = await takeInFile(file)
    setProblems(opened.ok ? [] : opened.problems)
  }
  return (
    <div className="technique-files">
      <Removed />
      <OpenFileButton words={w.openFile} name={w.file} onOpen={(file) => void open(file)} />
      {problems.length > 0 && <FileProblems problems={problems} />}
      {fault && (
        <p className="fault" role="alert">
          {notKeptWords(fault)}
        </p>
      )}
      {unreadable > 0 && <p className="aside">{w.unreadable(unreadable)}</p>}
    </div>
  )
}

function Removed() {
  const w = useWords().techniques.own
  const removed = useStore(removedStore, (state) => state.removed)
  const undo = useRef<HTMLButtonElement>(null)
  // The button that had the focus went with its technique.
  useEffect(() => {
    if (removed) undo.current?.focus()
  }, [removed])
  return (
    removed && (
      <p className="removed">
        {w.deletedNote(removed.name)}
        <button ref={undo} type="button" className="button" onClick={() => void putBack(removed)}>
          {w.undo}
        </button>
      </p>
    )
  )
}
