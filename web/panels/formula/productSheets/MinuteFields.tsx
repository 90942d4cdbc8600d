import { heatHabits } from "../../../../presets/timing/pace"
import { limits } from "../../../core/fields/limits"
import { useWords } from "../../../session/words"
import { NumberField } from "../../fields/NumberField"
import { GapField } from "./GapField"
import type { SheetPart } from "./sheetPart"

/** How long the tub lets it stay, when it is first checked, and what may be done with it. */
export function MinuteFields({ draft, edit }: SheetPart) {
  const w = useWords().formula.productSheets
  return (
    <>
      <div className="pairs">
        <Minutes
          name={w.longest}
          minutes={draft.longestMin}
          onChange={(longestMin) => edit({ longestMin })}
        />
        <Minutes
          name={w.potLife}
          minutes={draft.potLifeMin}
          onChange={(potLifeMin) => edit({ potLifeMin })}
        />
        <Minutes
          name={w.firstCheck}
          minutes={draft.firstLookMin ?? null}
          onChange={(firstLookMin) => edit({ firstLookMin })}
        />
      </div>
      <HeatFields draft={draft} edit={edit} />
      <div className="with-fields">
        <GapField legend={w.onScalp} value={draft.onScalp} onChange={(onScalp) => edit({ onScalp })} />
        <GapField
          legend={w.patchTest}
          value={draft.alertTest}
          onChange={(alertTest) => edit({ alertTest })}
        />
      </div>
    </>
  )
}

type MinutesProps = { name: string; minutes: number | null; onChange: (minutes: number | null) => void }

function Minutes({ name, minutes, onChange }: MinutesProps) {
  const { units } = useWords().common
  return (
    <NumberField
      name={name}
      unit={units.min}
      value={minutes ?? 0}
      isUnset={minutes === null}
      range={limits.heldMin}
      onClear={() => onChange(null)}
      onCommit={onChange}
    />
  )
}

function HeatFields({ draft: { heatMin }, edit }: SheetPart) {
  const { common, formula } = useWords()
  const w = formula.productSheets
  return (
    <div className="with-fields">
      <GapField
        legend={w.heat}
        value={heatMin === null ? null : heatMin > 0}
        onChange={(allowed) => edit({ heatMin: allowed === null ? null : allowed ? heatHabits.mostMin : 0 })}
      />
      {heatMin !== null && heatMin > 0 && (
        <NumberField
          name={w.heatMost}
          unit={common.units.min}
          value={heatMin}
          range={limits.sheetHeatMin}
          onCommit={(minutes) => edit({ heatMin: minutes })}
        />
      )}
    </div>
  )
}
