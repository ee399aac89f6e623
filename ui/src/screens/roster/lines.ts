// How a line of the Roster is said: her kit in short, how the files stand, what waits.
import type { KitShort, RosterEntry } from '$lib/types';
import { conditionName, dayShort, say, stageWords, weightWords } from '$lib/words';
import { dueWords } from '../safety/words';
import { planDue } from './filters';
import { restrictionWords } from './restriction.svelte';

export function kitWords(kit: KitShort | null): string {
  if (!kit) return say('roster-kit-unsaid');
  const weights = [
    kit.pairs > 0 ? say('roster-kit-pairs', { count: kit.pairs }) : '',
    kit.singles > 0 ? say('roster-kit-singles', { count: kit.singles }) : '',
  ].filter((part) => part !== '');
  if (weights.length > 0 && kit.heaviest) {
    weights.push(say('roster-kit-heaviest', { load: weightWords(kit.heaviest) }));
  }
  const parts = [
    weights.join(' '),
    kit.barbell ? say('roster-kit-barbell') : '',
    kit.bands > 0 ? say('roster-kit-bands', { count: kit.bands }) : '',
    ...kit.things.map((thing) => say(`thing-${thing}`).toLocaleLowerCase()),
  ].filter((part) => part !== '');
  return parts.length > 0 ? parts.join(', ') : say('roster-kit-nothing');
}

export function programmeWords(client: RosterEntry): string {
  if (!client.programme) return say('roster-no-programme');
  if (!client.week) return client.programme;
  const { week, weeks, over } = client.week;
  const how = over
    ? say('roster-week-over')
    : weeks === null
      ? say('roster-week', { week })
      : say('roster-week-of', { week, weeks });
  return `${client.programme}, ${how}`;
}

export function lastWords(client: RosterEntry): string {
  return client.last_days === null
    ? say('roster-last-never')
    : say('roster-last-days', { days: client.last_days });
}

/** How the files stand, the plan first. */
export function filesWords(client: RosterEntry): string[] {
  const files = client.files;
  const plan =
    files.plan === 'none'
      ? ''
      : say(`roster-plan-${files.plan}`, { day: files.sent ? dayShort(files.sent) : '' });
  return [
    plan,
    files.plan === 'up_to_date' && files.unsent > 0 ? say('roster-plan-unsent', { count: files.unsent }) : '',
    files.taken_in ? say('roster-log-in', { day: dayShort(files.taken_in) }) : say('roster-log-none'),
  ].filter((part) => part !== '');
}

/** What waits, the most urgent first. */
export function waitsWords(client: RosterEntry): string[] {
  const { red, holds, clearance, screen } = client.waits;
  return [
    red ? say('roster-waits-red') : '',
    holds > 0 ? say('roster-waits-holds', { count: holds }) : '',
    clearance ? say('roster-waits-clearance') : '',
    screen ? `${say('screen-title')}: ${dueWords(screen)}` : '',
  ].filter((part) => part !== '');
}

/** A line of the Roster in words. */
export interface LineWords {
  stage: string;
  programme: string;
  kit: string;
  waits: readonly string[];
  /** What screening found and what is ruled out. */
  extra: string;
  last: string;
  files: readonly string[];
  due: boolean;
}

const LINES = new WeakMap<RosterEntry, LineWords>();

/** The words of a line, made once as long as nothing of it changes: typing in the search shows the same lines again. */
export function lineOf(client: RosterEntry): LineWords {
  const made = LINES.get(client);
  if (made) return made;
  const line: LineWords = {
    stage: client.stage ? stageWords(client.stage) : say('roster-stage-unsaid'),
    programme: programmeWords(client),
    kit: kitWords(client.kit),
    waits: waitsWords(client),
    extra: [
      ...client.conditions.map(conditionName),
      ...client.restrictions.map((r) => restrictionWords(r.what)),
    ].join(' · '),
    last: lastWords(client),
    files: filesWords(client),
    due: planDue(client),
  };
  LINES.set(client, line);
  return line;
}
