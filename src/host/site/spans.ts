import { markOf } from '../../charts/theme.ts';
import type { Span } from '../../report/page.ts';
import { hrefFrom } from './address.ts';

/** A span with its address worked out for the page it stands on; plain data for the templates. */
export type SpanView =
  | { readonly kind: 'text' | 'strong' | 'verdict' | 'code' | 'blank'; readonly text: string }
  | { readonly kind: 'link' | 'figure'; readonly text: string; readonly href: string; readonly id?: string }
  | { readonly kind: 'article'; readonly text: string; readonly href: string | null; readonly mark: MarkView };

export interface MarkView {
  readonly colour: string;
  readonly shape: string;
  readonly hollow: boolean;
  readonly name: string;
}

export type SpansOf = (spans: readonly Span[]) => readonly SpanView[];

export const spansFor =
  (pagePath: string): SpansOf =>
  (spans) =>
    spans.map((span) => spanView(pagePath, span));

function spanView(pagePath: string, span: Span): SpanView {
  if (typeof span === 'string') return { kind: 'text', text: span };
  if (span.kind === 'article') {
    const href = span.to === null ? null : hrefFrom(pagePath, span.to);
    return { kind: 'article', text: span.text, href, mark: markOf(span.mark) };
  }
  if (span.kind === 'link' || span.kind === 'figure') {
    const href = hrefFrom(pagePath, span.to);
    if (href === null) return { kind: 'text', text: span.text };
    return span.kind === 'link'
      ? { kind: 'link', text: span.text, href }
      : { kind: 'figure', text: span.text, href, id: span.id };
  }
  return span;
}
