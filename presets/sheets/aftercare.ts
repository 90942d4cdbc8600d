import { commonPractice, figure } from "../figure/figure"

/** Words for the client, and where they are from. */
export type Advice = { text: string; source: string }

/** What the skin may say after a service, and what to do. First aid and emergency services come before any line here. */
export const skinSigns: readonly Advice[] = [
  {
    text: "Itching, redness or a rash: rinse with plenty of lukewarm water for 15 minutes, put nothing else on it, and call us.",
    source: "general first aid; reactions to persulfates: CIR 2001",
  },
  {
    text: "Blisters, weeping skin or pain that stays: to a doctor the same day. A burn can show late.",
    source: "delayed deep burns: Cutan Ocul Toxicol 2016;35:332",
  },
  {
    text: "Trouble breathing, or a swelling face, lips or tongue: call the emergency number at once.",
    source: "breathing trouble is an emergency: general first aid",
  },
  {
    text: "Take this sheet along: it names what was used, and when.",
    source: "keep the product's name and the time: general first aid",
  },
]

/** How to look after lightened hair at home, week by week. */
export const homeCare: readonly (Advice & { when: string })[] = [
  { when: "First two days", text: "No washing, no tight bands or clips.", source: commonPractice },
  {
    when: "Every wash",
    text: "Lukewarm water, mild shampoo, conditioner on the light lengths. Untangle from the ends up.",
    source: commonPractice,
  },
  {
    when: "Once a week",
    text: "If the light pieces turn too warm: a toning conditioner, 10 to 15 minutes. Then a rich mask.",
    source: commonPractice,
  },
  {
    when: "Heat",
    text: "Heat protection first, on dry hair, and the lowest heat that works.",
    source: commonPractice,
  },
  {
    when: "Sun and pool",
    text: "Wet the hair and put conditioner in before you swim; rinse well after. A hat in strong sun.",
    source: commonPractice,
  },
]

/** Weeks until the toner is freshened and the frame is done again. */
export const returnWeeks = {
  toner: figure(5, [4, 6], commonPractice),
  frame: figure(10, [8, 12], commonPractice),
}
