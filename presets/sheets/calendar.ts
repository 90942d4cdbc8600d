/**
 * Hours before the midnight at which a day of the calendar begins that it is told: at nine in the morning of the day
 * before, while a salon answers. Assumption.
 */
export const remindHoursBefore = 15
