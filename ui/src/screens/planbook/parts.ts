// What a block is there for, in the order of a session.
import type { BlockForm, BlockPart } from '$lib/types';

export const PARTS: readonly BlockPart[] = ['warm_up', 'work', 'finisher', 'cool_down'];

export function partOf(form: BlockForm): BlockPart {
  switch (form) {
    case 'warm_up':
    case 'finisher':
    case 'cool_down':
      return form;
    case 'straight_sets':
    case 'superset':
    case 'tri_set':
    case 'giant_set':
      return 'work';
  }
}
