import type { AlertTestFault } from "../../../core/cautions/rules/alertTest"
import type { ClientCode } from "../../../core/cautions/rules/cautionCode"
import { type Sentences, say } from "../../say"
import type { Tools } from "../../tools"
import { pieces } from "../common/pieces"

/** What was found of the client, the hair and the tests. */
export const clientCautions = (t: Tools) =>
  ({
    "under-age": ({ youngestYears }) =>
      `The client is under ${youngestYears}: no colour and no patch test (label of oxidative dyes; trade guidance for lightener).`,
    "past-reaction": ({ product }) =>
      product === null
        ? "The client has reacted before (to colour or black henna). Do not colour. A doctor can test for the cause."
        : `The patch test with ${product} reacted. Do not colour. A doctor can test for the cause.`,
    "breathing-reaction":
      "Lightener has caused wheeze, cough or hives in the client. Do not mix it near them; refer to a doctor.",
    "mixer-breathing":
      "Lightener causes cough, wheeze or a rash in the person mixing. Someone else mixes, in another room; refer to a doctor.",
    "dye-allergy": "Allergic to hair dye, its ingredients or lightener. Do not colour and do not patch test.",
    "scalp-hurt": ({ scalp }): string =>
      scalp === "broken"
        ? "The scalp is broken. No service until it has healed."
        : "The scalp is irritated. No service until it has healed.",
    "scalp-today": "Sunburn, cuts, bites, lice or infection of the scalp. No service until it is clear.",
    "sensitive-scalp": "The scalp is sensitive. The label says not to colour: wait, or ask a doctor.",
    "face-rash": "There is a rash on the face. The label says not to colour: wait, or ask a doctor.",
    "alert-test-wanting": ({ fault }) => say(alertTestFaults(t), fault),
    "toner-not-chosen": ({ wanting, testHours }) =>
      wanting.length === 2
        ? `No toner and no root shade chosen yet. Mixed with developer, each needs its own patch test, read clear at least ${testHours} hours later.`
        : wanting[0] === "toner"
          ? `No toner chosen yet. Mixed with developer, it needs its own patch test, read clear at least ${testHours} hours later.`
          : `No root shade chosen yet. Mixed with developer, it needs its own patch test, read clear at least ${testHours} hours later.`,
    expecting: "Pregnant or breastfeeding: check with the client’s doctor or midwife first, or decline.",
    "scalp-condition":
      "Scalp condition or recent scalp surgery: check with the client’s doctor first, or decline.",
    chemotherapy:
      "Chemotherapy or radiotherapy, now or recently: check with the client’s doctor first, or decline.",
    asthma:
      "Asthma: a clear patch test says nothing about lightener. Ask the client’s doctor first. Then ventilate, avoid dust, have the inhaler within reach, and stop at the first cough.",
    medicines:
      "Medicine or illness that affects hair, skin, healing or fainting: check with the client’s pharmacist or doctor first, or decline.",
    "other-allergy":
      "The client has an allergy. Check it against the ingredients of every product and glove. If it is listed, or the cause is unknown, decline.",
    "card-dye-allergy": ({ to }) =>
      `On the card: ${allergyTo(t, to)}, held like an allergy to hair dye. Confirm today. A no does not clear it: if the card is wrong, correct the card.`,
    "card-allergy": ({ to }) =>
      `On the card: ${allergyTo(t, to)}. Confirm today and check every product and glove. A no does not clear it: if the card is wrong, correct the card.`,
    "black-henna":
      "The client has had a black henna tattoo: it can cause an allergy to hair dye. Only a patch test applied after the tattoo counts.",
    "hairline-loss": "Hair loss along the hairline. Leave out a band there; avoid tension.",
    eyes: "Contact lenses out before mixing. Keep product well off brows and lashes.",
    "metallic-salts":
      "Metallic salts or compound henna in the hair: with peroxide it can heat up, smoke and break. Do not lighten. Cut it off, or wait until it has grown out.",
    henna:
      "Henna in the hair, contents unknown. Test cut hair in the mix first: heat, bubbles or colour change means do not go on.",
    "strand-test-failed": ({ product }) =>
      `The strand test with ${product} failed: the hair broke or lost its strength. Do not lighten it.`,
    "over-stretched":
      "The hair stays stretched or breaks when wet. Do not lighten. Trim, treat and test again on another day.",
    "recent-relaxer": "Recent relaxer or perm. Decline, or wait and decide by a strand test.",
    "unknown-content":
      "Home colour, or copper from well or pool water: contents unknown. Test cut hair in the mix first: heat, bubbles or colour change means do not go on.",
    extensions: "Extensions or bonded hair in. Keep lightener off bonds, tape and metal rings.",
    "strand-test-first":
      "Chemically treated hair and no strand test recorded. Test a strand with this mix first.",
    overlap:
      "Some hair is already lightened. Do not overlap unless the directions allow it; protect the ends; check at 5 minutes.",
    "coated-twice": ({ foils, piece, fromMm, toMm }) =>
      `${t.capital(pieces(t).names(foils, piece))} would coat hair that was lightened before, from ${t.whole(fromMm)} to ${t.mm(toMm)} off the scalp. Coat the new growth alone, or skip.`,
    porous: "Porous hair lifts and tones fast. First check at 5 minutes; tone it last.",
  }) satisfies Sentences<ClientCode>

