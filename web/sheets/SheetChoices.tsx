import { type PaperName, paperNames } from "../../presets/sheets/papers"
import { type SheetName, sheetNames } from "../../presets/sheets/sheetNames"
import { useWords } from "../session/words"
import { type Language, languageNames, languages } from "../words/every/languages"
import { sheetKinds } from "./sheetKinds"

type Props = {
  sheet: SheetName
  onSheet: (sheet: SheetName) => void
  paper: PaperName
  onPaper: (paper: PaperName) => void
  language: Language
  onLanguage: (language: Language) => void
  mirror: boolean
  onMirror: (mirror: boolean) => void
}

const fronts = { facing: false, mirror: true } as const

/** Which sheet; and, folded in one line, the paper in the printer, who reads it, and from which side the front is looked at. */
export function SheetChoices(props: Props) {
  const { sheet, paper, language, mirror } = props
  const { screen, names } = useWords().sheets
  const { hasFront } = sheetKinds[sheet]
  const front = mirror ? "mirror" : "facing"
  return (
    <>
      <Choices
        legend={screen.sheet}
        group="sheet"
        options={sheetNames.map((name) => [name, names[name]])}
        chosen={sheet}
        onChoose={props.onSheet}
      />
      <details className="sheet-settings">
        <summary>
          <span>
            {[screen.papers[paper], languages[language], ...(hasFront ? [screen.fronts[front]] : [])].join(
              ", ",
            )}
          </span>
          <span className="change">{screen.change}</span>
        </summary>
        <div className="sheets-choices">
          <Choices
            legend={screen.paper}
            group="paper"
            options={paperNames.map((name) => [name, screen.papers[name]])}
            chosen={paper}
            onChoose={props.onPaper}
          />
          <Choices
            legend={screen.language}
            group="sheet-language"
            options={languageNames.map((name) => [name, languages[name]])}
            chosen={language}
            onChoose={props.onLanguage}
          />
          {hasFront && (
            <Choices
              legend={screen.front}
              group="mirror"
              options={(["facing", "mirror"] as const).map((name) => [name, screen.fronts[name]])}
              chosen={front}
              onChoose={(name) => props.onMirror(fronts[name])}
            />
          )}
        </div>
      </details>
    </>
  )
}

type ChoicesProps<T extends string> = {
  legend: string
  group: string
  options: readonly (readonly [value: T, label: string])[]
  chosen: T
  onChoose: (value: T) => void
}

const Choices = <T extends string>({ legend, group, options, chosen, onChoose }: ChoicesProps<T>) => (
  <fieldset>
    <legend>{legend}</legend>
    <div className="choices">
      {options.map(([value, label]) => (
        <label key={value}>
          <input type="radio" name={group} checked={value === chosen} onChange={() => onChoose(value)} />
          <span>{label}</span>
        </label>
      ))}
    </div>
  </fieldset>
)
