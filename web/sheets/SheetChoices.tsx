import type { SheetName } from "../session/sessionStore"
import { type PaperName, papers } from "./pens/page"
import { sheetKinds, sheetNames } from "./sheetKinds"

type Props = {
  sheet: SheetName
  onSheet: (sheet: SheetName) => void
  paper: PaperName
  onPaper: (paper: PaperName) => void
  mirror: boolean
  onMirror: (mirror: boolean) => void
}

/** Which sheet, the paper in the printer, and from which side the front is looked at. */
export function SheetChoices({ sheet, onSheet, paper, onPaper, mirror, onMirror }: Props) {
  return (
    <>
      <fieldset>
        <legend>Sheet</legend>
        <div className="choices">
          {sheetNames.map((name) => (
            <Choice
              key={name}
              group="sheet"
              label={sheetKinds[name].name}
              isChosen={name === sheet}
              onChoose={() => onSheet(name)}
            />
          ))}
        </div>
      </fieldset>
      <fieldset>
        <legend>Paper</legend>
        <div className="choices">
          {(Object.keys(papers) as PaperName[]).map((name) => (
            <Choice
              key={name}
              group="paper"
              label={papers[name].name}
              isChosen={name === paper}
              onChoose={() => onPaper(name)}
            />
          ))}
        </div>
      </fieldset>
      {sheetKinds[sheet].hasFront && (
        <fieldset>
          <legend>Front view</legend>
          <div className="choices">
            <Choice
              group="mirror"
              label="As you face the client"
              isChosen={!mirror}
              onChoose={() => onMirror(false)}
            />
            <Choice
              group="mirror"
              label="As seen in the mirror"
              isChosen={mirror}
              onChoose={() => onMirror(true)}
            />
          </div>
        </fieldset>
      )}
    </>
  )
}

type ChoiceProps = { group: string; label: string; isChosen: boolean; onChoose: () => void }

const Choice = ({ group, label, isChosen, onChoose }: ChoiceProps) => (
  <label>
    <input type="radio" name={group} checked={isChosen} onChange={onChoose} />
    <span>{label}</span>
  </label>
)
