import { mixingCautions } from "../../../presets/formula/cautions"
import { useWords } from "../../session/words"

/** What comes before every mix: three lines, and the rest behind one. */
export function MixCautions() {
  const w = useWords().formula
  const line = (caution: (typeof mixingCautions)[number]) => <li key={caution}>{w.caution[caution]}</li>
  return (
    <section aria-labelledby="mixing-title">
      <h2 id="mixing-title">{w.before}</h2>
      <ul className="cautions">{mixingCautions.slice(0, shown).map(line)}</ul>
      <details>
        <summary>{w.allCautions}</summary>
        <ul className="cautions">{mixingCautions.slice(shown).map(line)}</ul>
      </details>
    </section>
  )
}

const shown = 3
