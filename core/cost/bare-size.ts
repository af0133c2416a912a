/** Sizes that spirit is bottled in, as they are called without a unit: ml, or litres with a point. 27 CFR 5.203 and Directive 2007/45/EC. */
export const BARE_SIZE =
  /(?:50|100|200|350|375|500|700|720|750|1000|1750|0?[.,](?:35|375|5|7|75)|1[.,](?:0|5|75)|1)(?![\d.,])/u

/** The size with its unit: `750 ml`, `1.75 l`. */
export const sizeNamed = (size: string): string => (Number(size.replace(',', '.')) < 10 ? `${size} l` : `${size} ml`)
