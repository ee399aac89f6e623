// Which phase and which week of it the editor shows. What a week asks for is the core's to say; here it is looked up.
import type { Block, BlockWeek, Dose, Phase, PlanSession, Programme, ProgrammeView, Slot } from '$lib/types';

export class Weeks {
  #phase = $state<string | null>(null);
  #week = $state<number | null>(null);

  /** The phase in view: the chosen one, else the first. */
  phase(programme: Programme): Phase | null {
    const phases = programme.phases ?? [];
    return phases.find((p) => p.id === this.#phase) ?? phases[0] ?? null;
  }

  /** How many weeks it has; none where the end is open. */
  count(programme: Programme): number {
    return this.phase(programme)?.weeks ?? programme.weeks ?? 0;
  }

  /** The week in view; null for every week. */
  week(programme: Programme): number | null {
    return this.#week !== null && this.#week <= this.count(programme) ? this.#week : null;
  }

  light(programme: Programme): readonly number[] {
    return this.phase(programme)?.light_weeks ?? programme.light_weeks ?? [];
  }

  show(phase: string | null, week: number | null): void {
    this.#phase = phase;
    this.#week = week;
  }

  sessions(programme: Programme): PlanSession[] {
    const phase = this.phase(programme)?.id ?? null;
    return programme.sessions.filter((s) => (s.phase ?? null) === phase);
  }

  /** The week in view as it is counted through the programme, from 0; the first of the phase for every week. */
  #index(programme: Programme): number {
    const phase = this.phase(programme);
    let before = 0;
    for (const p of programme.phases ?? []) {
      if (p.id === phase?.id) break;
      before += p.weeks;
    }
    return before + (this.week(programme) ?? 1) - 1;
  }

  /** What the core says of the week in view; without an end there is none. */
  seen(view: ProgrammeView): ProgrammeView['weeks'][number] | null {
    return view.weeks[this.#index(view.programme)] ?? null;
  }

  /** The weeks of the phase in view as the core sees them. */
  all(view: ProgrammeView): ProgrammeView['weeks'] {
    const id = this.phase(view.programme)?.id ?? null;
    return view.weeks.filter((w) => w.phase === id);
  }

  minutes(view: ProgrammeView, session: PlanSession): number {
    const here = this.sessions(view.programme).findIndex((s) => s.id === session.id);
    const inAll = view.programme.sessions.findIndex((s) => s.id === session.id);
    const minutes = this.week(view.programme) === null ? view.minutes[inAll] : this.seen(view)?.minutes[here];
    return minutes ?? 0;
  }
}

type Shape = Omit<BlockWeek, 'week'>;

/** Rounds and rests of a block in a week, or in every week. */
export function shapeIn(block: Block, week: number | null): Shape {
  return (block.by_week ?? []).find((w) => w.week === week) ?? block;
}

/** The dose of a slot in a week, or in every week. */
export function doseIn(slot: Slot, week: number | null): Dose {
  return (slot.by_week ?? []).find((w) => w.week === week)?.dose ?? slot.dose;
}

/** True where a block or one of its slots asks for something of its own in a week. */
export function isOwn(block: Block, week: number | null): boolean {
  const own = (list: readonly { week: number }[] | undefined): boolean =>
    (list ?? []).some((w) => w.week === week);
  return own(block.by_week) || block.slots.some((s) => own(s.by_week));
}

/** The weeks in which a block or one of its slots asks for something of its own. */
export function ownWeeks(block: Block): number[] {
  const all = [...(block.by_week ?? []), ...block.slots.flatMap((s) => s.by_week ?? [])].map((w) => w.week);
  return all.filter((week, i) => all.indexOf(week) === i).sort((a, b) => a - b);
}
