import type { AlertTestFault } from "../../../core/cautions/rules/alertTest"
import type { ClientCode } from "../../../core/cautions/rules/cautionCode"
import { type Sentences, say } from "../../say"
import type { Tools } from "../../tools"

/** What was found of the client, the hair and the tests. */
export const clientCautions = (t: Tools) =>
  ({
    "under-age": ({ youngestYears }) =>
      `The client is under ${youngestYears}: no colour and no patch test (label of oxidative dyes; trade guidance for lightener).`,
    "past-reaction":
      "The client has reacted before (to colour, a test or black henna). Do not colour. A doctor can test for the cause.",
    "breathing-reaction":
      "Lightener has caused wheeze, cough or hives in the client or the colourist. Do not mix it near them; refer to a doctor.",
    "scalp-hurt": ({ scalp }) =>
      scalp === "broken"
        ? "The scalp is broken. No service until it has healed."
        : "The scalp is irritated. No service until it has healed.",
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
    allergy:
      "The client has an allergy. Check it against the ingredients of every product and glove. If it is listed, or the cause is unknown, decline.",
    "ask-about-breathing":
      "Ask about wheeze, cough or hives with lightener. A clear patch test does not cover them.",
    "black-henna":
      "The client has had a black henna tattoo: it can cause an allergy to hair dye. Only a patch test applied after the tattoo counts.",
    "changed-since-test":
      "Ask what has changed since the patch test: illness, medicine, tattoo, new reaction.",
    "hairline-loss": "Hair loss along the hairline. Leave out a band there; avoid tension.",
    eyes: "Contact lenses out before mixing. Keep product well off brows and lashes.",
    "metallic-salts":
      "Metallic salts or compound henna in the hair: with peroxide it can heat up, smoke and break. Do not lighten. Cut it off, or wait until it has grown out.",
    henna:
      "Henna in the hair, contents unknown. Test cut hair in the mix first: heat, bubbles or colour change means do not go on.",
    "strand-test-failed": "A strand test failed: the hair broke or lost its strength. Do not lighten it.",
    "over-stretched":
      "The hair stays stretched or breaks when wet. Do not lighten. Trim, treat and test again on another day.",
    "recent-relaxer": "Recent relaxer or perm. Decline, or wait and decide by a strand test.",
    "strand-test-first":
      "Chemically treated hair and no strand test recorded. Test a strand with this mix first.",
    overlap:
      "Some hair is already lightened. Do not overlap unless the directions allow it; protect the ends; check at 5 minutes.",
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
    "changed-since": ({ product }) =>
      `Patch test with ${product}: something has changed since. Apply a new one.`,
  }) satisfies Sentences<AlertTestFault>
