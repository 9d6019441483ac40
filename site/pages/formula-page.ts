import { unitsOf } from '../../src/quantities/scales.js';
import { cardMathml, equation } from '../../src/teaching/card-typeset.js';
import { inMath, mathml } from '../../src/teaching/mathml.js';
import {
  beginWith,
  type CardLetter,
  type CardName,
  cards,
  compute,
  isWritten,
  resultUnit,
  unitOfLetter,
} from '../cards.js';
import { FILM_NOTES } from '../film-card.js';
import { type AnyUnit, sayResult, typed } from '../units.js';
import { capital, escaped, pageHtml } from './layout.js';
import { anchorOf, titleOf } from './topics.js';
import { symbolMathml } from './typeset.js';

/** The page of one formula. `reference` is where its function is described, seen from the site's folder. */
export function formulaPage(name: CardName, reference: string | undefined): string {
  const card = cards[name];
  const { gives, letters, refuses, source, of, topic } = card;
  const example = beginWith(card, 'inch');
  const value = compute(card, example) as number;
  const shown = sayResult(value, resultUnit(card, value, 'inch'));
  const [formula = '', ...where] = isWritten(name) ? cardMathml(name) : [filmFormula()];
  const code = `<code>${escaped(of.name)}</code>`;
  const main = `<p class="topic"><a href="index.html#${anchorOf(topic)}">${escaped(titleOf(topic))}</a></p>
<h1>${escaped(capital(card.name))}</h1>
<div class="formula">${formula}</div>
${where.length > 0 ? `<div class="where"><p>where</p>${where.join('\n')}</div>` : ''}
<p>${symbolMathml(gives.symbol)} is the ${withIndices(escaped(gives.meaning))}.</p>
${isWritten(name) ? '' : FILM_NOTES.map((note) => `<p class="note">${escaped(note)}</p>`).join('\n')}
<div class="live">
<form id="fields" novalidate>
<h2>Your readings</h2>
<p class="note">They begin with an example of a small engine. Write a number as it stands on your paper, <kbd>2.125</kbd> or <kbd>2-1/8</kbd>. A unit behind it, <kbd>53.98 mm</kbd>, counts before the one chosen beside it.</p>
<fieldset class="systems"><legend>Units</legend>
<label><input type="radio" name="system" value="inch" checked> inch</label>
<label><input type="radio" name="system" value="metric"> metric</label>
</fieldset>
${Object.entries(letters)
  .map(([letter, about]) =>
    fieldHtml(letter, about, example[letter] as number, unitOfLetter(card, letter, 'inch')),
  )
  .join('\n')}
<button type="button" id="again">Back to the example</button>
</form>
<section class="result" aria-labelledby="result-heading">
<h2 id="result-heading">${escaped(capital(gives.meaning))}</h2>
<p><output id="result" aria-live="polite">${escaped(shown)}</output>
<label class="unit">shown in <select id="unit-of-result" aria-label="unit of the result"></select></label></p>
<p id="refusal" class="refusal" aria-live="polite"></p>
<div class="drawn">
<p class="against"><label for="against">Drawn against</label> <select id="against"></select></p>
<div id="picture" class="picture"></div>
<label for="slider" class="slide">Move it</label>
<input type="range" id="slider" min="0" max="200" step="1">
</div>
</section>
</div>
${isWritten(name) ? '<details id="working"><summary>Worked out with these numbers</summary><div id="working-lines"></div></details>' : ''}
<h2>What it does not take</h2>
<p>A value that no such part has is refused, and so is</p>
<ul>
${Object.keys(refuses)
  .map((cause) => `<li>${escaped(cause)}</li>`)
  .join('\n')}
<li>what is no number, or has a unit of another kind.</li>
</ul>
<h2>Source</h2>
<p>${escaped(capital(source))}.</p>
<p class="code">In code: ${reference === undefined ? code : `<a href="../${reference}">${code}</a>`}${isWritten(name) ? `; this card is <code>cards.${name}</code>` : ''}.</p>
<noscript><p>This page computes with JavaScript, which is off. The formula above holds all the same.</p></noscript>`;
  return pageHtml({
    title: capital(card.name),
    root: '../',
    script: 'formula',
    data: { card: name },
    main,
  });
}

function filmFormula(): string {
  const { gives, expression, letters } = cards.leastFilm;
  const symbols = new Set([gives.symbol, 'e', ...Object.keys(letters)]);
  return inMath(equation(`${gives.symbol} = ${expression}`, symbols, mathml));
}

function fieldHtml(
  letter: string,
  { meaning, domain }: CardLetter,
  value: number,
  unit: AnyUnit,
): string {
  const options = unitsOf(domain.dimension).map(
    ({ symbol }) =>
      `<option value="${escaped(symbol)}"${symbol === unit.symbol ? ' selected' : ''}>${symbol === '-' ? 'number' : escaped(symbol)}</option>`,
  );
  return `<div class="field">
<label for="field-${letter}">${symbolMathml(letter)} <span>${withIndices(escaped(meaning))}</span></label>
<div class="reading">
<input type="text" id="field-${letter}" value="${typed(value, unit)}" autocomplete="off" spellcheck="false" aria-describedby="refusal-${letter} hint-${letter}">
<select id="unit-${letter}" aria-label="unit of ${escaped(meaning)}">${options.join('')}</select>
</div>
<p class="refusal" id="refusal-${letter}" aria-live="polite"></p>
<p class="hint" id="hint-${letter}"></p>
</div>`;
}

/** Symbols in words: `T_1` with its index below. */
const withIndices = (text: string): string =>
  text.replace(/\b([A-Za-z])_(\w+)\b/g, '<i>$1</i><sub>$2</sub>');
