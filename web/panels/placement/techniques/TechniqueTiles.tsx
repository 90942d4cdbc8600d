import "./techniques.css"
import { useMemo, useState } from "react"
import type { Technique } from "../../../../presets/techniques/technique"
import type { Plan } from "../../../core/document/schema"
import { layTechnique } from "../../../core/edits/lay/layTechnique"
import { choicesWith, type TechniqueChoice } from "../../../core/technique/techniqueChoices"
import { commit } from "../../../session/commit"
import { usePlan } from "../../../session/usePlan"
import { FilesAndFaults } from "./FilesAndFaults"
import { TechniqueDialog } from "./TechniqueDialog"
import { TechniqueDrawing } from "./TechniqueDrawing"
import { figuresWords, techniqueFigures } from "./techniqueFigures"
import { techniquePicture } from "./techniquePicture"
import { useTechniques } from "./useTechniques"

/** Ways of working, each with its picture and what it comes to on this head: one touch lays it, one undo takes it up. */
export function TechniqueTiles() {
  const plan = usePlan((open) => open)
  const { own } = useTechniques()
  const [read, setRead] = useState<TechniqueChoice | null>(null)
  return (
    <>
      <ul className="technique-list">
        {choicesWith(own).map((choice) => (
          <li key={choice.technique.id}>
            <Tile {...choice} plan={plan} onRead={() => setRead(choice)} />
          </li>
        ))}
      </ul>
      <FilesAndFaults />
      {read && <TechniqueDialog {...read} onClose={() => setRead(null)} />}
    </>
  )
}

type TileProps = TechniqueChoice & { plan: Plan; onRead: () => void }

function Tile({ technique, preset, plan, onRead }: TileProps) {
  const picture = useMemo(() => techniquePicture(technique), [technique])
  const words = useFiguresWords(technique, plan)
  return (
    <>
      <button
        type="button"
        className="technique"
        onClick={() => commit(`Lay the technique “${technique.name}”`, layTechnique(technique))}
      >
        <TechniqueDrawing picture={picture} />
        <span className="technique-name">{technique.name}</span>
        {!preset && <span className="technique-own">Your own</span>}
        <span className="aside">{words}</span>
        <span>{technique.aim}</span>
      </button>
      <button type="button" className="button quiet technique-read" onClick={onRead}>
        Steps, changes
        <span className="unseen"> of {technique.name}</span>
      </button>
    </>
  )
}

/** Worked out again only when what it depends on is another, not at every stroke. */
function useFiguresWords(technique: Technique, plan: Plan) {
  const { head, hair, salon, mixes, timing } = plan
  // biome-ignore lint/correctness/useExhaustiveDependencies: the sections of the plan do not count
  return useMemo(
    () => figuresWords(techniqueFigures(technique, plan)),
    [technique, head, hair, salon, mixes, timing],
  )
}
