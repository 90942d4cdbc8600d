import type { Clearance } from "../../../core/cautions/clearance"
import { useWords } from "../../../session/words"
import { Choices } from "../../fields/Choices"
import { HairFields } from "../measures/HairFields"
import { numberOf, optionOf } from "./consultationOptions"
import { HairNow } from "./HairNow"
import type { PartProps } from "./partProps"
import { StopsHere } from "./StopsHere"
import { StrandTests } from "./StrandTests"

/** The hair as it is: history and level, grey, how much and how long, and what a strand did. */
export function HairStep({ known, write, told }: PartProps & { told: Clearance }) {
  const { goals: said } = useWords().client
  const grey = (share: number | null) => write("set-grey", { greyShare: share })
  return (
    <>
      <HairNow known={known} write={write} told={told} />
      <Choices
        legend={said.grey}
        options={greyOptions(said.greys)}
        value={optionOf(known.greyShare)}
        onChange={(share) => grey(numberOf(share))}
        onClear={() => grey(null)}
      />
      <HairFields />
      <div id="field-strand-tests">
        <StrandTests known={known} write={write} />
        <StopsHere told={told} fields={["strand-tests"]} />
      </div>
    </>
  )
}

/** Keys that look like whole numbers would come first: the shares in their own order. */
const greyOptions = (greys: Readonly<Record<string, string>>) =>
  ["0", "0.1", "0.25", "0.5", "0.75", "1"].map((share) => ({ value: share, label: greys[share] }))
