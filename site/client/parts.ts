import type { Asked, Told } from '../planner-words.js';
import { byId, takeTheme } from './page.js';
import { showPaper } from './paper.js';

takeTheme();

const file = byId<HTMLTextAreaElement>('file');
const readings = byId<HTMLTextAreaElement>('readings');
const progress = byId('progress');
const refusal = byId('refusal');
const papers = byId('papers');
const plan = byId<HTMLButtonElement>('plan');
const report = byId<HTMLButtonElement>('report');
const cancel = byId<HTMLButtonElement>('cancel');
const choose = byId<HTMLInputElement>('choose');
const drop = byId('drop');

let worker = startWorker();

report.addEventListener('click', () => ask('report'));
plan.addEventListener('click', () => ask('plan'));
cancel.addEventListener('click', () => {
  worker.terminate();
  worker = startWorker();
  busy(false);
  say('Cancelled.');
  report.focus();
});
choose.addEventListener('change', () => void take(choose.files));
for (const kind of ['dragover', 'dragleave', 'drop'] as const) {
  drop.addEventListener(kind, (event) => {
    event.preventDefault();
    drop.classList.toggle('over-it', kind === 'dragover');
    if (kind === 'drop') void take(event.dataTransfer?.files ?? null);
  });
}
for (const button of document.querySelectorAll<HTMLButtonElement>('button[data-try]')) {
  button.addEventListener('click', () => void tryExample(button.dataset['try'] ?? ''));
}
document.body.dataset['ready'] = 'yes';

/** Puts chosen or dropped files into the fields: a CSV is readings, anything else a sheet or a shed. */
async function take(files: FileList | null): Promise<void> {
  const all = [...(files ?? [])];
  if (all.length === 0) return;
  const isReadings = ({ name }: File) => /\.csv$/i.test(name);
  const [main, csv] = [all.find((each) => !isReadings(each)), all.find(isReadings)];
  if (main) {
    file.value = await main.text();
    readings.value = '';
  }
  if (csv) readings.value = await csv.text();
  ask('report');
}

async function tryExample(names: string): Promise<void> {
  const [main = '', csv] = names.split(' ');
  const text = async (name: string) => (await fetch(`examples/${name}`)).text();
  file.value = await text(main);
  readings.value = csv === undefined ? '' : await text(csv);
  ask('report');
}

function ask(what: Asked['ask']): void {
  const units = byId<HTMLSelectElement>('units').value;
  const atMost = byId<HTMLInputElement>('at-most').value.trim();
  papers.replaceChildren();
  refusal.textContent = '';
  busy(true);
  say(what === 'plan' ? 'Planning …' : 'Reading …');
  const now = new Date();
  const pad = (n: number) => String(n).padStart(2, '0');
  const asked: Asked = {
    ask: what,
    text: file.value,
    today: `${now.getFullYear()}-${pad(now.getMonth() + 1)}-${pad(now.getDate())}`,
    why: byId<HTMLInputElement>('why').checked,
    buying: byId<HTMLInputElement>('buying').checked,
    ...(readings.value.trim() !== '' && { readings: readings.value }),
    ...(units !== '' && { units: units as 'inch' | 'metric' }),
    ...(atMost !== '' && { atMost: Number(atMost) }),
  };
  worker.postMessage(asked);
}

function startWorker(): Worker {
  const started = new Worker(new URL('./planner.js', import.meta.url), { type: 'module' });
  started.addEventListener('message', ({ data }: MessageEvent<Told>) => void hear(data));
  started.addEventListener('error', () =>
    refuse('The part of this page that computes did not load.'),
  );
  return started;
}

async function hear(told: Told): Promise<void> {
  if (told.told === 'progress') {
    say(`Planning: ${told.stage}, ${Math.floor(told.elapsed)} s`);
    return;
  }
  if (told.told === 'refused') {
    refuse(told.message);
    return;
  }
  const [first, ...others] = told.papers.map((paper) => showPaper(paper, papers));
  await first;
  void Promise.all(others);
  busy(false);
  plan.disabled = told.of === 'sheet';
  say(`Done: ${told.papers.map(({ title }) => title.toLowerCase()).join(' and ')}, below.`);
}

function refuse(message: string): void {
  busy(false);
  say('');
  refusal.textContent = message;
}

function busy(is: boolean): void {
  report.disabled = is;
  plan.disabled = is;
  cancel.hidden = !is;
  byId('bar').hidden = !is;
}

/** Says how it goes, where a screen reader hears it; the same words are not said again. */
function say(text: string): void {
  if (progress.textContent !== text) progress.textContent = text;
}
