import { commonPractice, figure } from "../figure/figure"

/** What the skin may say after a service, each sign with where its advice is from. */
export const skinSignSources = {
  irritation:
    "rinsing with running water for 20 minutes: public guidance on chemical burns (NHS, as quoted 2014); reactions to persulfates: CIR 2001",
  burn: "delayed deep burns: Cutan Ocul Toxicol 2016;35:332",
  breathing: "Anaphylaxis UK, What to do in an emergency",
  "take-along": "keep the product's name and the time: general first aid",
} as const
export type SkinSign = keyof typeof skinSignSources
export const skinSigns = Object.keys(skinSignSources) as SkinSign[]

/** How to look after lightened hair at home. */
export const homeCareSources = {
  "first-days": commonPractice,
  "every-wash": commonPractice,
  weekly: commonPractice,
  heat: commonPractice,
  "sun-and-pool": commonPractice,
} as const
export type HomeCare = keyof typeof homeCareSources
export const homeCare = Object.keys(homeCareSources) as HomeCare[]

/** Minutes that skin is rinsed: public guidance on chemical burns, NHS: cool running water, 20 minutes or more. */
export const rinseMin = 20

/** Weeks until the toner is freshened and the frame is done again. */
export const returnWeeks = {
  toner: figure(5, [4, 6], commonPractice),
  frame: figure(10, [8, 12], commonPractice),
}
