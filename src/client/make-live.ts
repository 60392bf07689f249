import type { Form, FormItem, FormSection } from '../../schemas/form.ts';
import { askedOf, countsOf } from '../components/form-words.ts';
import { stagesText } from '../components/labels.ts';
import { positionMarkSvg } from '../figures/position-mark.ts';
import { shortCode } from '../forms/edition.ts';
import { type Numbered, numbered } from '../forms/paper/numbering.ts';
import { unwellFirst } from '../forms/paper/words.ts';
import { safetyLines } from '../forms/safety-words.ts';
import { escapeHtml } from '../text/html.ts';
import type { MadeForm } from './make-form.ts';

/** What is shown of a form while it is made. */
export interface LiveForm {
  /** "14 items, 55 blanks, 21 minutes". */
  sum: string;
  html: string;
}

/** A form as it is at the moment: what it is called and by what, then its sections with position marks and what each asks. */
export function liveForm({ form, seconds }: MadeForm, root: string): LiveForm {
  const { blanks, manoeuvres } = countsOf(form);
  const all = numbered(form);
  const counts = [counted(manoeuvres, 'item'), counted(blanks, 'blank'), `about ${minutes(seconds)}`].join(', ');
  const sections = form.sections.map((section) => sectionHtml(section, form, all, root));
  return { sum: `${counts}.`, html: `${headHtml(form)}${sections.join('')}${nameHtml(form)}` };
}

const counted = (count: number, noun: string): string => `${count} ${noun}${count === 1 ? '' : 's'}`;
const minutes = (seconds: number): string => counted(Math.max(1, Math.round(seconds / 60)), 'minute');

function headHtml({ purpose, leavesOut, mustNotMiss }: Form): string {
  const signs = mustNotMiss.map((sign) => `<li>${escapeHtml(sign)}</li>`).join('');
  return [
    paragraph(purpose, 'aim'),
    signs && `<div class="must-not-miss"><h3>Must not be missed</h3><ul class="lines">${signs}</ul></div>`,
    leavesOut && `<p><b>It leaves out:</b> ${escapeHtml(leavesOut)}</p>`,
    paragraph(unwellFirst, 'unwell-first'),
  ].join('');
}

const paragraph = (words: string, name: string): string =>
  words === '' ? '' : `<p class="${name}">${escapeHtml(words)}</p>`;

function sectionHtml(section: FormSection, form: Form, all: Numbered, root: string): string {
  const items = section.items.map((item) => itemHtml(section, item, form, all, root)).join('');
  const mark = positionMarkSvg(section.position);
  return `<section class="headed part"><h3>${mark} ${escapeHtml(section.title)}</h3><ol class="made-items">${items}</ol></section>`;
}

function itemHtml({ system }: FormSection, item: FormItem, form: Form, { numberOf }: Numbered, root: string): string {
  const number = numberOf.get(item.manoeuvre);
  const stages = item.positions.map((position) => [position]);
  const page = `${root}protocols/${system}/${item.manoeuvre}/`;
  const asks = askedOf(item).map(({ label, fields }) => `${label}${fields.length > 1 ? ' (right, left)' : ''}`);
  const marks = item.positions.map((position) => positionMarkSvg(position)).join('');
  const where = [stagesText(form.positions, stages), ...safetyCounts(item)].join(' · ');
  return [
    `<li><p class="what"><span class="number">${number ?? ''}</span> <a href="${escapeHtml(page)}">${escapeHtml(item.title)}</a></p>`,
    asks.length > 0 ? `<p>${escapeHtml(`${asks.join('; ')}.`)}</p>` : '',
    `<p class="where small note">${marks} ${escapeHtml(where)}</p>`,
    '</li>',
  ].join('');
}

/** How much safety an item carries; the words themselves are on the form. */
function safetyCounts(item: FormItem): string[] {
  const lines = safetyLines(item);
  const count = (kind: (typeof lines)[number]['kind']): number => lines.filter((line) => line.kind === kind).length;
  const [flags, cautions] = [count('flag'), count('caution')];
  return [
    ...(count('sensitive') > 0 ? ['sensitive examination'] : []),
    ...(flags > 0 ? [counted(flags, 'red flag')] : []),
    ...(cautions > 0 ? [counted(cautions, 'caution')] : []),
  ];
}

function nameHtml({ url, version, hash, publisher, copyright }: Form): string {
  const rights = [publisher && `${publisher}.`, copyright].filter((part) => part !== '').join(' ');
  const facts = [
    ['Version', `${version}, draft`],
    ['Code of the content', shortCode(hash)],
    ['Permanent name', url],
    ['Rights', rights],
  ];
  const rows = facts.map(([term = '', words = '']) => `<div><dt>${term}</dt><dd>${escapeHtml(words)}</dd></div>`);
  return `<section class="headed part"><h3>Identity</h3><dl class="identity">${rows.join('')}</dl></section>`;
}
