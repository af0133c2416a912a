import { newAsker, type TestAsker } from '../asker.ts'
import { jarDesk } from '../commands-jar/desk.ts'

/** A jar and what happened to it. */
interface TroubleJar {
  readonly name: string
  readonly lines: readonly string[]
}

const jar = (name: string, of: string, spirit: string, ...after: readonly string[]): TroubleJar => ({
  name,
  lines: [`/jar start ${name} of:${of} spirit:${spirit}`, ...after.map((line) => line.replaceAll('@', name))],
})

const strained = (measured: string) => `/jar strain @ measured:${measured}`
const sweetened = (sugar: string, water: string) => `/jar sweeten @ sugar:${sugar} water:${water}`

/** For the shelf of the midwinter fair, and some that nobody should put on it: of all kinds, in all states. */
export const troubleJars: readonly TroubleJar[] = [
  jar('lemon', '10 lemons', '1 l 95%', strained('930 ml'), sweetened('520 g', '1.56 l')),
  jar('sweet lemon', '10 lemons', '1 l neutral spirit 95%', strained('930 ml'), sweetened('1.1 kg', '1.5 l')),
  jar('orange', '6 oranges', '700 ml vodka 40%', strained('640 ml'), sweetened('100 g', '100 ml')),
  jar('lime', '12 limes', '500 ml 60%'),
  jar('aniseed', '30 g aniseed', '700 ml vodka 50%', strained('650 ml'), sweetened('250 g', '250 ml')),
  jar('mint', '40 g fresh peppermint', '500 ml vodka 40%'),
  jar('basil', '30 g fresh basil', '500 ml 95%', strained('460 ml'), sweetened('300 g', '700 ml')),
  jar('sloe', '500 g sloes', '700 ml gin 40%'),
  jar('damson', '500 g plums', '700 ml vodka 40%', strained('800 ml'), sweetened('250 g', '100 ml')),
  jar('raspberry', '300 g raspberries', '700 ml vodka 40%'),
  jar('strawberry', '300 g strawberries', '700 ml 50%', strained('800 ml'), sweetened('200 g', '100 ml')),
  jar('blackcurrant', '400 g blackcurrants', '700 ml 60%', strained('850 ml'), sweetened('300 g', '200 ml')),
  jar('cherry', '400 g sour cherries', '700 ml brandy 40%', strained('800 ml'), sweetened('150 g', '50 ml')),
  jar('quince', '400 g quinces', '700 ml 60%', strained('750 ml'), sweetened('250 g', '150 ml')),
  jar('apple', '400 g apples', '700 ml vodka 40%'),
  jar('rhubarb', '400 g rhubarb stalks', '700 ml 50%', strained('850 ml'), sweetened('250 g', '50 ml')),
  jar('walnut', '1 kg green walnuts', '1 l 95%'),
  jar('hazelnut', '200 g hazelnuts', '700 ml 60%', strained('650 ml'), sweetened('250 g', '250 ml')),
  jar('coffee', '60 g coffee beans, cracked', '500 ml 75.5%', strained('440 ml'), sweetened('200 g', '400 ml')),
  jar('cocoa', '60 g cocoa nibs', '700 ml rum 40%'),
  jar('chilli', '5 g dried chillies', '700 ml vodka 40%'),
  jar('ginger', '80 g ginger', '700 ml 60%', strained('700 ml'), sweetened('300 g', '400 ml')),
  jar('vanilla', '2 vanilla pods', '700 ml rum 40%'),
  jar('gentian', '10 g dried gentian root', '700 ml 60%', strained('680 ml'), sweetened('150 g', '300 ml')),
  jar('lavender', '8 g dried lavender', '500 ml 60%', strained('480 ml'), sweetened('150 g', '250 ml')),
  jar('elderflower', '60 g elderflowers', '700 ml vodka 40%'),
  jar('rosehip', '250 g rosehips', '700 ml 50%', strained('700 ml'), sweetened('200 g', '100 ml')),
  jar('oak', '8 g oak chips', '700 ml rum 40%'),
  jar('garlic', '20 g garlic', '500 ml vodka 40%'),
  // Weak: watered down far below where anything keeps.
  jar('weak', '300 g raspberries', '700 ml vodka 40%', strained('800 ml'), sweetened('60 g', '1.2 l')),
]

/** Somebody with all of them, strained and sweetened five weeks ago, asking on the last day. */
export async function troubleShelf(asker: TestAsker = newAsker()) {
  const desk = jarDesk('2026-09-01', asker)
  for (const { lines } of troubleJars) {
    const [start, ...after] = lines
    desk.at('2026-09-01')
    await desk.ask(start!)
    for (const line of after) {
      desk.at('2026-10-20')
      await desk.ask(line)
    }
  }
  desk.at('2026-11-25')
  return desk
}
