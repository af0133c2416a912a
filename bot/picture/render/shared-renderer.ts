import { newStudio } from './renderer.ts'

/** The one studio of this process. */
export const { paint, lacks } = newStudio()
