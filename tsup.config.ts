import { defineConfig } from 'tsup';

export default defineConfig({
  entry: {
    index: 'src/index.ts',
    shelf: 'src/shelf/index.ts',
    teaching: 'src/teaching/index.ts',
  },
  format: ['esm', 'cjs'],
  dts: true,
  clean: true,
  target: 'node20',
  platform: 'neutral',
  splitting: true,
  treeshake: false,
});
