import type { Figure } from "../../../presets/figure/figure"
import type { Limit } from "../../core/document/limits"
import { capital } from "../../core/text/capital"
import { Choices } from "./Choices"
import { wordFor, wordsOf } from "./figureWords"
import { NumberField } from "./NumberField"

type Props<Word extends string> = {
  name: string
  unit: string
  words: Readonly<Record<Word, Figure>>
  value: number
  limit: Limit
  step: number
  onCommit: (value: number) => void
}

/** A figure by one of a few words, or exactly by its number. */
export function WordOrNumber<Word extends string>({
  name,
  unit,
  words,
  value,
  limit,
  step,
  onCommit,
}: Props<Word>) {
  return (
    <div className="word-or-number">
      <Choices
        legend={name}
        options={wordsOf(words).map((word) => ({
          value: word,
          label: `${capital(word)} ${words[word].value}`,
        }))}
        value={wordFor(words, value)}
        onChange={(word) => onCommit(words[word].value)}
      />
      <NumberField name={name} unit={unit} value={value} range={limit} step={step} onCommit={onCommit} />
    </div>
  )
}
