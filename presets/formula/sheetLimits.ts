/** What a product sheet may say. The ends of what is possible, not advice. */

/** Parts of developer to 1 of product. Sheets print 1 to 3 (common practice); root shades and acid toners less than 10. */
export const mostDeveloperParts = 10

/** No time on a sheet runs past this. Assumption. */
export const mostMinutes = 120
