type Attributes = Readonly<Record<string, string | boolean>>;

/** An element with its attributes (`true` stands without a value, `false` is left out) and its children; strings become text. */
export function make<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: readonly (Node | string)[]
): HTMLElementTagNameMap[K] {
  const made = document.createElement(tag);
  dress(made, attributes);
  made.append(...children);
  return made;
}

/** The same inside a drawing. */
export function makeSvg<K extends keyof SVGElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: readonly (Node | string)[]
): SVGElementTagNameMap[K] {
  const made = document.createElementNS('http://www.w3.org/2000/svg', tag);
  dress(made, attributes);
  made.append(...children);
  return made;
}

function dress(element: Element, attributes: Attributes): void {
  for (const [name, value] of Object.entries(attributes))
    if (value !== false) element.setAttribute(name, value === true ? '' : value);
}

/** A word that does something. */
export function button(text: string, press: () => void, attributes: Attributes = {}): HTMLButtonElement {
  const made = make('button', { type: 'button', ...attributes }, text);
  made.addEventListener('click', press);
  return made;
}

/** Only what changes is set, so that nothing is told twice to who listens. */
export function setText(element: Element, text: string): void {
  if (element.textContent !== text) element.textContent = text;
}
