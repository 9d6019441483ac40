/** What a page may load: its own folder's files and nothing else. The solver is WebAssembly. */
const MAY_LOAD =
  "default-src 'self'; script-src 'self' 'wasm-unsafe-eval'; object-src 'none'; base-uri 'none'; form-action 'none'";

/** A page of the site. */
export interface Page {
  readonly title: string;
  /** The way to the folder of the site: empty, or `../`. */
  readonly root: '' | '../';
  /** The script of the page, without its ending. */
  readonly script: string;
  /** What the page says about itself to its script. */
  readonly data?: Readonly<Record<string, string>>;
  readonly main: string;
}

/** A whole page. */
export const pageHtml = ({ title, root, script, data = {}, main }: Page): string => `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="${MAY_LOAD}">
<title>${escaped(title)} | crankwright</title>
<link rel="icon" href="${root}pages/icon.svg">
<link rel="stylesheet" href="${root}pages/style.css">
<script type="module" src="${root}pages/${script}.js"></script>
</head>
<body${Object.entries(data)
  .map(([name, value]) => ` data-${name}="${escaped(value)}"`)
  .join('')}>
<a class="skip" href="#main">Skip to the page</a>
<header>
<nav aria-label="Site">
<a href="${root}index.html">crankwright</a>
<a href="${root}formulas/index.html">Formulas</a>
<a href="${root}your-parts.html">Your engine or shed</a>
</nav>
</header>
<main id="main">
${main}
</main>
<footer><p>These are calculations, not permission. The maker's manual, local codes and licensed practice come first. Nothing that you type here leaves your device.</p></footer>
</body>
</html>
`;

/** Text in HTML, also between quotes. */
export const escaped = (text: string): string =>
  text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');

/** A sentence with a capital letter at its beginning. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
