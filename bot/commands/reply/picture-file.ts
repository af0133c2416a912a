import type { ReplyFile } from '../../chat/reply.ts'
import type { Pen, Picture } from '../../picture/draw/picture.ts'
import type { Message } from '../../text/words.ts'

/** A picture that goes with a reply, drawn when it is shown. */
export const pictureFile = (name: string, alt: Message<'files'>, make: (pen: Pen) => Picture): ReplyFile => ({
  name,
  mime: 'image/png',
  alt,
  async draw(words, kitchen) {
    // Loaded here, so that nobody waits for it who asked for no picture.
    const { paint } = await import('../../picture/render/shared-renderer.ts')
    const { png } = await paint((faces) => make({ faces, ...words.onPictures(kitchen) }))
    return png
  },
})
