import { readFile } from 'node:fs/promises'
import { loadavg } from 'node:os'
import { monitorEventLoopDelay } from 'node:perf_hooks'
import { batchCard } from '../../bot/picture/card/batch-card.ts'
import { batchCardData } from '../../bot/picture/card/batch-card-data.ts'
import type { Pen, Picture } from '../../bot/picture/draw/picture.ts'
import type { Typefaces } from '../../bot/picture/draw/typefaces.ts'
import { bottleLabel } from '../../bot/picture/label/bottle-label.ts'
import { bottleLabelData } from '../../bot/picture/label/bottle-label-data.ts'
import { newStudio, type Studio } from '../../bot/picture/render/renderer.ts'
import { shelf } from '../../bot/picture/shelf/shelf.ts'
import { shelfData } from '../../bot/picture/shelf/shelf-data.ts'
import { jarTag } from '../../bot/picture/tag/jar-tag.ts'
import { jarTagData } from '../../bot/picture/tag/jar-tag-data.ts'
import { englishFormat } from '../../bot/text/en/format.ts'
import { pictureText } from '../../bot/text/en/pictures.ts'
import { manyJars, readyBatch, TODAY } from '../bot/picture/batches.ts'

type Row = [label: string, value: string, goal?: string]

const REPEATS = 12
const AT_ONCE = 20

const penOf = (faces: Typefaces): Pen => ({ faces, text: pictureText, format: englishFormat('metric') })

const batch = readyBatch('Midwinter lemon')
const views = manyJars(Array.from({ length: 20 }, (_, index) => `Jar number ${index}`))

const card = (faces: Typefaces): Picture => batchCard(batchCardData(batch, TODAY), penOf(faces))

const PICTURES: readonly (readonly [string, (faces: Typefaces) => Picture])[] = [
  ['batch card', card],
  ['shelf of 20 jars', (faces) => shelf(shelfData(views, TODAY), penOf(faces))],
  ['empty shelf', (faces) => shelf(shelfData([], TODAY), penOf(faces))],
  ['jar tag', (faces) => jarTag(jarTagData(batch), penOf(faces))],
  ['bottle label', (faces) => bottleLabel(bottleLabelData(batch, 500), penOf(faces))],
]

const median = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)]!

async function timeOf(studio: Studio, make: (faces: Typefaces) => Picture): Promise<string> {
  const [times, size] = [[] as number[], { bytes: 0, pixels: '' }]
  for (let turn = 0; turn < REPEATS; turn++) {
    const before = performance.now()
    const { png, width, height } = await studio.paint(make)
    times.push(performance.now() - before)
    Object.assign(size, { bytes: png.length, pixels: `${width} × ${height}` })
  }
  return `${median(times).toFixed(0)} ms, ${(size.bytes / 1000).toFixed(0)} kB (${size.pixels})`
}

/** How late everything else gets its turn meanwhile, 99th percentile. */
async function delayOf(work: () => Promise<unknown>): Promise<string> {
  const delay = monitorEventLoopDelay({ resolution: 1 })
  delay.enable()
  const before = performance.now()
  await work()
  const tookMs = performance.now() - before
  delay.disable()
  // The timer itself waits a millisecond.
  const [p99, worst] = [delay.percentile(99) / 1e6 - 1, delay.max / 1e6 - 1]
  return `${p99.toFixed(1)} ms, at worst ${worst.toFixed(1)} ms (${tookMs.toFixed(0)} ms in all)`
}

const wait = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms))

/** Each picture, and what everything else notices of them. */
export const benchPictures = async (): Promise<{ name: string; rows: Row[] }> => {
  const studio = newStudio()
  const first = performance.now()
  await studio.paint(card)
  const rows: Row[] = [['the first picture, fonts and renderer loaded', `${(performance.now() - first).toFixed(0)} ms`]]
  for (const [name, make] of PICTURES) rows.push([name, await timeOf(studio, make)])
  const twenty = () =>
    Promise.all(Array.from({ length: AT_ONCE }, (_, index) => studio.paint(PICTURES[index % PICTURES.length]![1])))
  const cards = () => Promise.all(Array.from({ length: AT_ONCE }, () => studio.paint(card)))
  rows.push([`delay of everything else while ${AT_ONCE} cards are drawn, 99 %`, await delayOf(cards), 'below 20 ms'])
  rows.push([`  while ${AT_ONCE} of all kinds are drawn`, await delayOf(twenty), 'below 20 ms'])
  rows.push(['  while nothing is drawn, for a second', await delayOf(() => wait(1000))])
  const reads: number[] = []
  const reading = (async () => {
    for (let turn = 0; turn < 20; turn++) {
      const before = performance.now()
      await readFile(import.meta.filename)
      reads.push(performance.now() - before)
      await wait(10)
    }
  })()
  await Promise.all([cards(), reading])
  rows.push([
    'a file read meanwhile, median and longest',
    `${median(reads).toFixed(1)} and ${Math.max(...reads).toFixed(1)} ms`,
  ])
  return { name: `pictures (load ${loadavg()[0]!.toFixed(1)} at the end)`, rows }
}
