/** What a visit must keep to before anything is mixed. Strength is in developers.ts. */
export const visitLimits = {
  /**
   * Nobody younger is coloured or tested. Label words of Regulation (EC) 1223/2009, Annex III, as listed by Tukes
   * (Finland); National Hair and Beauty Federation (UK).
   */
  youngestYears: 16,
  /** Hours an alert test stays before it is read: at least 48 (National Hair and Beauty Federation, UK; FDA: 2 days). */
  alertTestHours: 48,
}
