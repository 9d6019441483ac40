// A plugin for Stryker: it leaves the texts of an error alone. What a test should hold of a refusal
// is which parameter was refused and what value it had, not the wording for people.
import { declareValuePlugin, PluginKind } from '@stryker-mutator/api/plugin';

const texts = new Set(['expected', 'hint', 'problem', 'shown']);

export const strykerPlugins = [
  declareValuePlugin(PluginKind.Ignore, 'messages', {
    shouldIgnore(path) {
      if (!path.isObjectProperty() || !texts.has(path.node.key.name)) return undefined;
      return 'the text of an error';
    },
  }),
];
