import { newStudio } from './studio.ts'

/** The one studio of this process. */
export const { paint, lacks } = newStudio()
