/** A text file of the site that is not a page. */
export interface TextFile {
  readonly path: string;
  readonly text: string;
}
