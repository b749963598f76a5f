// Bundles what runs in the browser: all that is shipped by default, the gallery of charts or the tests on demand.
import { build } from 'esbuild';
import { readdirSync, rmSync } from 'node:fs';

const target = '../target';
const browsers = ['chrome111', 'firefox114', 'safari16.4'];

const shipped = [
  { entryPoints: ['src/main.ts'], outfile: `${target}/classes/META-INF/resources/charts/keelweigh-charts.js`, format: 'esm' },
  { entryPoints: ['src/scan/main.ts'], outfile: `${target}/classes/META-INF/resources/scan/keelweigh-scan.js`, format: 'esm' },
  // Stands inside the field sheet, which is one file: a classic script, for no browser loads a module from a file.
  { entryPoints: ['src/sheet/main.ts'], outfile: `${target}/classes/report/field-sheet.js`, format: 'iife' },
].map((each) => ({ ...each, target: browsers, minify: true, legalComments: 'eof' }));

// A classic script, so that the page also opens straight from the file system.
const gallery = {
  entryPoints: ['gallery/gallery.ts'],
  outfile: `${target}/chart-gallery/gallery.js`,
  format: 'iife',
  target: browsers,
};

const tests = {
  entryPoints: readdirSync('test').filter((name) => name.endsWith('.test.ts')).map((name) => `test/${name}`),
  outdir: `${target}/chart-tests`,
  outExtension: { '.js': '.mjs' },
  format: 'esm',
  platform: 'node',
  target: 'node20',
  sourcemap: 'inline',
};

async function bundle(options) {
  await build({ bundle: true, logLevel: 'warning', ...options });
}

if (process.argv.includes('--tests')) {
  rmSync(`${target}/chart-tests`, { recursive: true, force: true });
  await bundle(tests);
} else if (process.argv.includes('--gallery')) {
  await bundle(gallery);
} else {
  await Promise.all(shipped.map(bundle));
}
