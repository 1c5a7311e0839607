import type { Page } from 'playwright-core';
import { expect } from 'vitest';

/**
 * Presses Tab, from where the focus is, until what matches has it; no mouse, no focus() from a script. At each stop on the way
 * (WCAG 2.1, 2.1.1, 2.1.2, 2.4.7) something is seen to have the focus, and it lies in the window.
 */
export async function tabTo(page: Page, selector: string, most = 120): Promise<void> {
  for (let i = 0; i < most; i++) {
    await page.keyboard.press('Tab');
    const stop = await page.evaluate((wanted) => {
      const at = document.activeElement;
      if (!(at instanceof Element) || at === document.body) return null;
      const { outlineStyle, outlineWidth } = getComputedStyle(at);
      const box = at.getBoundingClientRect();
      const inWindow = box.bottom > 0 && box.top < innerHeight && box.width > 0 && box.height > 0;
      return {
        text: at.outerHTML.slice(0, 80),
        seen: outlineStyle !== 'none' && parseFloat(outlineWidth) >= 2 && inWindow,
        there: at.matches(wanted),
      };
    }, selector);
    if (stop === null) continue;
    expect(stop.seen, `focus not seen: ${stop.text}`).toBe(true);
    if (stop.there) return;
  }
  throw new Error(`not reached by Tab: ${selector}`);
}
