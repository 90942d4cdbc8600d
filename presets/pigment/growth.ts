export const weeksAMonth = 30.44 / 7
export const mostWeeksOn = 20
