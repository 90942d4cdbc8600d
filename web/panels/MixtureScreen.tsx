import { mixingCautions } from "../../presets/cautions"
import { act } from "../plan/act"
import { freeMixLetter, setMix } from "../plan/edits/setMix"
import { usePlan } from "../plan/usePlan"
import { MixFields } from "./MixFields"
import { StopsPanel } from "./StopsPanel"
import { TonePanel } from "./TonePanel"

/** What is mixed, how strong, how thick and how much. */
export function MixtureScreen() {
  const mixes = usePlan((plan) => plan.mixes)
  const letter = freeMixLetter({ mixes })
  return (
    <main className="page mixture">
      <h1>Mixture</h1>
      <StopsPanel />
      {mixes.map((mix) => (
        <MixFields key={mix.id} mix={mix} isOnly={mixes.length === 1} />
      ))}
      {letter && (
        <button
          type="button"
          className="button"
          onClick={() => act(`Add mix ${letter}`, setMix({ ...mixes[mixes.length - 1], id: letter }))}
        >
          Add mix {letter}
        </button>
      )}
      <TonePanel />
      <section aria-labelledby="mixing-title">
        <h2 id="mixing-title">Before you mix</h2>
        <ul className="cautions">
          {mixingCautions.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      </section>
    </main>
  )
}
