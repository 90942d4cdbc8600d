import { assumption, figure } from "../figure/figure"

/** A number for each of red, green and blue. */
export type Rgb = readonly [red: number, green: number, blue: number]

/**
 * What a fibre takes of the light on its way through it, for one unit of each pigment (d'Eon, Francois, Hill, Letteri,
 * Aubry 2011, "An energy-conserving hair reflectance model", section 6.1; Pharr, Jakob, Humphreys, "Physically Based
 * Rendering", 4th ed., section 9.9).
 */
export const absorption = {
  /** Black and brown. */
  eumelanin: [0.419, 0.697, 1.37],
  /** Red and yellow. */
  pheomelanin: [0.187, 0.4, 1.05],
} as const satisfies Record<string, Rgb>

/**
 * The colour C of a mass of fibres that take sigma each: sigma = (ln C / k)^2, k a polynomial of the fibre's roughness
 * round its axis; coefficients from the constant term up (Chiang, Bitterli, Tappan, Burley 2016, "A practical and
 * controllable hair and fur model", section 4.2).
 */
export const reflectanceFit = [5.969, -0.215, 2.532, -10.73, 5.574, 0.245] as const

export const roughness = figure(
  0.3,
  [0.1, 0.6],
  `${assumption}; the value "Physically Based Rendering", 4th ed., starts from`,
)

/** How brightly the hair of a picture is lit: 1 - exp(-exposure x C), as a film takes it. */
export const exposure = figure(3, [2, 4], `${assumption}: by eye, beside a lit head in a salon mirror`)

/** What the scales throw back white, without its going through the fibre; of a mass of hair seen off the shine. */
export const whiteSheen = figure(
  0.008,
  [0.004, 0.03],
  `${assumption}; a fibre of index 1.55 throws back 4.7 % at most angles, all over a head less`,
)
