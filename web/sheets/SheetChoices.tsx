import { type PaperName, papers } from "./layout/page"

type Props = {
  paper: PaperName
  onPaper: (paper: PaperName) => void
  mirror: boolean
  onMirror: (mirror: boolean) => void
}

/** The paper in the printer, and from which side the front is looked at. */
export function SheetChoices({ paper, onPaper, mirror, onMirror }: Props) {
  return (
    <>
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
