import type { EmergencyName, EmergencyStep } from "../../../../presets/chair/emergencies"
import type { AlarmName } from "../../../core/document/serviceRecord"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { Tools } from "../../tools"
import { pieces } from "../common/pieces"

type Steps = { readonly [N in EmergencyName]: { readonly [S in EmergencyStep<N>]: string } }

/** The red button: short, one thing a line, nothing but what to do. */
export const emergencies = (t: Tools) => ({
  whatIsWrong: "What is wrong?",
  somethingElse: "Something else",
  backToClock: "Back to the clock",
  number: (number: string) => `Emergency number: ${number}`,
  numberUnknown: "Emergency number: not set. Set it in “Your salon”.",
  salon: (name: string, phone: string) =>
    [...(name ? [`Salon: ${name}`] : []), ...(phone ? [`Salon phone: ${phone}`] : [])].join(". "),
  first:
    "Call the emergency number first if in doubt. First-aid training and the maker’s directions come before this list.",
  about: (foils: readonly number[], piece?: Piece) => t.capital(pieces(t).names(foils, piece)),
  done: "Done",
  stepDone: (step: string) => `Done: ${step}`,
  log: "Time log",
  time: t.time,
  day: t.day,
  logLine: ({ time, clock, what }: { time: string; clock: string; what: string }) =>
    `${time} (minute ${clock}): ${what}`,
  logDay: ({ day, time, what }: { day: string; time: string; what: string }) => `${day}, ${time}: ${what}`,
  /** What went wrong, and the step that was done. */
  logStep: ({ what, step }: { what: string; step: string }) => `${what}: ${step}`,
  logFoils: ({ what, foils }: { what: string; foils: string }) => `${what} (${foils})`,

  names: {
    breathing: "Trouble breathing, or a swelling face or throat",
    burning: "Burning scalp or skin",
    eye: "Product in the eye",
    wheeze: "Wheeze or cough only",
    "hot-foil": "Hot, swelling or smoking foil",
    faint: "Fainting",
    fit: "Seizure",
    swallowed: "Swallowed",
    other: "Something else",
  } satisfies { readonly [N in AlarmName]: string },

  steps: {
    breathing: {
      pen: "Use the client’s own adrenaline pen now.",
      call: "Call the emergency number. Say “anaphylaxis”.",
      "lie-flat":
        "Lie flat, legs raised. Propped up only if breathing is hard; on the left side if pregnant. No standing or walking, even when better.",
      "second-pen": "No better after 5 minutes: use a second pen, if there is one.",
      air: "Powder and bowl away. Window open.",
      "rinse-later": "When breathing allows it, someone rinses the product off.",
      stay: "Stay with the client. No lightener again for this client.",
    },
    burning: {
      "foils-off": "Take off what lies there now. Do not wait for the check.",
      rinse:
        "Rinse with plenty of cool running water for at least 20 minutes. Keep the water out of the eyes.",
      "no-ice": "No ice, no cream.",
      "no-more": "No heat, no toner and nothing else on this scalp today.",
      doctor:
        "Blisters, broken skin or lasting pain: see a doctor today, with the product’s name and the time it was on. Large, deep or facial burns: call the emergency number.",
    },
    eye: {
      rinse:
        "Rinse at once under gently running lukewarm water. Hold the lids open; let it run from the nose side outward, away from the other eye.",
      lens: "Take out a contact lens if it comes out easily; keep rinsing.",
      "keep-rinsing": "Keep rinsing for at least 20 minutes. No rubbing, no drops.",
      go: "Call the emergency number or go to emergency eye care; keep rinsing on the way if you can. Take the tub. The client must not drive.",
    },
    wheeze: {
      "powder-away": "Move powder and bowl away. Let fresh air in.",
      inhaler: "Help with the client’s own inhaler.",
      call: "No better in 5 minutes, or worse: call the emergency number.",
      "rinse-later": "When breathing is easy, rinse the product off and end the service.",
    },
    "hot-foil": {
      "take-off": "Gloves on. Do not open it over the face. Take the foil off.",
      "into-water": "Drop the foil with its product into plenty of water, outside or away from people.",
      rinse:
        "Rinse that strand and the scalp under it with plenty of cool water; 20 minutes if the skin is hot or hurts.",
      "feel-others": "Feel every other foil of that bowl. Take off any that is warm.",
      flames: "Flames: fire alarm, fire service, out.",
      "no-more": "No heat and no more of that mix today. Note which bowl it was.",
    },
    faint: {
      "lie-flat": "Lay the client flat, legs raised; on the left side if pregnant.",
      "keep-clear": "Keep product away from eyes and mouth. Loosen the gown. Fresh air.",
      "not-awake": "Not awake within a minute: recovery position, call the emergency number.",
      "not-breathing": "Not breathing normally: call, start chest compressions, fetch the defibrillator.",
      end: "Awake: stay lying a while. Rinse the product off and end the service.",
    },
    fit: {
      "make-room": "Make room. Move hard things away; cushion the head.",
      "nothing-in": "Nothing in the mouth. Do not hold the client down.",
      "time-it": "Time it.",
      call: "Over 5 minutes, the first ever, or hurt: call the emergency number.",
      after: "Afterwards: recovery position. Stay. Rinse the product off.",
    },
    swallowed: {
      "rinse-mouth": "Rinse the mouth with water.",
      "not-sick": "Do not make the client sick.",
      call: "Call the poison line or the emergency number, with the tub in your hand.",
    },
  } satisfies Steps,
})
