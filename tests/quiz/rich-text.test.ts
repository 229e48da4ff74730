import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readText, refsOf } from '../../src/core/quiz';

const faults = (text: string) => readText(text).faults.map((fault) => fault.expected.key);

describe('the Markdown subset', () => {
  it('reads paragraphs, marks, lists, notes, links and values', () => {
    const { rich, faults } = readText(
      'The [hub](part:hub) of **{{machine.name}}** *turns*\nat {{study.exciter.high.force_N|2}}.\n\n- one\n- two\n\n> [see](step:a/b) and [go](go:studies/traction), [word](term:shim)',
    );
    expect(faults).toEqual([]);
    expect(rich[0]).toEqual({
      t: 'p',
      of: [
        { t: 'text', text: 'The ' },
        { t: 'link', target: { to: 'part', ref: 'hub' }, of: [{ t: 'text', text: 'hub' }] },
        { t: 'text', text: ' of ' },
        { t: 'strong', of: [{ t: 'value', name: 'machine.name' }] },
        { t: 'text', text: ' ' },
        { t: 'em', of: [{ t: 'text', text: 'turns' }] },
        { t: 'text', text: ' at ' },
        { t: 'value', name: 'study.exciter.high.force_N', figures: 2 },
        { t: 'text', text: '.' },
      ],
    });
    expect(rich[1]).toMatchObject({ t: 'list', ordered: false, items: [{}, {}] });
    expect(rich[2]).toMatchObject({ t: 'note' });
    expect(refsOf(rich).links).toHaveLength(4);
  });

  it('refuses what it leaves out, and links elsewhere', () => {
    expect(faults('<b>x</b>')).toEqual(['text.expected.no-html']);
    expect(faults('a <script>alert(1)</script>')).toContain('text.expected.no-html');
    expect(faults('![x](part:hub)')).toContain('text.expected.no-images');
    expect(faults('# Title')).toEqual(['text.expected.no-headings']);
    expect(faults('`x`')).toEqual(['text.expected.no-code']);
    for (const link of ['javascript:alert(1)', 'https://example.org', 'data:text/html,x', '//x', 'part:HUB'])
      expect(faults(`[x](${link})`), link).toEqual(['text.expected.link']);
    expect(faults('{{ }} x')).toEqual(['text.expected.value-name']);
    expect(faults('x {{a')).toEqual(['text.expected.value-name']);
    expect(faults('  \n')).toEqual(['text.expected.words']);
  });

  it('turns no text whatever into anything but data of the subset', () => {
    const piece = fc.constantFrom(
      '<',
      '>',
      '[',
      ']',
      '(',
      ')',
      '*',
      '{{',
      '}}',
      '|',
      '\n',
      '\n\n',
      '- ',
      '> ',
      'a',
      'part:hub',
      '`',
      '\\',
      '&lt;',
      '1. ',
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 30 }), (pieces) => {
        const { rich } = readText(pieces.join(''));
        const seen = JSON.stringify(rich);
        expect(seen).not.toMatch(/"t":"(?!text|strong|em|link|value|break|p"|list|note)/);
        expect(refsOf(rich)).toBeDefined();
      }),
      { seed: 11, numRuns: 400 },
    );
  });
});
