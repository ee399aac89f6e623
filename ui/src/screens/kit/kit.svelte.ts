// The kit as it is being filled in. Weights stay exactly as they were written, number and unit: 25 lb never turns
// into 11.34 kg. Kilograms are worked out here for one purpose alone, to list the weights in order.
import type { Band, Barbell, Dumbbell, Kit, MassUnit, Thing, Weight } from '$lib/types';

/** Everything that can be ticked, in the order of the screen. */
export const THINGS: readonly Thing[] = ['bench', 'step', 'loop_band', 'straps', 'pull_up_bar'];

/** Weights that stand ready for one tap. Common practice, no source: what is sold for homes. */
export const COMMON: Record<MassUnit, readonly number[]> = {
  kg: [1, 2, 3, 4, 5, 6, 8, 10, 12, 14, 16, 20, 24],
  lb: [3, 5, 8, 10, 12, 15, 20, 25, 30, 35, 45, 50],
};

/** A set that is often sold or owned together. Common practice, no source. */
export interface HomeSet {
  id: string;
  unit: MassUnit;
  weights: readonly number[];
  pair: boolean;
}

export const HOME_SETS: readonly HomeSet[] = [
  { id: 'light-pairs-kg', unit: 'kg', weights: [1, 2, 3, 5], pair: true },
  { id: 'even-pairs-kg', unit: 'kg', weights: [2, 4, 6, 8, 10], pair: true },
  { id: 'singles-kg', unit: 'kg', weights: [8, 12, 16], pair: false },
  { id: 'light-pairs-lb', unit: 'lb', weights: [3, 5, 8], pair: true },
  { id: 'even-pairs-lb', unit: 'lb', weights: [5, 10, 15, 20, 25], pair: true },
  { id: 'singles-lb', unit: 'lb', weights: [18, 26, 35], pair: false },
];

/** How many of one weight there are. */
export type Count = 'none' | 'one' | 'pair';

/** The unit of force that a luggage scale shows, in newtons: standard gravity. */
const NEWTONS_PER_KG = 9.80665;

/** For the order of the list only: kilograms in a pound, by definition. */
const KG_PER_LB = 0.45359237;
const order = (w: Weight): number => (w.unit === 'kg' ? w.value : w.value * KG_PER_LB);
const same = (a: Weight, b: Weight): boolean => a.value === b.value && a.unit === b.unit;

/** A weight that can be written down: above zero, at most 500 of its unit, two decimals. */
export function readWeight(text: string | number | null, unit: MassUnit): Weight | null {
  const value = typeof text === 'number' ? text : Number((text ?? '').replace(',', '.'));
  if (!Number.isFinite(value) || value <= 0 || value > 500) return null;
  return { value: Math.round(value * 100) / 100, unit };
}

export class KitDraft {
  unit = $state<MassUnit>('kg');
  dumbbells = $state<Dumbbell[]>([]);
  barbell = $state<Barbell | null>(null);
  bands = $state<Band[]>([]);
  things = $state<Thing[]>([]);
  #saved = $state('');

  constructor(kit: Kit) {
    this.take(kit);
    const first = kit.dumbbells[0]?.weight ?? kit.barbell?.bar;
    if (first) this.unit = first.unit;
  }

  /** Starts anew from what is stored. */
  take(kit: Kit): void {
    // Through JSON, so that what is edited here never reaches into the view that it came from.
    const copy = JSON.parse(JSON.stringify(kit)) as Kit;
    this.dumbbells = copy.dumbbells;
    this.barbell = copy.barbell;
    this.bands = copy.bands;
    this.things = copy.things;
    this.sort();
    this.#saved = JSON.stringify(this.toKit());
  }

  /** True when something differs from what is stored. */
  get changed(): boolean {
    return JSON.stringify(this.toKit()) !== this.#saved;
  }

  countOf(weight: Weight): Count {
    const found = this.dumbbells.find((d) => same(d.weight, weight));
    return found ? (found.pair ? 'pair' : 'one') : 'none';
  }

  set(weight: Weight, count: Count): void {
    this.dumbbells = this.dumbbells.filter((d) => !same(d.weight, weight));
    if (count !== 'none') this.dumbbells.push({ weight: { ...weight }, pair: count === 'pair' });
    this.sort();
  }

  /** One tap: none, one, a pair, none again. */
  turn(weight: Weight): void {
    const next: Record<Count, Count> = { none: 'one', one: 'pair', pair: 'none' };
    this.set(weight, next[this.countOf(weight)]);
  }

  /** Adds a whole set; what she has as a pair stays a pair. */
  addSet(set: HomeSet): void {
    for (const value of set.weights) {
      const weight: Weight = { value, unit: set.unit };
      if (this.countOf(weight) !== 'pair') this.set(weight, set.pair ? 'pair' : 'one');
    }
  }

  /** Weights on one-tap buttons: the common ones of the unit, and her own beside them, whatever their unit. */
  get offered(): Weight[] {
    const unit = this.unit;
    const own = this.dumbbells
      .map((d) => d.weight)
      .filter((w) => w.unit !== unit || !COMMON[unit].includes(w.value));
    return [...COMMON[unit].map((value): Weight => ({ value, unit })), ...own].sort(
      (a, b) => order(a) - order(b),
    );
  }

  setBar(weight: Weight | null): void {
    this.barbell = weight ? { bar: weight, plates: this.barbell?.plates ?? [] } : null;
  }

  addPlates(weight: Weight): void {
    if (!this.barbell) return;
    this.barbell.plates.push({ weight });
    this.barbell.plates.sort((a, b) => order(b.weight) - order(a.weight));
  }

  removePlates(index: number): void {
    this.barbell?.plates.splice(index, 1);
  }

  /** Adds a band of a preset stiffness. A second of the same gets a number, so that a load can name it. */
  addBand(preset: Band): void {
    const taken = this.bands.map((b) => b.name);
    let name = preset.name;
    for (let n = 2; taken.includes(name); n += 1) name = `${preset.name} ${n}`;
    this.bands.push({ ...preset, name });
  }

  removeBand(index: number): void {
    this.bands.splice(index, 1);
  }

  /** Replaces the preset's force by one measured with a luggage scale, kg shown at twice and thrice its length. */
  measureBand(index: number, at100: number, at200: number): boolean {
    const band = this.bands[index];
    if (!band || !(at100 > 0) || !(at200 >= at100) || at200 > 150) return false;
    band.at_100 = at100 * NEWTONS_PER_KG;
    band.at_200 = at200 * NEWTONS_PER_KG;
    return true;
  }

  toggle(thing: Thing): void {
    const on = this.things.includes(thing);
    this.things = THINGS.filter((t) => (t === thing ? !on : this.things.includes(t)));
  }

  /** What is sent to be stored. */
  toKit(): Kit {
    const plain = {
      dumbbells: this.dumbbells,
      barbell: this.barbell,
      bands: this.bands,
      things: this.things,
    };
    return JSON.parse(JSON.stringify(plain)) as Kit;
  }

  private sort(): void {
    this.dumbbells.sort((a, b) => order(a.weight) - order(b.weight));
  }
}

/** Newtons as the kilograms that a luggage scale shows. */
export const scaleKg = (newtons: number): number => Math.round((newtons / NEWTONS_PER_KG) * 10) / 10;
