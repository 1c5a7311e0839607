/** What figures of a corrected run say. */
export const channelRead = (id: string, channels: string, typed: string): string =>
  `${channels} as corrected by ${id}: ${typed}`;

export const fieldRead = (id: string, field: string, write: string): string =>
  `${field} as corrected by ${id}: ${write}`;

export const untold = 'as corrected by the house';
