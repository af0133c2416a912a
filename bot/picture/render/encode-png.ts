import { promisify } from 'node:util'
import { crc32, deflate } from 'node:zlib'

const SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])
const METRES_PER_INCH = 0.0254
/** Eight bits of red, green, blue and opacity. */
const TRUE_COLOUR = [8, 6, 0, 0, 0]
const PER_METRE = 1

const compress = promisify(deflate)

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
  /** Red, green, blue and opacity. */
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
  const physical = dotsPerInch === null ? [] : [chunk('pHYs', physicalSize(dotsPerInch))]
  return Buffer.concat([
    SIGNATURE,
    chunk('IHDR', Buffer.concat([numbers(width, height), Buffer.from(TRUE_COLOUR)])),
    ...physical,
    chunk('IDAT', await compress(rowsOf(rgba, width, height), { level: 6 })),
    chunk('IEND', Buffer.alloc(0)),
  ])
}

function physicalSize(dotsPerInch: number): Buffer {
  const perMetre = Math.round(dotsPerInch / METRES_PER_INCH)
  return Buffer.concat([numbers(perMetre, perMetre), Buffer.from([PER_METRE])])
}

/** Each row after a byte that says it is unfiltered: flat colours compress best so. */
function rowsOf(rgba: Uint8Array, width: number, height: number): Buffer {
  const length = 4 * width
  const rows = Buffer.alloc(height * (1 + length))
  for (let row = 0; row < height; row++) {
    rows.set(rgba.subarray(row * length, (row + 1) * length), row * (1 + length) + 1)
  }
  return rows
}
