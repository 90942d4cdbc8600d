import { type ReactNode, useMemo, useState } from "react"
import type { Technique } from "../../../../presets/techniques/technique"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import { PlanDrawing } from "../../heads/PlanDrawing"
import { HeadTried, planHead, withHead } from "./HeadTried"
import { TechniqueReading } from "./TechniqueReading"
import { techniqueFigures } from "./techniqueFigures"
import { techniquePicture } from "./techniquePicture"

type Props = { technique: Technique; children?: ReactNode }

/** A technique large: on a head, what it comes to there, and beside it how it is done. */
export function TechniqueOnHead({ technique, children }: Props) {
  const { techniques } = useWords()
  const plan = usePlan((open) => open)
  const [tried, setTried] = useState(planHead)
  const onHead = useMemo(() => withHead(plan, tried), [plan, tried])
  const picture = useMemo(() => techniquePicture(technique, onHead), [technique, onHead])
  const figures = useMemo(() => techniqueFigures(technique, onHead), [technique, onHead])
  return (
    <div className="technique-large">
      <div className="technique-side">
        <PlanDrawing picture={picture} />
        <p className="technique-figures" aria-live="polite">
          {techniques.panel.comesTo(figures)}
        </p>
        {children}
        <HeadTried tried={tried} onTry={setTried} />
      </div>
      <TechniqueReading technique={technique} />
    </div>
  )
}
