import { pageHtml } from './layout.js';

/** The page where a reader's own sheet or shed is reported and planned. */
export const partsPage = (guides: { readonly sheet: string; readonly shed: string }): string =>
  pageHtml({
    title: 'Your engine or shed',
    root: '',
    script: 'parts',
    main: `<h1>Your engine or shed</h1>
<p>Give it the readings of one engine, an <a href="${guides.sheet}">inspection sheet</a>, or all the parts you have, a <a href="${guides.shed}">shed file</a>. It says what to do with them, and of a shed it plans the most engines that the parts make. It works on your device: no file is sent anywhere.</p>
<div id="drop" class="drop">
<p><label for="choose">Choose the file, and the CSV of its readings if there is one, or drop them here:</label></p>
<p><input type="file" id="choose" multiple accept=".json,.csv,application/json,text/csv"></p>
<p>Or try one: <button type="button" data-try="pump-set-inch.json">the pump set's engine</button>
<button type="button" data-try="pump-set-shed.json pump-set-shed-readings.csv">the pump set's shed</button></p>
</div>
<details id="paste"><summary>Paste or change it here</summary>
<p><label for="file">Sheet or shed file</label></p>
<textarea id="file" rows="12" spellcheck="false" autocomplete="off"></textarea>
<p><label for="readings">Readings of a shed, as CSV</label></p>
<textarea id="readings" rows="6" spellcheck="false" autocomplete="off"></textarea>
</details>
<form id="options" class="options">
<label>Print in <select id="units"><option value="">the units of the file</option><option value="inch">inches</option><option value="metric">millimetres</option></select></label>
<label><input type="checkbox" id="why"> tell why</label>
<label><input type="checkbox" id="buying" checked> parts may be bought</label>
<label>Build at most <input type="text" id="at-most" inputmode="numeric" size="3" aria-describedby="at-most-hint"> engines</label>
<span id="at-most-hint" class="hint">Empty: as many as there can be.</span>
</form>
<p class="buttons"><button type="button" id="report">Report</button>
<button type="button" id="plan">Plan the engines</button>
<button type="button" id="cancel" hidden>Cancel</button>
<progress id="bar" aria-label="working" hidden></progress></p>
<p id="progress" role="status"></p>
<p id="refusal" class="refusal" role="alert"></p>
<div id="papers"></div>
<noscript><p>This page computes with JavaScript, which is off.</p></noscript>`,
  });
