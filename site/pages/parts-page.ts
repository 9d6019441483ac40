import { pageHtml } from './layout.js';
export const partsPage = (): string =>
  pageHtml({
    title: 'Your engine or shed',
    root: '',
    script: 'parts',
    main: '<h1>Your engine or shed</h1>',
  });
