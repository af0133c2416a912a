const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
}

/** Text that opens no element and closes no attribute. */
export const escapeXml = (text: string): string => text.replace(/[&<>"']/g, (character) => ENTITIES[character] ?? '')

type Attributes = { readonly [name: string]: string | number }

/** A hundredth of a pixel is enough, and the same everywhere. */
const written = (value: string | number): string =>
  typeof value === 'number' ? String(Math.round(value * 100) / 100) : escapeXml(value)

/** An element; its contents are SVG already. */
export const element = (name: string, attributes: Attributes, contents = ''): string => {
  const pairs = Object.entries(attributes).map(([key, value]) => ` ${key}="${written(value)}"`)
  return contents === '' ? `<${name}${pairs.join('')}/>` : `<${name}${pairs.join('')}>${contents}</${name}>`
}

export interface Box {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

export const rect = (box: Box, attributes: Attributes): string => element('rect', { ...box, ...attributes })

export const path = (d: string, attributes: Attributes): string => element('path', { d, ...attributes })

export const moved = (x: number, y: number, contents: string, scale = 1): string =>
  element(
    'g',
    { transform: `translate(${written(x)} ${written(y)})${scale === 1 ? '' : ` scale(${scale})`}` },
    contents,
  )

export const drawing = (width: number, height: number, contents: string): string =>
  element('svg', { xmlns: 'http://www.w3.org/2000/svg', width, height, viewBox: `0 0 ${width} ${height}` }, contents)
