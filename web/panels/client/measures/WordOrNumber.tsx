import type { Figure } from "../../../../presets/figure/figure"
import type { Limit } from "../../../core/fields/limits"
import { useWords } from "../../../session/words"
import { Choices } from "../../fields/Choices"
import { NumberField } from "../../fields/NumberField"
import { wordFor, wordsOf } from "./wordForFigure"

type Props<Word extends string> = {
  name: string
  unit: string
  figures: Readonly<Record<Word, Figure>>
  words: Readonly<Record<Word, string>>
  value: number
  limit: Limit
  step: number
  onCommit: (value: number) => void
}

/** A figure by one of a few words, or exactly by its number. */
export function WordOrNumber<Word extends string>({
  name,
  unit,
  figures,
  words,
  value,
  limit,
  step,
  onCommit,
}: Props<Word>) {
  const { measures: said } = useWords().client
  return (
    <div className="word-or-number">
      <Choices
        legend={name}
        options={wordsOf(figures).map((word) => ({
          value: word,
          label: said.withFigure(words[word], figures[word].value),
        }))}
        value={wordFor(figures, value)}
        onChange={(word) => onCommit(figures[word].value)}
      />
      <NumberField name={name} unit={unit} value={value} range={limit} step={step} onCommit={onCommit} />
    </div>
  )
}
