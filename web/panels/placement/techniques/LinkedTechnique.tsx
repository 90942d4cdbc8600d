import type { Technique } from "../../../../presets/techniques/technique"
import { layTechnique } from "../../../core/edits/lay/layTechnique"
import type { OpenedTechnique } from "../../../core/file/techniqueFile"
import { laidFrom } from "../../../core/technique/techniqueChoices"
import { commit } from "../../../session/commit"
import { takeIn } from "../../../session/ownTechniques"
import { openInto } from "../../../session/planStore"
import { sessionStore } from "../../../session/sessionStore"
import { usePlan } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import { FileProblems } from "../../fields/FileProblems"
import { Modal } from "../../fields/Modal"
import { desk, freshPlan, planTitle } from "../../plans/shelfActions"
import { TechniqueOnHead } from "./TechniqueOnHead"
import "./techniques.css"

type Props = { opened: OpenedTechnique; onClose: () => void }

/** A technique that came as a link: looked at first, and kept or laid only when asked. */
export function LinkedTechnique({ opened, onClose }: Props) {
  const w = useWords().techniques.share
  if (opened.ok) return <Offer technique={opened.technique} onClose={onClose} />
  return (
    <Modal title={w.byLink} onClose={onClose}>
      <FileProblems problems={opened.problems} />
    </Modal>
  )
}

function Offer({ technique, onClose }: { technique: Technique; onClose: () => void }) {
  const { common, techniques: w } = useWords()
  const plan = usePlan((open) => open)
  const thenClose = (work: unknown) => void Promise.resolve(work).then(onClose)
  const lay = () => {
    sessionStore.setState({ screen: "placement" })
    return commit(
      { chapter: "placement", code: "place-technique", name: technique.name },
      layTechnique(technique, laidFrom({ technique, house: null })),
    )
  }
  const layOnNewPlan = async () => {
    openInto(await freshPlan(desk))
    lay()
  }
  return (
    <Modal title={technique.name || w.share.nameless} wide onClose={onClose}>
      <p className="aside">
        {w.share.opened}
        {plan.sections.length > 0 &&
          ` ${w.share.onTop({ plan: planTitle(plan), count: plan.sections.length })}`}
      </p>
      <div className="actions">
        <button type="button" className="button strong" onClick={() => thenClose(takeIn(technique))}>
          {w.own.saveThis}
        </button>
        <button type="button" className="button" onClick={() => thenClose(lay())}>
          {w.panel.placeHere}
        </button>
        {plan.sections.length > 0 && (
          <button type="button" className="button" onClick={() => thenClose(layOnNewPlan())}>
            {w.panel.placeOnNew}
          </button>
        )}
        <button type="button" className="button" onClick={onClose}>
          {common.actions.cancel}
        </button>
      </div>
      <TechniqueOnHead technique={technique} />
    </Modal>
  )
}
