import { useWords } from "../session/words"

type Props = { text: string; done: number; count: number; onEnd: () => void }

/** How far something long has come, and the way to end it. */
export function SheetProgress({ text, done, count, onEnd }: Props) {
  const { screen } = useWords().sheets
  return (
    <div className="sheet-progress">
      <label>
        {text} <progress value={count > 0 ? done : undefined} max={Math.max(count, 1)} />
      </label>
      <button type="button" className="button" onClick={onEnd}>
        {screen.cancel}
      </button>
    </div>
  )
}
