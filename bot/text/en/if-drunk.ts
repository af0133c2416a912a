/** Beside what can kill. */
export const ifDrunk = (): string =>
  'If anyone has drunk or eaten it, ring the poison centre or the emergency number now.'
