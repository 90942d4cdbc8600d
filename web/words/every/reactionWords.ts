import type { ReactionCode } from "../../core/record/lastVisit"
import { alarmWords } from "../en/chair/alarmWords"
import type { Words } from "../en/words"

/** What went wrong at a visit, in a sentence. */
export const reactionWords = (reaction: ReactionCode, { cards, chair }: Pick<Words, "cards" | "chair">) =>
  reaction.code === "alarm"
    ? cards.last.alarm(alarmWords(reaction.alarm, reaction.foils, chair.emergencies, reaction.piece))
    : cards.last[reaction.code](reaction.foil, reaction.piece)
