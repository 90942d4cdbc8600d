import type { Range } from "../../../geometry/hair/tradeFigures"
import { tradeFigures } from "../../../presets/formula/tradeFigures"
import { newSalon } from "../../core/document/salon"
import { numberText } from "../../core/text/numberText"
import { trustWords } from "../../core/weighing/trustWords"
import type { WeighingsSeen } from "../../core/weighing/weighingsSeen"
import { usePlan } from "../../session/usePlan"

const rows = [
  ["lossG", "Stays in each foil", "g"],
  ["soakGPerG", "Soaks in, for each gram of hair", "g"],
  ["coatMgPerCm2", "Coats each cm² of strand", "mg"],
] as const

/** The three figures before and after weighing, and how far they may be trusted. */
export function LearntPanel({ seen: { figures, trust } }: { seen: WeighingsSeen }) {
  const { learnt } = usePlan((plan) => plan.salon) ?? newSalon()
  return (
    <>
      <p>{trustWords(trust)}</p>
      <p className="aside">
        {learnt.length > 0
          ? `This plan goes by what was learnt of ${learnt.map(learntName).join("; ")}.`
          : "Until then this plan goes by the starting figures, which are assumptions."}
      </p>
      <table className="learnt">
        <thead>
          <tr>
            <th scope="col">Figure</th>
            <th scope="col">To start with</th>
            <th scope="col">As weighed</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(([name, words, unit]) => (
            <tr key={name}>
              <th scope="row">{words}</th>
              <td>{rangeText(tradeFigures[name], unit)}</td>
              <td>{rangeText(figures[name], unit)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  )
}

const learntName = ({
  product,
  kind,
  weighings,
}: {
  product: string | null
  kind: string | null
  weighings: number
}) => `${[product, kind].filter(Boolean).join(", ") || "everything"} (${weighings} weighed)`

const rangeText = ({ low, mid, high }: Range, unit: string) =>
  `${numberText(mid)} ${unit} (${numberText(low)} to ${numberText(high)})`
