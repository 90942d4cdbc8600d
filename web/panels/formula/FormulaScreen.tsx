import "./formula.css"
import { freeMixLetter, setMix } from "../../core/edits/plan/setMix"
import { commit } from "../../session/commit"
import { usePlan } from "../../session/usePlan"
import { useWords } from "../../session/words"
import { StopsPanel } from "../clearance/StopsPanel"
import { WeighingPanel } from "../weighing/WeighingPanel"
import { BowlsPanel } from "./bowls/BowlsPanel"
import { MixCautions } from "./MixCautions"
import { MixFields } from "./mix/MixFields"
import { ProposedMixes } from "./mix/ProposedMixes"
import { VisitsPanel } from "./mix/VisitsPanel"
import { SheetsPanel } from "./productSheets/SheetsPanel"
import { QuotePanel } from "./QuotePanel"
import { SalonAside } from "./SalonAside"
import { SalonLine } from "./SalonLine"
import { ShelfPanel } from "./ShelfPanel"
import { SwatchHatches } from "./swatch/MixSwatch"
import { TonePanel } from "./tone/TonePanel"

/** What is mixed, how strong, how thick and how much: whether it may be, then the bowls, then what can be changed. */
export function FormulaScreen() {
  const w = useWords().formula
  return (
    <main className="page formula">
      <h1>{w.title}</h1>
      <SwatchHatches />
      <div className="before-mixing">
        <StopsPanel />
        <MixCautions />
      </div>
      <SalonLine />
      <BowlsPanel />
      <VisitsPanel />
      <ProposedMixes />
      <Mixes />
      <TonePanel />
      <WeighingPanel />
      <QuotePanel />
      <section aria-labelledby="salon-title">
        <h2 id="salon-title">{w.stock.salon}</h2>
        <SalonAside />
        <ShelfPanel />
        <SheetsPanel />
      </section>
    </main>
  )
}

/** Each mix in one line, opened to change it. */
function Mixes() {
  const w = useWords().formula.mixing
  const mixes = usePlan((plan) => plan.mixes)
  const letter = freeMixLetter({ mixes })
  return (
    <section className="mixes" aria-labelledby="mixes-title">
      <h2 id="mixes-title">{w.title}</h2>
      <div>
        {mixes.map((mix) => (
          <MixFields key={mix.id} mix={mix} isOnly={mixes.length === 1} />
        ))}
      </div>
      {letter && (
        <div className="actions">
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
        </div>
      )}
    </section>
  )
}
