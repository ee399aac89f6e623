// Which clients of the Roster are in view: by name, group, stage, programme, and what waits. Each is a plain choice among
// what is there; nothing about training is worked out.
import { plain } from '$lib/find';
import type { GroupView, RosterEntry } from '$lib/types';

export type StageFilter = '' | 'pregnant' | 'postpartum' | 'after_loss' | 'neither' | 'unsaid';
export type WaitsFilter = '' | 'waits' | 'plan' | 'log';

export const STAGE_FILTERS: readonly StageFilter[] = [
  '',
  'pregnant',
  'postpartum',
  'after_loss',
  'neither',
  'unsaid',
];
export const WAITS_FILTERS: readonly WaitsFilter[] = ['', 'waits', 'plan', 'log'];

export interface Filter {
  name: string;
  /** A group's id; empty for all, `none` for those in no group. */
  group: string;
  stage: StageFilter;
  /** A programme's title; empty for all, `none` for those without one. */
  programme: string;
  waits: WaitsFilter;
}

export const ALL: Filter = { name: '', group: '', stage: '', programme: '', waits: '' };

export const isAll = (filter: Filter): boolean =>
  filter.name.trim() === '' &&
  !filter.group &&
  !filter.stage &&
  filter.programme === '' &&
  filter.waits === '';

/** Something of hers waits for the coach. */
export const waits = (client: RosterEntry): boolean =>
  client.waits.red || client.waits.holds > 0 || client.waits.clearance || client.waits.screen !== null;

/** A plan file is due: none was written, or what was sent is not what is written. */
export const planDue = (client: RosterEntry): boolean =>
  client.files.plan === 'not_sent' ||
  client.files.plan === 'older' ||
  (client.files.unsent > 0 && client.files.plan !== 'none');

function stageFits(client: RosterEntry, stage: StageFilter): boolean {
  return stage === '' || (client.stage?.stage ?? 'unsaid') === stage;
}

function waitsFits(client: RosterEntry, wanted: WaitsFilter): boolean {
  switch (wanted) {
    case '':
      return true;
    case 'waits':
      return waits(client);
    case 'plan':
      return planDue(client);
    case 'log':
      return client.files.taken_in === null;
  }
}

/** Those that fit, in their order; within a group in the group's. */
export function filtered(
  clients: readonly RosterEntry[],
  groups: readonly GroupView[],
  filter: Filter,
  names: ReadonlyMap<string, string>,
): RosterEntry[] {
  const words = plain(filter.name).split(/\s+/u);
  const group = groups.find((g) => g.id === filter.group);
  const grouped = filter.group === 'none' ? new Set(groups.flatMap((g) => g.members)) : null;
  const place = group ? new Map(group.members.map((person, i) => [person, i])) : null;
  const fits = clients.filter((client) => {
    const name = names.get(client.person) ?? plain(client.name);
    return (
      words.every((word) => name.includes(word)) &&
      (!place || place.has(client.person)) &&
      !grouped?.has(client.person) &&
      stageFits(client, filter.stage) &&
      (filter.programme === '' ||
        (filter.programme === 'none' ? client.programme === null : client.programme === filter.programme)) &&
      waitsFits(client, filter.waits)
    );
  });
  return place ? fits.sort((a, b) => (place.get(a.person) ?? 0) - (place.get(b.person) ?? 0)) : fits;
}

/** Names as they are searched, by person. */
export const namesOf = (clients: readonly RosterEntry[]): Map<string, string> =>
  new Map(clients.map((c) => [c.person, plain(c.name)]));

/** Titles of programmes that somebody has. */
export const titlesOf = (clients: readonly RosterEntry[]): string[] =>
  [...new Set(clients.flatMap((c) => (c.programme === null ? [] : [c.programme])))].sort((a, b) =>
    a.localeCompare(b),
  );

/** Which groups each client is in, by name. */
export function groupNames(groups: readonly GroupView[]): Map<string, string[]> {
  const of = new Map<string, string[]>();
  for (const group of groups)
    for (const person of group.members) of.set(person, [...(of.get(person) ?? []), group.name]);
  return of;
}
