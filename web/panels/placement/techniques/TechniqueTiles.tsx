import "./techniques.css"
import { useMemo, useState } from "react"
import type { Technique } from "../../../../presets/techniques/technique"
import type { Plan } from "../../../core/document/schema"
import { layTechnique } from "../../../core/edits/lay/layTechnique"
import { choicesWith, laidFrom, type TechniqueChoice } from "../../../core/technique/techniqueChoices"
import { commit } from "../../../session/commit"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import { houseTechnique } from "../../../words/every/houseTechnique"
import { PlanDrawing } from "../../heads/PlanDrawing"
import { FilesAndFaults } from "./FilesAndFaults"
import { TechniqueDialog } from "./TechniqueDialog"
import { techniqueFigures } from "./techniqueFigures"
import { techniquePicture } from "./techniquePicture"
import { useTechniques } from "./useTechniques"

/** Ways of working, each with its picture and what it comes to on this head: one touch lays it, one undo takes it up. */
export function TechniqueTiles() {
  const plan = usePlan((open) => open)
  const { techniques: words } = useWords()
  const { own } = useTechniques()
  const choices = useMemo(() => choicesWith(own, (house) => houseTechnique(house, words)), [own, words])
  const [read, setRead] = useState<TechniqueChoice | null>(null)
  return (
    <>
      <ul className="technique-list">
        {choices.map((choice) => (
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

function Tile({ technique, house, plan, onRead }: TileProps) {
  const w = useWords().techniques.panel
  const picture = useMemo(() => techniquePicture(technique), [technique])
  const figures = useFigures(technique, plan)
  return (
    <>
      <button
        type="button"
        className="technique"
        onClick={() =>
          commit(
            { chapter: "placement", code: "place-technique", name: technique.name },
            layTechnique(technique, laidFrom({ technique, house })),
          )
        }
      >
        <PlanDrawing picture={picture} />
        <span className="technique-name">{technique.name}</span>
        {!house && <span className="technique-own">{w.own}</span>}
        <span className="aside">{w.comesTo(figures)}</span>
        <span>{technique.aim}</span>
      </button>
      <button
        type="button"
        className="button quiet technique-read"
        aria-label={w.readOf(technique.name)}
        onClick={onRead}
      >
        {w.read}
      </button>
    </>
  )
}

/** Worked out again only when what it depends on is another, not at every stroke. */
function useFigures(technique: Technique, plan: Plan) {
  const { head, hair, salon, mixes, timing } = plan
  // biome-ignore lint/correctness/useExhaustiveDependencies: the sections of the plan do not count
  return useMemo(() => techniqueFigures(technique, plan), [technique, head, hair, salon, mixes, timing])
}
