import { createHash } from 'node:crypto';
import { readFile, writeFile } from 'node:fs/promises';
import { builtPages } from './builtFiles.mjs';

/**
 * Gives every built page a strict Content Security Policy: nothing but the site's own files, and of what stands in the page
 * itself only what was there when it was built, by its hash.
 *
 * @returns {import('astro').AstroIntegration}
 */
export function securityPolicy() {
  return {
    name: 'security-policy',
    hooks: {
      'astro:build:done': async ({ dir }) => {
        for (const page of await builtPages(dir)) {
          const html = await readFile(page, 'utf8');
          await writeFile(page, withPolicy(html));
        }
      },
    },
  };
}

function withPolicy(html) {
  const scripts = bodies(html, 'script');
  const styles = [...bodies(html, 'style'), ...styleAttributes(html)];
  const policy = [
    "default-src 'none'",
    // The search runs as WebAssembly.
    `script-src 'self' 'wasm-unsafe-eval' ${hashes(scripts)}`,
    // Icons and code blocks carry style attributes: of those, too, only the ones that were there when it was built.
    `style-src 'self' 'unsafe-hashes' ${hashes(styles)}`,
    "img-src 'self' data:",
    "font-src 'self'",
    "connect-src 'self'",
    "worker-src 'self'",
    "manifest-src 'self'",
    "base-uri 'none'",
    "form-action 'self'",
  ].join('; ');
  const meta = `<meta http-equiv="Content-Security-Policy" content="${policy}"/>`;
  const charset = /<meta charset="utf-8"\s*\/?>/i;
  if (!charset.test(html)) throw new Error('A page has no <meta charset> to put its policy after.');
  return html.replace(charset, (found) => `${found}${meta}`);
}

/** What stands between the tags of elements that have no address. */
function bodies(html, tag) {
  const elements = html.matchAll(new RegExp(`<${tag}\\b([^>]*)>(.*?)</${tag}>`, 'gs'));
  return [...elements].flatMap(([, attributes, body]) =>
    /\ssrc=/.test(attributes) || body === '' ? [] : [body],
  );
}

function styleAttributes(html) {
  return [...html.matchAll(/\sstyle="([^"]*)"/g)].map(([, value]) =>
    value.replaceAll('&quot;', '"').replaceAll('&#39;', "'").replaceAll('&amp;', '&'),
  );
}

function hashes(texts) {
  const hash = (text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
  return [...new Set(texts.map(hash))].join(' ');
}
