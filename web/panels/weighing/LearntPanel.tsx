import { newSalon } from "../../core/document/salon"
import { trustCode } from "../../core/weighing/trust"
import type { WeighingsSeen } from "../../core/weighing/weighingsSeen"
import { usePlan } from "../../session/usePlan"
import { useWords } from "../../session/words"
import { say } from "../../words/say"

const rows = [
  ["lossG", "grams"],
  ["soakGPerG", "grams"],
  ["coatMgPerCm2", "milligrams"],
] as const

/** The three figures before and after weighing, and how far they may be trusted. */
export function LearntPanel({ seen: { start, figures, trust, counted } }: { seen: WeighingsSeen }) {
  const w = useWords().weighing.learnt
  const { learnt } = usePlan((plan) => plan.salon) ?? newSalon()
  return (
    <>
      <p>{say(w.trust, trustCode(trust, counted))}</p>
      <p className="aside">{learnt.length > 0 ? w.byWeighings(learnt) : w.byStart}</p>
      <table className="learnt">
        <thead>
          <tr>
            <th scope="col">{w.figure}</th>
            <th scope="col">{w.start}</th>
            <th scope="col">{w.weighed}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(([name, unit]) => (
            <tr key={name}>
              <th scope="row">{w.names[name]}</th>
              <td>{w[unit](start[name])}</td>
              <td>{w[unit](figures[name])}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  )
}
