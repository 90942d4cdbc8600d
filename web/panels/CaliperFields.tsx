import { headMeasureSources } from "../../presets/headSizes"
import { limits } from "../plan/limits"
import type { CaliperSize } from "./headSizeChoices"
import { MeasureField } from "./MeasureField"

type Props = { size: CaliperSize; onCommit: (change: Partial<CaliperSize>) => void }

/** Three straight measures on the skin. */
export function CaliperFields({ size, onCommit }: Props) {
  return (
    <div className="measures">
      <MeasureField
        name="Length"
        hint="from between the brows to the back of the head"
        unit="mm"
        mm={size.lengthMm}
        limit={limits.lengthMm}
        usual={headMeasureSources.lengthMm}
        onCommit={(lengthMm) => onCommit({ lengthMm })}
      />
      <MeasureField
        name="Breadth"
        hint="where it is widest, above the ears"
        unit="mm"
        mm={size.breadthMm}
        limit={limits.breadthMm}
        usual={headMeasureSources.breadthMm}
        onCommit={(breadthMm) => onCommit({ breadthMm })}
      />
      <MeasureField
        name="Height"
        hint="from the ear hole to the top, upright"
        unit="mm"
        mm={size.heightMm}
        limit={limits.heightMm}
        usual={headMeasureSources.heightMm}
        onCommit={(heightMm) => onCommit({ heightMm })}
      />
    </div>
  )
}
