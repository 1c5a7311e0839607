/** What the notes lack for an estimate of the heat from a surface. */
export const noArticleArea = (article: string): string => `articles/${article}.md does not state outside-area`;
export const noAxleArea = 'rig.md does not state rejecting-area';
export const noAir = 'series.md does not state the airflow of its reference';
