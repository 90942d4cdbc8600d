import { leastBendMm } from "../../geometry/parting/leastBend"
import { assumption, figure } from "../figure/figure"

/** The tightest bend a parting makes, mm of radius: half a finger across, about what the tail of a comb is led round. */
export const partingBendMm = figure(leastBendMm, [3, 8], `${assumption}, no source: nobody has measured it`)
