import { Choices } from "../../fields/Choices"

type Props = { legend: string; value: boolean | null; onChange: (value: boolean | null) => void }

const options = [
  { value: "yes", label: "Yes" },
  { value: "no", label: "No" },
  { value: "silent", label: "Not stated" },
] as const

/** Yes, no, or a gap: the tub does not say. */
export const GapField = ({ legend, value, onChange }: Props) => (
  <Choices
    legend={legend}
    options={options}
    value={value === null ? "silent" : value ? "yes" : "no"}
    onChange={(said) => onChange(said === "silent" ? null : said === "yes")}
  />
)
