/** The library's weight: everything its face names, bundled, minified and compressed; and that one function does not bring the rest. */
import { brotliCompressSync, gzipSync } from 'node:zlib';
import { join } from 'node:path';
import { build } from 'esbuild';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../support/root.ts';

const FACE = join(ROOT, 'src', 'physics', 'index.ts');

async function bundle(code: string): Promise<Uint8Array> {
  const { outputFiles } = await build({
    stdin: { contents: code.replace('FACE', FACE), resolveDir: ROOT, loader: 'ts' },
    bundle: true, minify: true, format: 'esm', write: false,
  });
  return outputFiles[0]!.contents;
}

describe('the bundled library', () => {
  it('is below 25,000 bytes compressed', async () => {
    const code = await bundle("export * from 'FACE';");
    const sizes = { brotli: brotliCompressSync(code).length, gzip: gzipSync(code, { level: 9 }).length };
    console.log(`physics: ${code.length} bytes, brotli ${sizes.brotli}, gzip ${sizes.gzip}`);
    expect(sizes.brotli).toBeLessThan(25_000);
    expect(sizes.gzip).toBeLessThan(28_000);
  });

  it('needs nothing of Node', async () => {
    // Without a platform given esbuild bundles for a browser and refuses Node's own modules.
    await expect(bundle("export * from 'FACE';")).resolves.toBeInstanceOf(Uint8Array);
  });

  it.each([
    ['celsius', 600],
    ['saturationVaporPressure', 1800],
    ['moistAir', 3000],
    ['settlingVelocity', 3500],
    ['condense', 22_000],
  ])('leaves out what %s does not use: below %d bytes, not compressed', async (name, limit) => {
    expect((await bundle(`export { ${name} } from 'FACE';`)).length).toBeLessThan(limit);
  });
});
