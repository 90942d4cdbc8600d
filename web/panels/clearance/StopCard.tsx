import type { Finding } from "../../core/cautions/cautions"
import { newConsultation } from "../../core/document/consultation"
import { goToField } from "../../session/clearance/fieldWanted"
import { usePlan } from "../../session/usePlan"
import { useWords } from "../../session/words"
import { say } from "../../words/say"
import { Authority } from "./Authority"
import { LetterForm } from "./LetterForm"
import { OverrideForm } from "./OverrideForm"
import type { Settle } from "./settle"

type Props = { finding: Finding; settle: Settle }

/** A stop with its one way out: a reason where the colourist decides, a doctor's letter, or another plan. */
export function StopCard({ finding, settle }: Props) {
  const { why, panel } = useWords().cautions
  return (
    <div className="conflict">
      <p>
        <strong>{say(why, finding.why)}</strong>
      </p>
      <p>
        <Authority finding={finding} />
      </p>
      {finding.lapsed && <p>{panel.wasOverridden(finding.lapsed)}</p>}
      {!finding.passable && <p>{finding.letter ? panel.ways.letter : panel.ways.plan}</p>}
      {finding.passable && <OverrideForm finding={finding} settle={settle} />}
      {finding.letter && <LetterForm rule={finding.rule} settle={settle} />}
      {finding.field !== "formula" && (
        <div className="actions">
          <button type="button" className="button" onClick={() => goToField(finding.field)}>
            {panel.toAnswer}
          </button>
        </div>
      )}
    </div>
  )
}

/** A stop that was overridden, or that a letter answers, stays in sight, with its reason and a way back. */
export function SettledStop({ finding: { why, pass, answered }, settle }: Props) {
  const { why: found, panel } = useWords().cautions
  const { passes, letters } = usePlan((plan) => plan.consultation) ?? newConsultation()
  const takeBack = () =>
    pass
      ? settle("undo-override", { passes: passes.filter((each) => each !== pass) })
      : settle("remove-letter", { letters: letters.filter((each) => each !== answered) })
  return (
    <div className="conflict settled">
      <p>{say(found, why)}</p>
      <p>
        <strong>
          {pass && panel.overridden(pass.by, pass.reason)}
          {answered && panel.answered(answered.from, answered.dated)}
        </strong>
      </p>
      <div className="actions">
        <button type="button" className="button" onClick={takeBack}>
          {pass ? panel.undo : panel.removeLetter}
        </button>
      </div>
    </div>
  )
}
