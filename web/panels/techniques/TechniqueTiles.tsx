import "./techniques.css"
import { isFoil } from "../../../geometry/section/section"
import { extraMin, foilMin } from "../../../presets/pace"
import { type Technique, techniqueOf } from "../../../presets/techniques/technique"
import { techniques } from "../../../presets/techniques/techniques"
import { act } from "../../plan/act"
import { layTechnique, techniqueSections } from "../../plan/edits/layTechnique"
import { countText, gramsNumber } from "../../plan/figureText"
import { figuresOf } from "../../plan/measured"
import type { Plan } from "../../plan/schema"
import { usePlan } from "../../plan/usePlan"
import { usualTiming } from "../../plan/usualTiming"
import { techniquePicture } from "./techniquePicture"

/** Ways of working, each with its picture and what it comes to on this head: one touch lays it, one undo takes it up. */
export function TechniqueTiles() {
  const plan = usePlan((open) => open)
  return (
    <ul className="technique-list">
      {techniques
        .map((preset) => techniqueOf(preset))
        .map((technique) => (
          <li key={technique.id}>
            <Tile technique={technique} plan={plan} />
          </li>
        ))}
    </ul>
  )
}

function Tile({ technique, plan }: { technique: Technique; plan: Plan }) {
  const { viewBox, paths } = techniquePicture(technique)
  return (
    <button
      type="button"
      className="technique"
      onClick={() => act(`Lay the technique “${technique.name}”`, layTechnique(technique))}
    >
      <svg viewBox={viewBox} aria-hidden="true">
        {paths.map((path, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a picture never changes
          <path key={i} {...path} strokeLinecap="round" strokeLinejoin="round" />
        ))}
      </svg>
      <span className="technique-name">{technique.name}</span>
      <span className="aside">{figuresWords(technique, plan)}</span>
      <span>{technique.aim}</span>
    </button>
  )
}

/** Foils, grams and minutes on this head, in words. */
function figuresWords(technique: Technique, plan: Plan) {
  const foils = techniqueSections(technique, plan).filter(isFoil)
  const grams = foils.reduce((sum, foil) => sum + figuresOf(foil, plan).productG.mid, 0)
  const { skill } = plan.timing ?? usualTiming
  const minutes = foils.reduce((sum, { kind }) => sum + foilMin[skill].mid + extraMin[kind].mid, 0)
  return `${countText(foils.length, "foil")}, about ${gramsNumber(grams)} g, ${Math.round(minutes)} min to place`
}
