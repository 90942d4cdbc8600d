import "./formula.css"
import { mixingCautions } from "../../../presets/formula/cautions"
import { freeMixLetter, setMix } from "../../core/edits/plan/setMix"
import { commit } from "../../session/commit"
import { usePlan } from "../../session/usePlan"
import { useWords } from "../../session/words"
import { StopsPanel } from "../clearance/StopsPanel"
import { WeighingPanel } from "../weighing/WeighingPanel"
import { MixFields } from "./MixFields"
import { SwatchHatches } from "./MixSwatch"
import { ProposedMixes } from "./ProposedMixes"
import { SheetsPanel } from "./productSheets/SheetsPanel"
import { QuotePanel } from "./QuotePanel"
import { SalonLine } from "./SalonLine"
import { ShelfPanel } from "./ShelfPanel"
import { TonePanel } from "./TonePanel"

/** What is mixed, how strong, how thick and how much. */
export function FormulaScreen() {
  const w = useWords().formula
  const mixes = usePlan((plan) => plan.mixes)
  return (
    <main className="page formula">
      <h1>{w.title}</h1>
      <SwatchHatches />
      <SalonLine />
      <StopsPanel />
      <ProposedMixes />
      {mixes.map((mix) => (
        <MixFields key={mix.id} mix={mix} isOnly={mixes.length === 1} />
      ))}
      <AddMix />
      <TonePanel />
      <QuotePanel />
      <section aria-labelledby="mixing-title">
        <h2 id="mixing-title">{w.before}</h2>
        <ul className="cautions">
          {mixingCautions.map((caution) => (
            <li key={caution}>{w.caution[caution]}</li>
          ))}
        </ul>
      </section>
      <WeighingPanel />
      <section aria-labelledby="salon-title">
        <h2 id="salon-title">{w.stock.salon}</h2>
        <ShelfPanel />
        <SheetsPanel />
      </section>
    </main>
  )
}

function AddMix() {
  const w = useWords().formula.mixing
  const mixes = usePlan((plan) => plan.mixes)
  const letter = freeMixLetter({ mixes })
  if (!letter) return null
  return (
    <button
      type="button"
      className="button"
      onClick={() =>
        commit(
          { chapter: "formula", code: "add-mix", mix: letter },
          setMix({ ...mixes[mixes.length - 1], id: letter }),
        )
      }
    >
      {w.add(letter)}
    </button>
  )
}
