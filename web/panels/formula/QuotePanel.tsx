import type { Range } from "../../../geometry/hair/tradeFigures"
import { type QuoteLine, quoteOf } from "../../core/bowls/quote"
import type { PriceName } from "../../core/document/salon"
import { numberText } from "../../core/text/numberText"
import { usePlan } from "../../session/usePlan"
import { priceWords } from "./priceWords"

/** What the visit will be asked for, by the salon's own list, before anything is mixed. */
export function QuotePanel() {
  const plan = usePlan((open) => open)
  const quote = quoteOf(plan)
  if (!quote) return null
  const isPriced = quote.lines.some(({ amount }) => amount !== null)
  return (
    <section aria-labelledby="quote-title">
      <h2 id="quote-title">Quote</h2>
      <p>In the chair {hoursText(quote.chairMin)}, from the first parting to dry hair.</p>
      {isPriced ? (
        <dl className="quote">
          {quote.lines.map((line) => (
            <Line key={line.price} line={line} />
          ))}
          <div className="total">
            <dt>In all</dt>
            <dd>{moneyText(quote.total)}</dd>
          </div>
        </dl>
      ) : (
        <p className="aside">
          Type your own prices in below, under “Your shelf, scale and prices”, to see what it comes to.
        </p>
      )}
    </section>
  )
}

const Line = ({ line: { price, count, amount } }: { line: QuoteLine }) => (
  <div>
    <dt>
      {priceWords[price]}
      {countWords(price, count)}
    </dt>
    <dd>{amount ? moneyText(amount) : "no price"}</dd>
  </div>
)

const countWords = (price: PriceName, { low, high }: Range) => {
  if (price === "placement") return ""
  return price === "chairHour" ? `, ${numberText(low, 1)} to ${numberText(high, 1)}` : `, ${numberText(high)}`
}

const moneyText = ({ low, high }: Range) => {
  const [least, most] = [low.toFixed(2), high.toFixed(2)]
  return least === most ? most : `${least} to ${most}`
}

const hoursText = ({ low, high }: Range) => `${hourText(low)} to ${hourText(high)}`
const hourText = (minutes: number) => {
  const whole = Math.round(minutes / 5) * 5
  const hours = Math.floor(whole / 60)
  return `${hours > 0 ? `${hours} h ` : ""}${whole % 60} min`
}
