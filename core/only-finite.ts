/** Whether every number in there is one that can be shown. */
export const holdsOnlyFinite = (value: unknown): boolean => {
  if (typeof value === 'number') return Number.isFinite(value)
  if (typeof value !== 'object' || value === null) return true
  return Object.values(value).every(holdsOnlyFinite)
}
