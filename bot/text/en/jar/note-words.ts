/** A note between quotation marks that none of its own can close. */
export const noteText = (note: string): string => `“${note.replace(/[“”]/g, '"')}”`
