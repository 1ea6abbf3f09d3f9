/** HTML as text: what is written by people is escaped, in text and in attributes (HTML Living Standard, 13.1.2.3 and 13.3). */
import { describe, expect, it } from 'vitest';
import { plainText } from '../../src/sheets/html/plain-text.ts';
import { escapeHtml, html, NOTHING, raw } from '../../src/sheets/html/text.ts';
import { renderTable } from '../../src/sheets/html/table.ts';
import { STYLES, tableKind } from '../../src/tables/index.ts';
import { conditions } from '../tables/conditions.ts';

describe('escaping', () => {
  it.each([
    ['<script>alert(1)</script>', '&lt;script&gt;alert(1)&lt;/script&gt;'],
    ['" onload="x', '&quot; onload=&quot;x'],
    ["' onload='x", '&#39; onload=&#39;x'],
    ['&amp;', '&amp;amp;'],
    ['20 °C − 5', '20 °C − 5'],
  ])('%s', (text, escaped) => expect(escapeHtml(text)).toBe(escaped));

  it('is done for every placeholder but what is HTML already', () => {
    expect(html`<p title="${'a"b'}">${'<i>'}${raw('<b></b>')}${[raw('x'), raw('y')]}${undefined}${3}${NOTHING}</p>`.html).toBe('<p title="a&quot;b">&lt;i&gt;<b></b>xy3</p>');
  });
});

describe('plain text', () => {
  it.each([
    ['<p>One</p><p>two <em>three</em>.</p>', 'One two three.'],
    ['<p>Use <span class="katex"><math><mi>T</mi><annotation>T</annotation></math><span aria-hidden="true"><span>T</span></span></span> here</p>', 'Use here'],
    ['a &lt;b&gt; &amp; &#39;c&#39; &#x2212;5', "a <b> & 'c' −5"],
    ['<p title="a > b">x<br>y</p><svg><text>no</text></svg>z', 'x y z'],
  ])('%s', (html, text) => expect(plainText(html)).toBe(text));
});

describe('a table', () => {
  const setting = { conditions: { ...conditions, roomTitle: '<Room> & "vessel"' }, style: STYLES.en };
  const figure = { id: 'one', kind: tableKind('droplets')!, request: { at: {} }, caption: 'Drops <b>"few"</b>' };
  const markup = renderTable(figure, setting).html;

  it('escapes its caption and conditions, everywhere they stand', () => {
    expect(markup).not.toMatch(/<b>|<Room>/);
    expect(markup).toContain('aria-label="Drops &lt;b&gt;&quot;few&quot;&lt;/b&gt;"');
    expect(markup).toContain('&lt;Room&gt; &amp; &quot;vessel&quot;');
  });
  it('has a header for each column and each row, and a cell for the rest', () => {
    expect(markup.match(/<th scope="col">/g)).toHaveLength(8);
    expect(markup.match(/<th scope="row">/g)).toHaveLength(6);
    expect(markup.match(/<td>/g)).toHaveLength(6 * 7);
  });
  it('prints yes and no as words', () => {
    expect(markup).toMatch(/<td>seen<\/td>/);
    expect(markup).not.toMatch(/true|false|NaN|undefined/);
  });
});
