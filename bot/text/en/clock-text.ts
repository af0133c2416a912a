const twoDigits = (value: number): string => String(value).padStart(2, '0')

/** Minutes after midnight, 0 to 1439: `09:00`. */
export const clockText = (minutes: number): string =>
  `${twoDigits(Math.floor(minutes / 60))}:${twoDigits(minutes % 60)}`
