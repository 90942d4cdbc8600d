import {
  absorption,
  exposure,
  type Rgb,
  reflectanceFit,
  roughness,
  whiteSheen,
} from "../../../presets/pigment/melanin"
import {
  leftByLightener,
  levelsEitherWay,
  type Melanin,
  naturalEumelanin,
  tonerShare,
  whiteHair,
} from "../../../presets/pigment/pigmentByLevel"
import type { FinishTone } from "../document/consultation"

/** What a fibre takes of red, green and blue light. */
type Taken = Rgb

/** Hair as it grew, to a level of 1 to 10, or lifted to one, toned or not; colours are linear light, 0 to 1. */
export type HairShade =
  | { kind: "natural"; level: number; whiteShare: number }
  | { kind: "lifted"; level: number; toned: FinishTone | null }

/** A colour and how far it may be out: a level darker and a level lighter. */
export type ColourRange = { darker: Rgb; mid: Rgb; lighter: Rgb }

export const colourRange = (shade: HairShade): ColourRange => ({
  darker: colourOf({ ...shade, level: shade.level - levelsEitherWay }),
  mid: colourOf(shade),
  lighter: colourOf({ ...shade, level: shade.level + levelsEitherWay }),
})

export function colourOf(shade: HairShade): Rgb {
  const level = Math.min(10, Math.max(1, shade.level))
  if (shade.kind === "lifted") return litColour(toned(takenBy(leftAt(level)), shade.toned))
  const grown = litColour(takenBy({ eumelanin: eumelaninAt(level), pheomelanin: 0 }))
  return mixed(grown, litColour(takenBy(whiteHair)), shade.whiteShare)
}

/** The light that a mass of such fibres throws back, 0 to 1. */
export const reflectance = (taken: Taken): Rgb =>
  each((channel) => Math.exp(-steepness * Math.sqrt(taken[channel])))

/** What a fibre takes when a mass of it throws back so much. */
export const takenFor = (colour: Rgb): Taken =>
  each((channel) => (Math.log(colour[channel]) / steepness) ** 2)

export const takenBy = ({ eumelanin, pheomelanin }: Melanin): Taken =>
  each((channel) => eumelanin * absorption.eumelanin[channel] + pheomelanin * absorption.pheomelanin[channel])

const steepness = reflectanceFit.reduce((sum, factor, power) => sum + factor * roughness.value ** power, 0)

/** Eumelanin at a level, along the logarithm between the rows about it. */
function eumelaninAt(level: number): number {
  const rows = naturalEumelanin
  const next = Math.max(
    1,
    rows.findIndex((row) => row.level >= level),
  )
  const [from, to] = [rows[next - 1], rows[next]]
  return from.units * (to.units / from.units) ** ((level - from.level) / (to.level - from.level))
}

function leftAt(level: number): Melanin {
  const below = Math.min(leftByLightener.length - 1, Math.floor(level))
  const [from, to] = [leftByLightener[below - 1], leftByLightener[below]]
  const between = (pigment: keyof Melanin) => from[pigment] * (to[pigment] / from[pigment]) ** (level - below)
  return { eumelanin: between("eumelanin"), pheomelanin: between("pheomelanin") }
}

/** A toner takes of what its pigment lets through: the complement of its hue. */
function toned(taken: Taken, finish: FinishTone | null): Taken {
  if (!finish) return taken
  const most = Math.max(...taken)
  return each((channel) => taken[channel] + tonerShare[finish] * (most - taken[channel]))
}

/** The colour as a picture shows it, lit and with its white sheen. */
function litColour(taken: Taken): Rgb {
  const colour = reflectance(taken)
  const sheen = whiteSheen.value
  return each((channel) => sheen + (1 - sheen) * (1 - Math.exp(-exposure.value * colour[channel])))
}

const mixed = (from: Rgb, to: Rgb, share: number): Rgb =>
  each((channel) => from[channel] + (to[channel] - from[channel]) * share)

const each = (of: (channel: 0 | 1 | 2) => number): Rgb => [of(0), of(1), of(2)]
