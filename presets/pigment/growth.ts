/** As many weeks after the visit as the picture looks ahead at most: assumption. */
export const mostWeeksOn = 20
