import { promisify } from 'node:util'
import { crc32, deflate } from 'node:zlib'

const SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])
const METRES_PER_INCH = 0.0254
/** Eight bits of red, green and blue, without transparency. */
const TRUE_COLOUR = [8, 2, 0, 0, 0]
const PER_METRE = 1

const compress = promisify(deflate)

/** Rows copied before others get their turn. */
const ROWS_AT_ONCE = 64

const turn = (): Promise<void> => new Promise((resolve) => setImmediate(resolve))

function chunk(type: string, data: Uint8Array): Buffer {
  const bytes = Buffer.alloc(12 + data.length)
  bytes.writeUInt32BE(data.length, 0)
  bytes.write(type, 4, 'latin1')
  bytes.set(data, 8)
  bytes.writeUInt32BE(crc32(bytes.subarray(4, 8 + data.length)), 8 + data.length)
  return bytes
}

const numbers = (...values: readonly number[]): Buffer => {
  const bytes = Buffer.alloc(4 * values.length)
  for (const [index, value] of values.entries()) bytes.writeUInt32BE(value, 4 * index)
  return bytes
}

interface Pixels {
  /** Red, green, blue and an opacity that is full everywhere. */
  readonly rgba: Uint8Array
  readonly width: number
  readonly height: number
  readonly dotsPerInch: number | null
}

/**
 * A PNG. The renderer's own encoder keeps everything else waiting for as long as it takes; this one compresses beside it,
 * and says how large a pixel is on paper.
 * Source: PNG specification, second edition (ISO/IEC 15948), 5.3, 11.2 and 11.3.5.3.
 */
export async function encodePng({ rgba, width, height, dotsPerInch }: Pixels): Promise<Buffer> {
  const rows = await opaqueRows(rgba, width, height)
  const physical = dotsPerInch === null ? [] : [chunk('pHYs', physicalSize(dotsPerInch))]
  return Buffer.concat([
    SIGNATURE,
    chunk('IHDR', Buffer.concat([numbers(width, height), Buffer.from(TRUE_COLOUR)])),
    ...physical,
    chunk('IDAT', await compress(rows, { level: 6 })),
    chunk('IEND', Buffer.alloc(0)),
  ])
}

function physicalSize(dotsPerInch: number): Buffer {
  const perMetre = Math.round(dotsPerInch / METRES_PER_INCH)
  return Buffer.concat([numbers(perMetre, perMetre), Buffer.from([PER_METRE])])
}

/** Each row after a byte that says it is unfiltered: flat colours compress best so. */
async function opaqueRows(rgba: Uint8Array, width: number, height: number): Promise<Buffer> {
  const rows = Buffer.alloc(height * (1 + 3 * width))
  let [from, to] = [0, 0]
  for (let row = 0; row < height; row++) {
    if (row % ROWS_AT_ONCE === ROWS_AT_ONCE - 1) await turn()
    to++
    for (let column = 0; column < width; column++) {
      rows[to] = rgba[from]!
      rows[to + 1] = rgba[from + 1]!
      rows[to + 2] = rgba[from + 2]!
      from += 4
      to += 3
    }
  }
  return rows
}
