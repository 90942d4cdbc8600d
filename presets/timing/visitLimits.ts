/** What a visit must keep to before anything is mixed. Strength is in developers.ts. */
export const visitLimits = {
  /**
   * Nobody younger is coloured or tested. Label words of Regulation (EC) 1223/2009, Annex III, as listed by Tukes
   * (Finland); National Hair and Beauty Federation (UK).
   */
  youngestYears: 16,
  /** Hours an alert test stays before it is read: at least 48 (National Hair and Beauty Federation, UK; FDA: 2 days). */
  alertTestHours: 48,
  /**
   * Days before a visit that its alert test may have been applied, where the maker's sheet does not say how long one
   * counts. Assumption: public advice asks for one each time (FDA) and gives no number of days.
   */
  alertTestMostDays: 14,
}
