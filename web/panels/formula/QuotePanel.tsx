import { type QuoteLine, quoteOf } from "../../core/bowls/quote"
import { usePlan } from "../../session/usePlan"
import { useWords } from "../../session/words"

/** What the visit will be asked for, by the salon's own list, before anything is mixed. */
export function QuotePanel() {
  const w = useWords().formula.quote
  const plan = usePlan((open) => open)
  const quote = quoteOf(plan)
  if (!quote) return null
  const isPriced = quote.lines.some(({ amount }) => amount !== null)
  return (
    <section aria-labelledby="quote-title">
      <h2 id="quote-title">{w.title}</h2>
      <p>{w.inTheChair(quote.chairMin)}</p>
      {isPriced ? (
        <dl className="quote">
          {quote.lines.map((line) => (
            <Line key={line.price} line={line} />
          ))}
          <div className="total">
            <dt>{w.total}</dt>
            <dd>{w.money(quote.total)}</dd>
          </div>
        </dl>
      ) : (
        <p className="aside">{w.noPrices}</p>
      )}
    </section>
  )
}

function Line({ line: { price, count, amount } }: { line: QuoteLine }) {
  const w = useWords().formula.quote
  return (
    <div>
      <dt>{w.line[price](count)}</dt>
      <dd>{amount ? w.money(amount) : w.noPrice}</dd>
    </div>
  )
}
