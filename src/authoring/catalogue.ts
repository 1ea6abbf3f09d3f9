/** Every finding there is: what it means, what leads to it, what cures it. The names are stable. */

/** One line of the catalogue. */
export interface Explanation {
  readonly title: string;
  readonly cause: string;
  readonly cure: string;
}

const why = (title: string, cause: string, cure: string): Explanation => ({ title, cause, cure });

const QUANTITIES = {
  'quantity-without-unit': why(
    'A bare number',
    'A field that is a quantity holds a number alone.',
    'Write the unit after the number: `21 °C`.',
  ),
  'quantity-unreadable': why(
    'Not a quantity',
    'The text is not a number followed by a unit.',
    'Write it like `21 °C`, `97 %` or `21.0 °C ± 0.3 K`.',
  ),
  'decimal-comma': why(
    'A decimal comma',
    'A comma stands where the decimal point belongs.',
    'Write a point; commas only part thousands, as in `1,600 m`.',
  ),
  'unknown-unit': why(
    'An unknown unit',
    'The unit is misspelt or not among those known.',
    'Use the unit that the message proposes.',
  ),
  'wrong-dimension': why(
    'The wrong kind of quantity',
    'The unit measures something other than the field.',
    'Use one of the units that the message lists.',
  ),
  'quantity-out-of-range': why(
    'Outside the range',
    'The quantity is outside what is possible or computable here.',
    'Check the number and its unit against the range in the message.',
  ),
  'level-without-reference': why(
    'Absolute or gauge?',
    'A pressure level does not say whether it is absolute or against the room.',
    'Add `gauge` or `absolute`: `-70 kPa gauge`.',
  ),
  'reference-not-wanted': why(
    'A difference needs no reference',
    'The words gauge or absolute stand where they mean nothing.',
    'Leave the word out.',
  ),
};

const FIELDS = {
  'missing-key': why('A missing field', 'A field that every such file needs is not there.', 'Add the field named in the message.'),
  'unknown-key': why(
    'An unknown field',
    'A field or attribute has a name that nothing reads.',
    'Correct the name as proposed, or remove it.',
  ),
  'wrong-type': why(
    'The wrong kind of value',
    'A list stands where text belongs, a number where text belongs, or the like.',
    'Write the kind of value that the message names.',
  ),
  'wrong-form': why('The wrong form', 'A name, address, date or code is not written as it must be.', 'Write it in the form shown.'),
  'unknown-choice': why('Not one of the choices', 'The field takes one of a few words.', 'Use one of the words in the message.'),
  'number-out-of-range': why(
    'A number outside its range',
    'A pure number is larger or smaller than it can be.',
    'Check it against the range in the message.',
  ),
  contradiction: why(
    'Fields that contradict each other',
    'Fields that cannot stand together, or cannot do without each other.',
    'Do as the message proposes.',
  ),
};

const YAML_FILES = {
  'yaml-syntax': why(
    'Not readable as YAML',
    'An indent, colon, quote or bracket is wrong.',
    'Mend the line; put text with a colon in quotes.',
  ),
  'yaml-duplicate-key': why('A field given twice', 'Two fields of one name: only one could count.', 'Remove one of them.'),
  'yaml-anchor': why(
    'YAML anchors and aliases',
    'Anchors, aliases and merge keys are refused: a file says plainly what it says.',
    'Write the value out where it is needed.',
  ),
  'yaml-tag': why('YAML tags', 'Tags such as `!!binary` are refused.', 'Write the value plainly.'),
  'yaml-documents': why('Several documents in one file', 'A line `---` begins another document.', 'Make it another file.'),
};

const FILES = {
  'missing-file': why('A missing file', 'A file that must be there is not.', 'Add the file named in the message.'),
  'unknown-file': why(
    'A file that nothing reads',
    'The name or folder of the file is not part of the plan of a content folder.',
    'Rename, move or remove it.',
  ),
  'bad-name': why(
    'A name of the wrong form',
    'Names of files and folders are lowercase letters, digits and hyphens: they become addresses.',
    'Rename it as proposed.',
  ),
  'symbolic-link': why(
    'A link out of the folder',
    'Symbolic links could bring in any file of the machine.',
    'Copy the file itself.',
  ),
  'file-too-large': why('Too large', 'The file exceeds the cap that keeps builds fast.', 'Divide it, or shorten it.'),
  'byte-order-mark': why('A byte order mark', 'The file begins with an invisible mark.', 'Save it as UTF-8 without BOM.'),
  'hidden-character': why(
    'A character that nobody sees',
    'Control characters, spaces of no width and marks of direction make a text read other than it looks.',
    'Remove it; retyping the word does so.',
  ),
  'not-utf-8': why('Not UTF-8', 'The file is in another encoding.', 'Save it as UTF-8.'),
};

