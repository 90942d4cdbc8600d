import { useMemo, useState } from "react"
import { type TechniqueValues, usualValues } from "../../../../presets/techniques/technique"
import { newId } from "../../../core/document/newId"
import { layTechnique } from "../../../core/edits/lay/layTechnique"
import { laidFrom, type TechniqueChoice } from "../../../core/technique/techniqueChoices"
import { techniqueParameters } from "../../../core/technique/techniqueParameters"
import { commit } from "../../../session/commit"
import { keepOwn, removeOwn } from "../../../session/ownTechniques"
import { useWords } from "../../../session/words"
import { houseTechnique } from "../../../words/every/houseTechnique"
import { Modal } from "../../fields/Modal"
import { ShareTechnique } from "./ShareTechnique"
import { TechniqueForm } from "./TechniqueForm"
import { TechniqueOnHead } from "./TechniqueOnHead"
import { VaryTechnique } from "./VaryTechnique"

type Props = TechniqueChoice & { onClose: () => void }

/** One technique to read, to vary, to lay, to keep, to pass on. */
export function TechniqueDialog({ technique: usual, house, onClose }: Props) {
  const { techniques: words } = useWords()
  const w = words.panel
  const [values, setValues] = useState<TechniqueValues | null>(null)
  const [editing, setEditing] = useState(false)
  const vary = useMemo(() => house ?? techniqueParameters(usual), [house, usual])
  const technique = useMemo(() => {
    if (!values) return usual
    return house ? houseTechnique(house, words, values) : { ...usual, sections: vary.shape(values).sections }
  }, [house, words, vary, values, usual])
  const thenClose = (work: unknown) => void Promise.resolve(work).then(onClose)
  if (editing)
    return (
      <Modal title={w.editing(usual.name)} wide writing onClose={() => setEditing(false)}>
        <TechniqueForm technique={usual} onLeave={onClose} />
      </Modal>
    )
  return (
    <Modal title={technique.name} wide onClose={onClose}>
      <div className="actions">
        <button
          type="button"
          className="button strong"
          onClick={() =>
            thenClose(
              commit(
                { chapter: "placement", code: "place-technique", name: technique.name },
                layTechnique(technique, laidFrom({ technique, house }, values)),
              ),
            )
          }
        >
          {w.placeHere}
        </button>
        <ShareTechnique technique={technique} />
        {(house || values) && (
          <button
            type="button"
            className="button"
            onClick={() => thenClose(keepOwn({ ...technique, id: newId() }))}
          >
            {house ? w.saveAsOwn : w.saveAsCopy}
          </button>
        )}
        {!house && (
          <>
            <button type="button" className="button" onClick={() => setEditing(true)}>
              {w.edit}
            </button>
            <button
              type="button"
              className="button"
              onClick={() => {
                onClose()
                void removeOwn(technique)
              }}
            >
              {w.delete}
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
        {!house && values && <p className="aside">{w.stepsStay}</p>}
      </TechniqueOnHead>
    </Modal>
  )
}
