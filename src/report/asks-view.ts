import type { Question } from '../trial/part.ts';
import type { Span } from './page.ts';
import { link } from './spans.ts';
import type { View } from './view.ts';

export const asksPath = (view: View): string => `${view.base}asks/`;
export const questionLink = (view: View, { id }: Question): Span => link(`${asksPath(view)}#${id}`, id);