const READINGS = {
  'readings-header': why(
    'The header of a table of readings',
    'A column or its unit is missing, unknown or given twice.',
    'Write the header as `time (s),gauge (kPa),thermometer (°C)`.',
  ),
  'readings-value': why(
    'A reading that is none',
    'A cell is not a plain number within the instrument’s range, a row has too many or too few cells, or times do not rise.',
    'Write one plain number in every column, with a decimal point.',
  ),
  'csv-formula': why(
    'A formula in a table of readings',
    'A cell begins with a sign that makes spreadsheets run it.',
    'Write the number that it gives.',
  ),
};

const REFERENCES = {
  'unknown-reference': why(
    'Nothing of that name',
    'A name is used that no file or field defines.',
    'Use the nearest name as proposed, or add what is missing.',
  ),
  'dead-link': why(
    'A link that leads nowhere',
    'A relative link names a page or a place that there is not, from one of the pages on which the text stands.',
    'Write the address as it is seen from the sheet: `../student/index.html`, `../run/index.html#step-2`, `../../../other-kit/index.html`.',
  ),
  'duplicate-name': why('A name given twice', 'Two things have the same name.', 'Rename one of them.'),
  'duplicate-reference': why('Named twice in one list', 'A list names the same thing again.', 'Remove one of them.'),
  'translation-of-translation': why(
    'A translation of a translation',
    'A kit says that it translates one that is itself a translation.',
    'Name the first original in each of its translations.',
  ),
  'translation-language': why(
    'A translation in the same language',
    'A kit says that it translates one that is in its own language, or that another translates into it already.',
    'Give the kit its language, or take `translationOf` away.',
  ),
  cycle: why(
    'Things that bring each other in',
    'A text brings in another that brings in the first.',
    'Refer to one of them by a link.',
  ),
  'source-never-cited': why(
    'A source that nothing cites',
    'A source is listed, and no file and no sheet cites it.',
    'Cite it or remove it.',
  ),
};

const LESSON_TEXT = {
  'lesson-syntax': why(
    'Not readable as lesson text',
    'A tag or brace is not closed, or a `<` or `{` stands in plain text.',
    'Close the tag; write `\\<` and `\\{` for the signs themselves.',
  ),
  'front-matter': why(
    'Front matter',
    'The lines between `---` at the top are missing, unclosed, in the wrong format, or not wanted here.',
    'Do as the message proposes.',
  ),
  'import-or-export': why(
    'Code in a lesson',
    'Lessons are data: `import` and `export` at the start of a line are code.',
    'Remove it; begin the sentence with another word if it is text.',
  ),
  expression: why(
    'Code in a lesson',
    'Braces hold code, and lessons are data.',
    'Write the text itself, or a component with quoted attributes.',
  ),
  script: why('A script', 'No script can be put on a page.', 'Remove it.'),
  'raw-html': why('Raw HTML', 'Only Markdown and the components of the vocabulary are allowed.', 'Write it in Markdown.'),
  'html-comment': why('An HTML comment', 'Comments in the HTML form are not lesson text.', 'Remove it.'),
  'unknown-component': why('An unknown component', 'No component has that name.', 'Use the name proposed.'),
  'unsafe-attribute': why('An attribute that runs or styles', 'Event, style and directive attributes are refused.', 'Remove it.'),
  'duplicate-attribute': why('An attribute given twice', 'Only one could count.', 'Remove one of them.'),
  'component-placement': why(
    'A component in the wrong place',
    'It stands inside a sentence or alone where it cannot, or in a kind of sheet that cannot show it.',
    'Move it as the message proposes.',
  ),
  'component-children': why(
    'Wrong contents of a component',
    'It encloses what it cannot show.',
    'Close it at once with `/>`, or enclose what the message names.',
  ),
  'unsafe-link': why('An address that is refused', 'Addresses are relative, `https:` or `mailto:`.', 'Write such an address.'),
  'link-definition': why(
    'A link by reference',
    'Definitions of links apart from the text are refused.',
    'Write `[text](address)`.',
  ),
  'image-address': why(
    'A picture from elsewhere',
    'Pictures come with the kit.',
    'Put the file beside the sheet and give its name; describe it in the brackets.',
  ),
  'markdown-refused': why(
    'Markdown that sheets do not show',
    'Footnotes and other rarer parts of Markdown are not shown.',
    'Write it in plain paragraphs.',
  ),
  'heading-level': why(
    'Headings out of order',
    'The title is the page’s own; headings begin at `##` and go down one level at a time.',
    'Add or remove a `#`.',
  ),
  'entity-markup': why(
    'Markup spelled with entities',
    'Entities such as `&lt;` spell a tag.',
    'Put it in backquotes if it is meant to be shown.',
  ),
  'too-deep': why('Nested too deeply', 'Lists, quotes and components stand in each other too many times.', 'Flatten it.'),
  'typed-quantity': why(
    'A typed-in quantity',
    'A number with a unit stands in the text with no source and no computation.',
    'Use `<Value>` for what is computed, `<Given>` for what is stated.',
  ),
  'math-error': why(
    'A formula that cannot be set',
    'The formula has an error or uses a command that is not known.',
    'Mend it at the place given.',
  ),
  'math-command': why(
    'A refused command in a formula',
    'Commands that make links, load files or put attributes on the page are refused.',
    'Leave it out.',
  ),
};

