import type { Technique } from "../../../../presets/techniques/technique"
import { layTechnique } from "../../../core/edits/lay/layTechnique"
import type { OpenedTechnique } from "../../../core/file/techniqueFile"
import { countText } from "../../../core/text/figureText"
import { commit } from "../../../session/commit"
import { takeIn } from "../../../session/ownTechniques"
import { openInto } from "../../../session/planStore"
import { sessionStore } from "../../../session/sessionStore"
import { usePlan } from "../../../session/usePlan"
import { FileProblems } from "../../fields/FileProblems"
import { Modal } from "../../fields/Modal"
import { desk, freshPlan, planTitle } from "../../plans/shelfActions"
import { TechniqueOnHead } from "./TechniqueOnHead"
import "./techniques.css"

type Props = { opened: OpenedTechnique; onClose: () => void }

/** A technique that came as a link: looked at first, and kept or laid only when asked. */
export function LinkedTechnique({ opened, onClose }: Props) {
  if (opened.ok) return <Offer technique={opened.technique} onClose={onClose} />
  return (
    <Modal title="A technique by link" onClose={onClose}>
      <FileProblems problems={opened.problems} />
    </Modal>
  )
}

function Offer({ technique, onClose }: { technique: Technique; onClose: () => void }) {
  const plan = usePlan((open) => open)
  const thenClose = (work: unknown) => void Promise.resolve(work).then(onClose)
  const lay = () => {
    sessionStore.setState({ screen: "placement" })
    return commit(`Lay the technique “${technique.name}”`, layTechnique(technique))
  }
  const layOnNewPlan = async () => {
    openInto(await freshPlan(desk))
    lay()
  }
  return (
    <Modal title={technique.name || "A technique without a name"} wide onClose={onClose}>
      <p className="aside">
        Somebody sent you this technique. Nothing is kept or changed until you choose.
        {plan.sections.length > 0 &&
          ` “${planTitle(plan)}” has ${countText(plan.sections.length, "section")} already: laid on this head, the technique comes on top of them.`}
      </p>
      <div className="actions">
        <button type="button" className="button strong" onClick={() => thenClose(takeIn(technique))}>
          Keep this technique
        </button>
        <button type="button" className="button" onClick={() => thenClose(lay())}>
          Lay it on this head
        </button>
        {plan.sections.length > 0 && (
          <button type="button" className="button" onClick={() => thenClose(layOnNewPlan())}>
            Lay it on a new plan
          </button>
        )}
        <button type="button" className="button" onClick={onClose}>
          Not now
        </button>
      </div>
      <TechniqueOnHead technique={technique} />
    </Modal>
  )
}
