export const bookText = `---
name: The Quillstone book
lab: Quillstone Axle Room
hook: "In Part 4 we were wrong about the tray; how a reader noticed"
contact: corrections@quillstone.example
address: https://quillstone.example
path-prefix: /
language: en
units-shown: si
licence: CC-BY-4.0
invented: true
shown-to: public
---
The Quillstone Axle Room is two people, one bench with a tilting cradle, and a shelf of bowls. Nobody pays for a series; parts are bought over the counter unless the article sheet says otherwise.

Lab, town, parts and readings in this book are invented. The readings come from a small sum of physics with noise added, kept beside the book in \`make/\`, and what was planted stands in \`truth.json\` of each series. They show what the tool does. They say nothing about any axle.
`;
