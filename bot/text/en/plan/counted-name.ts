/** One of what is counted and several, where the catalogue's name is that of the pieces and of nothing else. */
const COUNTED: Readonly<Record<string, readonly [one: string, several: string]>> = {
  cardamom: ['cardamom pod', 'cardamom pods'],
  clove: ['clove', 'cloves'],
  coffee_whole: ['coffee bean', 'coffee beans'],
  fig: ['fig', 'figs'],
  green_walnut: ['green walnut', 'green walnuts'],
  hazelnut: ['hazelnut', 'hazelnuts'],
  juniper: ['juniper berry', 'juniper berries'],
  kumquat: ['whole kumquat', 'whole kumquats'],
  lemongrass: ['lemongrass stalk', 'lemongrass stalks'],
  myrtle_berries: ['myrtle berry', 'myrtle berries'],
  nutmeg: ['nutmeg', 'nutmegs'],
  pear: ['pear', 'pears'],
  quince: ['quince', 'quinces'],
  raisin: ['raisin', 'raisins'],
  raspberry: ['raspberry', 'raspberries'],
  rhubarb_stalk: ['rhubarb stalk', 'rhubarb stalks'],
  sage: ['sage leaf', 'sage leaves'],
  sloe: ['sloe', 'sloes'],
  sour_cherry: ['sour cherry', 'sour cherries'],
  strawberry: ['strawberry', 'strawberries'],
  vanilla: ['vanilla pod', 'vanilla pods'],
}

/** `vanilla pod` of one of it; null of what may have been counted in sticks or sprigs. */
export const countedName = (id: string, count: number): string | null => COUNTED[id]?.[count <= 1 ? 0 : 1] ?? null
