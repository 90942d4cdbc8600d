import type { DueCall } from "./dueCalls"

/** A call in the fewest words: "Foil 3: off now, 1:20 past its longest time." */
export function callWords({ kind, stage, foils, inMs, bowl }: DueCall): string {
  const who = whoWords(foils)
  const clock = clockText(Math.abs(inMs))
  if (bowl)
    return stage === "ahead"
      ? `${bowlName(bowl)}: use up within ${clock}`
      : `${bowlName(bowl)}: ${clock} past its pot life, mix it afresh`
  if (kind === "heat-off") return stage === "ahead" ? `Heat: off in ${clock}` : `Heat: off now, ${clock} over`
  if (kind === "take-off") return `${who}: take off now, the last look said stop`
  if (kind === "limit")
    return stage === "ahead"
      ? `${who}: longest time in ${clock}`
      : foils.length === 1
        ? `${who}: off now, ${clock} past its longest time`
        : `${who}: off now, up to ${clock} past their longest time`
  return stage === "ahead"
    ? `${who}: look in ${clock}`
    : stage === "now"
      ? `${who}: look now`
      : `${who}: look now, ${clock} late`
}

/** Numbers of the map in the order given, three and more that follow each other as a span: "Foils 1 to 5, 8". */
function whoWords(foils: readonly number[]): string {
  const spans: [number, number][] = []
  for (const number of foils) {
    const last = spans.at(-1)
    if (last && last[1] === number - 1) last[1] = number
    else spans.push([number, number])
  }
  const said = spans.map(([from, to]) =>
    to - from > 1 ? `${from} to ${to}` : from === to ? from : `${from}, ${to}`,
  )
  return `${foils.length === 1 ? "Foil" : "Foils"} ${said.join(", ")}`
}

const bowlName = ({ at, mix }: NonNullable<DueCall["bowl"]>) => `Bowl ${at + 1} of mix ${mix}`

/** What is said once, when a call comes up or becomes more urgent: without the seconds that would go on changing. */
export function spokenCall({ kind, stage, foils, bowl }: DueCall): string {
  const who = whoWords(foils)
  if (bowl)
    return `${bowlName(bowl)}: ${stage === "ahead" ? "use it up soon" : "past its pot life, mix it afresh"}.`
  if (kind === "heat-off") return stage === "ahead" ? "Heat off soon." : "Heat off now, then look."
  if (kind === "take-off") return `${who}: take off now.`
  if (kind === "limit")
    return stage === "ahead" ? `${who}: longest time soon.` : `${who}: off now, past its longest time.`
  return stage === "ahead" ? `${who}: look soon.` : `${who}: look now.`
}

/** Minutes and seconds: "12:05". */
export function clockText(ms: number): string {
  const seconds = Math.floor(ms / 1000)
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")}`
}
