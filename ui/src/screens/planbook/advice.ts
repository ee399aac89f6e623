// Advice in words, and in the groups in which the page shows it.
import type { Advice, AdviceView, Block, ClosedBy, Fix, Named, Piece, Programme, Slot } from '$lib/types';
import { conditionName, dayWords, factArgs, ladderName, numberWords, say, symptomName } from '$lib/words';

/** So many names stand in a sentence; the rest behind it. */
const NAMES = 4;

/** Advice about one thing: the clients, the week, a session, a slot or a block of it. */
export interface Group {
  key: string;
  session: string | null;
  slot: string | null;
  title: string;
  advice: Advice[];
  nothing: boolean;
}

const blocksOf = (programme: Programme): Block[] => programme.sessions.flatMap((s) => s.blocks);

const movesOf = (block: Block | undefined): string =>
  block?.slots.map((s) => ladderName(s.ladder)).join(' + ') ?? '';

export function groups(view: AdviceView, programme: Programme): Group[] {
  const found = new Map<string, Group>();
  const add = (advice: Advice): void => {
    const session = programme.sessions.find((s) => s.id === advice.session);
    const block = session?.blocks.find((b) => b.id === advice.block);
    const slot: Slot | undefined = block?.slots.find((s) => s.id === advice.slot);
    const clients = advice.code === 'closed' || advice.code === 'waits';
    const key = slot?.id ?? block?.id ?? session?.id ?? (clients ? 'clients' : 'week');
    const group = found.get(key) ?? {
      key,
      session: session?.id ?? null,
      slot: slot?.id ?? null,
      title: slot
        ? ladderName(slot.ladder)
        : block
          ? movesOf(block)
          : say(session ? 'advice-session' : clients ? 'advice-clients' : 'advice-week'),
      advice: [],
      nothing: false,
    };
    group.advice.push(advice);
    group.nothing ||= advice.nothing_left;
    found.set(key, group);
  };
  // What a programme no longer has is gone from the page before it is asked anew.
  view.advice.filter((a) => a.slot === null || stands(programme, a.slot)).forEach(add);
  return [...found.values()];
}

const stands = (programme: Programme, slot: string): boolean =>
  blocksOf(programme).some((b) => b.slots.some((s) => s.id === slot));

function named(view: AdviceView, whom: Named): string {
  const name = view.clients.find((c) => c.person === whom.person)?.name ?? '';
  if (whom.from !== null) return say('advice-who-from', { name, day: dayWords(whom.from) });
  if (whom.until !== null) return say('advice-who-until', { name, day: dayWords(whom.until) });
  return name;
}

export const everyone = (view: AdviceView, advice: Advice): string =>
  advice.whom.map((w) => named(view, w)).join(', ');

/** True where not all names stand in the sentence. */
export const isCut = (advice: Advice): boolean => advice.whom.length > NAMES + 1;

function who(view: AdviceView, advice: Advice): string {
  if (!isCut(advice)) return everyone(view, advice);
  const names = advice.whom.slice(0, NAMES).map((w) => named(view, w));
  return say('advice-who-more', { names: names.join(', '), count: advice.whom.length - NAMES });
}

function closedWords(by: ClosedBy): string {
  switch (by.by) {
    case 'position':
      return say('advice-by-position', { position: say(`position-${by.position}`) });
    case 'unwell':
      return say('advice-by-unwell', {
        position: say(`position-${by.position}`),
        symptom: symptomName(by.symptom),
      });
    case 'condition':
      return say('advice-by-condition', { condition: conditionName(by.condition) });
    case 'impact':
    case 'checks':
    case 'load':
    case 'first_days':
    case 'restriction':
      return say(`advice-by-${by.by}`);
  }
}

const numbers = (facts: Advice['facts']): Record<string, string> =>
  Object.fromEntries(
    Object.entries(facts).flatMap(([name, fact]) =>
      fact?.is === 'number' && !Number.isInteger(fact.value) ? [[name, numberWords(fact.value)]] : [],
    ),
  );

export function adviceWords(view: AdviceView, advice: Advice): string {
  const facts = factArgs(advice.facts as Record<string, never>);
  const pattern = advice.facts['pattern'];
  const said = say(`advice-${advice.code}`, {
    ...facts,
    ...numbers(advice.facts),
    ...(pattern?.is === 'words' ? { pattern: say(`pattern-${pattern.value}`) } : {}),
    who: who(view, advice),
    closed: advice.closed.map(closedWords).join(', '),
  });
  return advice.week === null ? said : say('advice-in-week', { week: advice.week, said });
}

/** What is ruled out beside what her kit lacks. */
export const besides = (advice: Advice): string =>
  advice.code === 'no-kit' && advice.closed.length > 0
    ? say('advice-besides', { closed: advice.closed.map(closedWords).join(', ') })
    : '';

const pieceName = (piece: Piece): string =>
  say(piece.piece === 'thing' ? `kit-piece-thing-${piece.thing}` : `kit-piece-${piece.piece}`);

export function fixWords(programme: Programme, advice: Advice, fix: Fix): string {
  switch (fix.fix) {
    case 'kit':
      return say('fix-kit', { pieces: fix.pieces.map(pieceName).join(', ') });
    case 'on_the_day':
      return say('fix-on-the-day');
    case 'edit': {
      const edited = fix.edit;
      const block =
        edited.edit === 'shape_block' ? blocksOf(programme).find((b) => b.id === edited.block) : undefined;
      const words = say(`fix-${fix.does}`, {
        ...factArgs(fix.facts as Record<string, never>),
        what: movesOf(block),
      });
      return advice.whom.length > 0 && fix.helps < advice.whom.length
        ? say('fix-helps', { fix: words, helps: fix.helps, count: advice.whom.length })
        : words;
    }
  }
}