const QUESTIONS = {
  'question-without-answer': why(
    'A question without an answer',
    'The quantity asked for does not exist in the room: saturation is not reached, or the air is too cold for liquid droplets.',
    'Ask at another drop, or for another quantity.',
  ),
  'options-alike': why(
    'Two options that read alike',
    'Two options print as the same text in the room.',
    'Change one of them, or ask at another drop.',
  ),
  'option-within-tolerance': why(
    'A wrong option that is right',
    'A wrong option is so close to the right one that the tolerance covers it.',
    'Choose a wrong option that is farther off.',
  ),
};

const GATES = {
  'hazard-missing': why(
    'A hazard without its sheet',
    'Something is burning, hot, evacuated, pressurised, of glass or the like, and the kit lists no hazard sheet that covers it.',
    'List the hazard sheet in kit.yaml.',
  ),
  'beyond-rating': why(
    'Beyond the rating of the vessel',
    'The pressure planned is beyond what the maker allows.',
    'Plan a smaller drop or use another vessel.',
  ),
  'beyond-gauge': why(
    'Beyond the gauge',
    'The pressure planned is off the gauge’s scale.',
    'Plan a smaller drop or use another gauge.',
  ),
  'beyond-pump': why('Beyond the pump', 'The pump cannot reach the pressure planned.', 'Plan a smaller drop or use another pump.'),
  'below-resolution': why(
    'Too small to be seen',
    'The instrument cannot show so small a change, or so low or high a reading.',
    'Plan a larger change or use a finer instrument.',
  ),
  'flame-not-extinguished': why(
    'A flame without an end',
    'Something is lit and no later step puts it out.',
    'Add a step with `action="extinguish"`.',
  ),
  'flame-with-vapor': why(
    'A flame with a flammable vapor',
    'A flame or ember and a solvent are in one kit.',
    'Use particles without a flame, or no solvent.',
  ),
  'cloud-denied': why(
    'No cloud will form',
    'A step expects a cloud that cannot form.',
    'Plan a larger drop, moister air, or particles.',
  ),
  'clear-denied': why('The air will not stay clear', 'A step expects clear air where cloud forms.', 'Plan a smaller drop.'),
  'particles-not-listed': why(
    'Computed for particles that the kit does not have',
    'A table, figure or value names particles that kit.yaml does not list, and would show dashes only.',
    'List the particles in kit.yaml, or name some that it lists.',
  ),
  'strokes-without-pump': why(
    'Strokes of a pump that has none',
    'A table or value counts strokes, and the source of the apparatus is no pump of strokes.',
    'Leave it out, or use an apparatus with a `stroke-pump`.',
  ),
  'step-order': why(
    'Steps out of order',
    'A step begins before the one above it has ended.',
    'Put the steps in the order of their times.',
  ),
  'beyond-lesson': why(
    'Longer than the lesson',
    'A step ends after the lesson’s minutes.',
    'Shorten the plan or give the lesson more minutes.',
  ),
  'outside-physics': why(
    'Outside what can be computed',
    'The conditions are outside the range of the physics.',
    'Check room, start and drop.',
  ),
};

const EDITIONS = {
  'edition-file-edited': why(
    'A published edition that was edited',
    'A file of a published edition is not what it was: its SHA-256 is not the one in `manifest.json`. Prints of it are in use, and must stay true.',
    'Restore the file from your version control. What is to change goes into the working copy, and from there into a new edition.',
  ),
  'edition-file-missing': why(
    'A published edition that lacks a file',
    'A file that `manifest.json` lists is gone, or the manifest itself is.',
    'Restore it from your version control.',
  ),
  'edition-file-added': why(
    'A file added to a published edition',
    'Nothing but `notice.yaml` may ever be added to one.',
    'Remove the file.',
  ),
  'edition-number': why(
    'A published number that does not come out',
    'The physics library now computes something else than `results.json` of the edition holds, by more than one part in a thousand million.',
    'If the new number is right, say so in the edition’s `notice.yaml`, or publish a new edition and withdraw this one: `npm run publish-edition -- --help` tells how. If it is not, mend the library.',
  ),
  'notice-number': why(
    'A notice about a number that there is not',
    'A correction names a key that `results.json` does not have, an old value that is not the published one, or a new one that does not come out.',
    'Copy the key and the old value from `results.json`, and the new value from the message.',
  ),
  'notice-replacement': why(
    'A replacement that there is not',
    'A notice of withdrawal names a version that is no other edition of the kit.',
    'Name one that is published, or leave `replacement` out.',
  ),
};

/** Every finding's explanation, by its code. */
export const FINDINGS = {
  ...QUANTITIES,
  ...FIELDS,
  ...YAML_FILES,
  ...FILES,
  ...READINGS,
  ...REFERENCES,
  ...LESSON_TEXT,
  ...QUESTIONS,
  ...GATES,
  ...EDITIONS,
} as const satisfies Readonly<Record<string, Explanation>>;

/** The stable name of a finding. */
export type FindingCode = keyof typeof FINDINGS;
