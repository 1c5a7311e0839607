import type { GradingView } from '../../report/page.ts';
import { make } from '../element.ts';
import { desk, type Desk } from './desk.ts';
import { itemsOf } from './items.ts';
import { begin, type Grader } from './sitting.ts';
import { startForm } from './start.ts';
import { kept, rememberOrder } from './store.ts';

const place = document.querySelector<HTMLElement>('.grading');
if (place !== null) openPage(place);

/** First who grades, then the clips. */
function openPage(into: HTMLElement): void {
  const view = JSON.parse(into.querySelector('.grading-data')?.textContent ?? '{}') as Partial<GradingView>;
  const { clips = [], scales = [], views = [] } = view;
  if (itemsOf(clips, 0).length === 0) {
    into.append(make('p', {}, nothingToGrade));
    return;
  }
  let open: Desk | null = null;
  const ask = (): void => {
    open?.place.remove();
    open = null;
    const form = startForm((grader: Grader) => {
      const next = desk(begin(grader, itemsOf(clips, grader.order), kept(grader)), { clips, scales, views }, ask);
      rememberOrder(grader.order);
      form.replaceWith(next.place);
      next.open();
      open = next;
    });
    into.append(form);
  };
  ask();
  addEventListener('beforeunload', (event) => {
    if (open?.isUnwritten() === true) event.preventDefault();
  });
}

const nothingToGrade =
  'There is nothing to grade here yet: no clip of this series has a code, lies in the folder and shows a step of its log.';