/** Why a patch test does not count today. */
export const alertTestFaults = (t: Tools) =>
  ({
    "no-test": ({ product, hours }) =>
      `No patch test with ${product} recorded. Apply one and read it after ${hours} hours.`,
    "no-time": ({ product }) => `Patch test with ${product}: date and time applied are missing.`,
    "in-future": ({ product }) => `Patch test with ${product}: the date applied is in the future.`,
    "too-young": ({ product, hoursOn, hours, readFrom }) =>
      `Patch test with ${product}: on for ${hoursOn} of ${hours} hours. Read it from ${t.weekday(readFrom)}, ${readFrom.slice(11)}.`,
    unread: ({ product }) =>
      `Patch test with ${product}: not read yet. Look at the skin and enter what you see.`,
    reacted: ({ product }) => `Patch test with ${product}: the skin reacted. Do not colour.`,
    "reader-missing": ({ product }) => `Patch test with ${product}: enter when it was read and by whom.`,
    "read-in-future": ({ product }) => `Patch test with ${product}: the reading date is in the future.`,
    "read-early": ({ product, hours }) =>
      `Patch test with ${product}: read before its ${hours} hours had passed. Look at the skin again.`,
    "out-of-date": ({ product, lastDay }) =>
      `Patch test with ${product}: valid until ${t.date(lastDay)}. Apply a new one.`,
    "other-visit": ({ product, madeFor }) =>
      madeFor === null
        ? `Patch test with ${product}: made for another visit. Apply a new one, or enter how long its maker lets it count.`
        : `Patch test with ${product}: made for the visit of ${t.date(madeFor)}. Apply a new one, or enter how long its maker lets it count.`,
    "too-old": ({ product, appliedOn, mostDays }) =>
      `Patch test with ${product}: applied on ${t.date(appliedOn)}, more than ${mostDays} days before the visit. Apply a new one, or enter how long its maker lets it count.`,
    "before-henna": ({ product, tattooOn }) =>
      `Patch test with ${product}: applied before the black henna tattoo of ${t.date(tattooOn)}. Apply a new one.`,
    "henna-undated": ({ product }) =>
      `Patch test with ${product}: enter when the black henna tattoo was made. Only a test applied after it counts.`,
    "changed-since": ({ product }) =>
      `Patch test with ${product}: something has changed since. Apply a new one.`,
  }) satisfies Sentences<AlertTestFault>

/** An allergy nobody wrote the cause of is named all the same. */
const allergyTo = (t: Tools, to: readonly string[]) =>
  `allergy to ${t.and(to.map((what) => what.trim() || "an unknown cause"))}`
