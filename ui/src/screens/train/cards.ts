// Which card is in view. Derived from what the shell says of the log, and from a few things this page remembers; so
// a page that starts again shows the right card by itself.
import type { MarkView, SessionView, TrainView } from '$lib/types';
import type { Memory } from './memory';

export type Card =
  | 'no-plan'
  | 'stop'
  | 'ready'
  | 'check-in'
  | 'mark'
  | 'pause'
  | 'finish'
  | 'rest'
  | 'block'
  | 'work'
  | 'finished';

/** What she is in the middle of, on this page alone. */
export interface Doing {
  /** The mark that is being described. */
  marking: MarkView | null;
  checkingIn: boolean;
  paused: boolean;
  finishing: boolean;
}

export function cardOf(view: TrainView, doing: Doing, memory: Memory): Card {
  const { state } = view;
  // A sign that stops training is answered at once, whatever else was being said.
  if (state.state === 'closed' && (state.class === 'red' || !doing.marking)) return 'stop';
  if (doing.marking) return 'mark';
  switch (state.state) {
    case 'no_plan':
      return 'no-plan';
    case 'closed':
      return 'stop';
    case 'ready':
      return doing.checkingIn ? 'check-in' : 'ready';
    case 'finished':
      return 'finished';
    case 'session':
      return sessionCard(state, doing, memory);
  }
}

function sessionCard(session: SessionView, doing: Doing, memory: Memory): Card {
  if (doing.finishing || !session.work) return 'finish';
  if (doing.paused) return 'pause';
  if (session.rest && !memory.restLeft(session.rest.after)) return 'rest';
  if (session.opens && !memory.blockRead(session.run, session.opens.block)) return 'block';
  return 'work';
}

/** The cards of a session under way fill the screen. */
export const fills = (card: Card): boolean =>
  card === 'mark' || card === 'finish' || card === 'rest' || card === 'block' || card === 'work';

/** A mark that was made and not described, say because the page went away: it is asked about again. */
export function openMark(view: TrainView, memory: Memory): MarkView | null {
  if (view.state.state !== 'session') return null;
  const last = view.state.marks.at(-1);
  return last && last.symptom.kind === null && last.can_withdraw && !memory.markPassed(last.mark)
    ? last
    : null;
}
