import "./mixture.css"
import { mixingCautions } from "../../../presets/cautions"
import { act } from "../../plan/act"
import { freeMixLetter, setMix } from "../../plan/edits/setMix"
import { usePlan } from "../../plan/usePlan"
import { SheetsPanel } from "../productSheets/SheetsPanel"
import { ScalePanel } from "../scale/ScalePanel"
import { MixFields } from "./MixFields"
import { SwatchHatches } from "./MixSwatch"
import { ProposedMixes } from "./ProposedMixes"
import { QuotePanel } from "./QuotePanel"
import { SalonLine } from "./SalonLine"
import { ShelfPanel } from "./ShelfPanel"
import { StopsPanel } from "./StopsPanel"
import { TonePanel } from "./TonePanel"

/** What is mixed, how strong, how thick and how much. */
export function MixtureScreen() {
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
      <ScalePanel />
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
      onClick={() => act(`Add mix ${letter}`, setMix({ ...mixes[mixes.length - 1], id: letter }))}
    >
      Add mix {letter}
    </button>
  )
}
