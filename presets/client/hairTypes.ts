import { assumption, commonPractice, type Figure, figure } from "../figure/figure"

const counted =
  "assumption inside the quartile classes of 20 counted women, up to 195, 196 to 244, from 245 (J Soc Cosmet Chem 1977;28:220)"

/**
 * How many hairs grow: hairs per cm2, the mean over the head; regions differ from it by their factors. "Thin" and "thick"
 * speak of this, not of the fibre.
 */
export const densityPerCm2 = {
  low: figure(170, [95, 195], counted),
  medium: figure(220, [196, 244], `${counted}; mean of whole scalps 223, standard error 4 (Barman 1965)`),
  high: figure(260, [245, 300], counted),
}

/** How thick one hair is: the diameter of the circle with its mean cross-section, micrometres. The classes are common practice. */
export const fibreUm = {
  fine: figure(55, [45, 60], `${commonPractice}; limits differ between schools`),
  medium: figure(
    70,
    [60, 80],
    "mean of ten men 69.6 (J Soc Cosmet Chem 1983;34:361), of 145 people 69.2 (Lasisi 2021)",
  ),
  coarse: figure(85, [80, 100], `${commonPractice}; limits differ between schools`),
}

/** How long the hair is by where it falls when combed straight, cm from the scalp. */
export const lengthCm = {
  brow: figure(7, [5, 9], "from a hairline 6.45 cm above the brow (Natpracha 2020)"),
  ear: figure(12, [9, 14], assumption),
  cheek: figure(15, [13, 18], assumption),
  chin: figure(22, [19, 25], assumption),
  shoulder: figure(28, [25, 31], assumption),
  collarbone: figure(33, [30, 36], assumption),
  "shoulder blade": figure(42, [37, 46], assumption),
  "bra line": figure(50, [46, 55], assumption),
  waist: figure(65, [58, 72], assumption),
} satisfies Record<string, Figure>
