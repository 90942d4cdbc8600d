import { useMemo, useState } from "react"
import { type TechniqueValues, techniqueOf, usualValues } from "../../../../presets/techniques/technique"
import { newId } from "../../../core/document/newId"
import { layTechnique } from "../../../core/edits/lay/layTechnique"
import type { TechniqueChoice } from "../../../core/technique/techniqueChoices"
import { techniqueParameters } from "../../../core/technique/techniqueParameters"
import { commit } from "../../../session/commit"
import { keepOwn, removeOwn } from "../../../session/ownTechniques"
import { Modal } from "../../fields/Modal"
import { ShareTechnique } from "./ShareTechnique"
import { TechniqueForm } from "./TechniqueForm"
import { TechniqueOnHead } from "./TechniqueOnHead"
import { VaryTechnique } from "./VaryTechnique"

type Props = TechniqueChoice & { onClose: () => void }

/** One technique to read, to vary, to lay, to keep, to pass on. */
export function TechniqueDialog({ technique: usual, preset, onClose }: Props) {
  const [values, setValues] = useState<TechniqueValues | null>(null)
  const [editing, setEditing] = useState(false)
  const vary = useMemo(() => preset ?? techniqueParameters(usual), [preset, usual])
  const technique = useMemo(() => (values ? techniqueOf(vary, values) : usual), [vary, values, usual])
  const thenClose = (work: unknown) => void Promise.resolve(work).then(onClose)
  if (editing)
    return (
      <Modal title={`Edit “${usual.name}”`} wide writing onClose={() => setEditing(false)}>
        <TechniqueForm technique={usual} onLeave={onClose} />
      </Modal>
    )
  return (
    <Modal title={technique.name} wide onClose={onClose}>
      <div className="actions">
        <button
          type="button"
          className="button strong"
          onClick={() => thenClose(commit(`Lay the technique “${technique.name}”`, layTechnique(technique)))}
        >
          Lay it on this head
        </button>
        <ShareTechnique technique={technique} />
        {(preset || values) && (
          <button
            type="button"
            className="button"
            onClick={() => thenClose(keepOwn({ ...technique, id: newId() }))}
          >
            {preset ? "Keep as your own" : "Keep as another"}
          </button>
        )}
        {!preset && (
          <>
            <button type="button" className="button" onClick={() => setEditing(true)}>
              Rename, edit
            </button>
            <button
              type="button"
              className="button"
              onClick={() => {
                onClose()
                void removeOwn(technique)
              }}
            >
              Delete
            </button>
          </>
        )}
      </div>
      <TechniqueOnHead technique={technique}>
        {Object.keys(vary.parameters).length > 0 && (
          <VaryTechnique
            parameters={vary.parameters}
            values={values ?? usualValues(vary)}
            onChange={setValues}
          />
        )}
        {!preset && values && <p className="aside">The steps stay as they are written.</p>}
      </TechniqueOnHead>
    </Modal>
  )
}
