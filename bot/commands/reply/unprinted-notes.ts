import { PictureError } from '../../picture/render/picture-error.ts'
import type { Message } from '../../text/words.ts'

/** Said beside a picture of a jar whose name it cannot show whole. */
export async function unprintedNotes({ id, name }: { readonly id: string; readonly name: string }) {
  const notes: readonly Message<'notes'>[] = [{ group: 'notes', key: 'name_unprinted', values: { id } }]
  try {
    const { lacks } = await import('../../picture/render/shared-renderer.ts')
    return (await lacks(name)) ? notes : []
  } catch (error) {
    // That there is no picture at all is said where it is drawn.
    if (error instanceof PictureError) return []
    throw error
  }
}
