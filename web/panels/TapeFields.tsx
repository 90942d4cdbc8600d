import { headMeasureSources } from "../../presets/headSizes"
import { limits } from "../plan/limits"
import type { TapeSize } from "./headSizeChoices"
import { MeasureField } from "./MeasureField"

type Props = { size: TapeSize; onCommit: (change: Partial<TapeSize>) => void }

/** The three tapes that take half a minute, laid over the hair. */
export function TapeFields({ size, onCommit }: Props) {
  return (
    <div className="measures">
      <MeasureField
        name="Around"
        hint="over the brows and round the back"
        unit="cm"
        mm={size.aroundMm}
        limit={limits.aroundMm}
        usual={headMeasureSources.aroundMm}
        onCommit={(aroundMm) => onCommit({ aroundMm })}
      />
      <MeasureField
        name="Over the top"
        hint="from the front of one ear hole to the other"
        unit="cm"
        mm={size.overMm}
        limit={limits.overMm}
        usual={headMeasureSources.overMm}
        onCommit={(overMm) => onCommit({ overMm })}
      />
      <MeasureField
        name="Front to nape"
        hint="from the front hairline to the hollow of the nape"
        unit="cm"
        mm={size.frontToNapeMm}
        limit={limits.frontToNapeMm}
        usual={headMeasureSources.frontToNapeMm}
        onCommit={(frontToNapeMm) => onCommit({ frontToNapeMm })}
      />
    </div>
  )
}
