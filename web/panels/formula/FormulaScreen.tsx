import "./formula.css"
import { mixingCautions } from "../../../presets/formula/cautions"
import { freeMixLetter, setMix } from "../../core/edits/plan/setMix"
import { commit } from "../../session/commit"
import { usePlan } from "../../session/usePlan"
import { WeighingPanel } from "../weighing/WeighingPanel"
import { MixFields } from "./MixFields"
import { SwatchHatches } from "./MixSwatch"
import { ProposedMixes } from "./ProposedMixes"
import { SheetsPanel } from "./productSheets/SheetsPanel"
import { QuotePanel } from "./QuotePanel"
import { SalonLine } from "./SalonLine"
import { ShelfPanel } from "./ShelfPanel"
import { StopsPanel } from "./StopsPanel"
import { TonePanel } from "./TonePanel"

/** What is mixed, how strong, how thick and how much. */
export function FormulaScreen() {
  const mixes = usePlan((plan) => plan.mixes)
  return (
    <main className="page mixture">
      <h1>Mixture</h1>
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
        <h2 id="mixing-title">Before you mix</h2>
        <ul className="cautions">
          {mixingCautions.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      </section>
      <WeighingPanel />
      <section aria-labelledby="salon-title">
        <h2 id="salon-title">Your salon</h2>
        <ShelfPanel />
        <SheetsPanel />
      </section>
    </main>
  )
}

function AddMix() {
  const mixes = usePlan((plan) => plan.mixes)
  const letter = freeMixLetter({ mixes })
  if (!letter) return null
  return (
    <button
      type="button"
      className="button"
      onClick={() => commit(`Add mix ${letter}`, setMix({ ...mixes[mixes.length - 1], id: letter }))}
    >
      Add mix {letter}
    </button>
  )
}
