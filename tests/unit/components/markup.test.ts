import { describe, expect, it } from 'vitest';
import { markup, trusted } from '../../../src/components/markup.ts';

describe('a template', () => {
  it('makes words safe in content and in attributes', () => {
    expect(markup`<a title="${'"<&>'}">${'<b>'}</a>`.html).toBe('<a title="&quot;&lt;&amp;&gt;">&lt;b&gt;</a>');
  });

  it('takes markup as it is, joins lists and leaves out what is not there', () => {
    const items = ['a', '<'].map((word) => markup`<li>${word}</li>`);
    expect(markup`${items}${false}${undefined}${0}${trusted('<hr>')}`.html).toBe('<li>a</li><li>&lt;</li>0<hr>');
  });
});
