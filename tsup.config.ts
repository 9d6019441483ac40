import { rmSync } from 'node:fs';
import { defineConfig } from 'tsup';

rmSync('dist', { recursive: true, force: true });

export default defineConfig([
  {
    entry: {
      index: 'src/index.ts',
      'convert-units': 'src/convert-units/index.ts',
      shelf: 'src/shelf/index.ts',
      teaching: 'src/teaching/index.ts',
    },
    format: ['esm', 'cjs'],
    dts: true,
    target: 'node20',
    platform: 'neutral',
    splitting: true,
    treeshake: false,
  },
  {
    entry: { crankwright: 'src/command/main.ts' },
    format: ['esm'],
    target: 'node20',
    platform: 'node',
    splitting: false,
  },
]);
