/** How far the depth of a technique of one's own may be varied, mm: from the finest slice to the widest backcombed section. Assumption. */
export const ownDepthSpanMm = [1, 12] as const

/** The most rows behind one another that a technique of one's own is varied to. Assumption. */
export const ownMostRows = 12
