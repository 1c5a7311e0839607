/** Changes whenever a figure of the same input would come out differently; stands in every ledger. */
export const methodVersion = '1';
