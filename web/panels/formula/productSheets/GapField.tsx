import { useWords } from "../../../session/words"
import { Choices } from "../../fields/Choices"

type Props = { legend: string; value: boolean | null; onChange: (value: boolean | null) => void }

/** Yes, no, or a gap: the tub does not say. */
export function GapField({ legend, value, onChange }: Props) {
  const { answers } = useWords().formula.productSheets
  return (
    <Choices
      legend={legend}
      options={(["yes", "no", "silent"] as const).map((said) => ({ value: said, label: answers[said] }))}
      value={value === null ? "silent" : value ? "yes" : "no"}
      onChange={(said) => onChange(said === "silent" ? null : said === "yes")}
    />
  )
}
