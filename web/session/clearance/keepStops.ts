import { withWithdrawn } from "../../core/cautions/withdrawn"
import { nowHere } from "../nowHere"
import { keepAcrossSteps } from "../planStore"

/** An answer that stopped the plan is taken back by undo as by hand: its line stays in the record. */
export const keepStops = () => keepAcrossSteps((before, after) => withWithdrawn(before, after, nowHere()))
