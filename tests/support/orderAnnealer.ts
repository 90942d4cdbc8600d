import type { Service, TimedFoil } from "../../web/core/schedule/scheduleInput"
import { readySpreadMin } from "../../web/core/schedule/solveOrder"
import { groupBy } from "./groupBy"

/**
 * The closest arrangement that long simulated annealing finds (Kirkpatrick, Gelatt, Vecchi, Science 1983;220:671): a
 * second way to the same goal, that shares with the solver nothing but the clock that says how far apart foils are ready.
 */
export type Annealing = { runs: number; steps: number; seed: number }

/** A working section as it may be placed: all its foils in the mix they have, or all in a weaker one that is ready in time. */
type Part = { options: readonly (readonly TimedFoil[])[] }
type State = { order: number[]; option: number[]; weakened: number }

export function annealedMin(service: Service, { runs, steps, seed }: Annealing): number {
  const parts = partsOf(service)
  const random = generator(seed)
  let least = readySpreadMin(service)
  for (let run = 0; run < runs; run++) least = Math.min(least, anneal(service, parts, steps, random))
  return least
}

function anneal(service: Service, parts: readonly Part[], steps: number, random: () => number): number {
  const costOf = (state: State) => readySpreadMin({ ...service, foils: laid(parts, state), bowls: null })
  let state: State = {
    order: shuffled(parts.length, random),
    option: parts.map(() => 1),
    weakened: Math.floor(random() * (parts.length + 1)),
  }
  let cost = costOf(state)
  let least = cost
  for (let step = 0; step < steps; step++) {
    const warmth = 6 * (1 - step / steps) ** 2 + 0.02
    const next = neighbour(parts, state, random)
    const then = costOf(next)
    if (then > cost && random() >= Math.exp((cost - then) / warmth)) continue
    state = next
    cost = then
    least = Math.min(least, cost)
  }
  return least
}

/** The first so many sections are weaker, as far as they can be at all; the first that cannot ends that. */
function laid(parts: readonly Part[], { order, option, weakened }: State): TimedFoil[] {
  const foils: TimedFoil[] = []
  let mayWeaken = true
  order.forEach((part, place) => {
    const { options } = parts[part]
    mayWeaken &&= place < weakened && options.length > 1
    foils.push(...options[mayWeaken ? 1 + ((option[part] - 1) % (options.length - 1)) : 0])
  })
  return foils
}

function neighbour(parts: readonly Part[], state: State, random: () => number): State {
  const pick = () => Math.floor(random() * parts.length)
  const kind = random()
  if (kind < 0.2) return { ...state, weakened: Math.floor(random() * (parts.length + 1)) }
  if (kind < 0.35) {
    const part = pick()
    const most = Math.max(1, parts[part].options.length - 1)
    return { ...state, option: state.option.with(part, 1 + Math.floor(random() * most)) }
  }
  const [from, to] = [pick(), pick()]
  if (kind < 0.65) {
    const order = state.order.with(from, state.order[to]).with(to, state.order[from])
    return { ...state, order }
  }
  return { ...state, order: state.order.toSpliced(from, 1).toSpliced(to, 0, state.order[from]) }
}

function partsOf({ foils, mixes }: Service): Part[] {
  const strength = new Map(mixes.map(({ id, onHeadPercent }) => [id, onHeadPercent]))
  const of = (id: string) => strength.get(id) ?? 0
  const elsewhere = foils.filter(({ zone }) => zone !== "hairline").map(({ mix }) => of(mix))
  const most = elsewhere.length > 0 ? Math.max(...elsewhere) : Number.POSITIVE_INFINITY
  return [...groupBy(foils, ({ group }) => group).values()].map((own) => {
    const isHeld = (option: readonly TimedFoil[]) =>
      option.every(({ zone, mix }) => zone !== "hairline" || of(mix) <= most)
    const weaker = mixes
      .filter(({ id }) =>
        own.every(
          ({ mix, readyMin, limitMin }) => of(id) < of(mix) && (readyMin[id]?.mid ?? Infinity) <= limitMin,
        ),
      )
      .map(({ id }) => own.map((foil) => ({ ...foil, mix: id })))
    const options = [own, ...weaker].filter(isHeld)
    return { options: options.length > 0 ? options : [own] }
  })
}

function shuffled(count: number, random: () => number): number[] {
  const order = Array.from({ length: count }, (_, i) => i)
  for (let i = count - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1))
    ;[order[i], order[j]] = [order[j], order[i]]
  }
  return order
}

/** Park and Miller's generator: the same numbers on every machine. */
function generator(seed: number) {
  let state = seed
  return () => {
    state = (state * 16807) % 2147483647
    return state / 2147483647
  }
}
