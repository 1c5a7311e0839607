/** How many times the short form is run: one in `npm test`, more in `npm run test:long`. */
export const turns = Number(process.env['FUZZ_TURNS'] ?? 1);
