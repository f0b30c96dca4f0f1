export const schema = {
  title: 'File format',
  lead: 'The site is made from files that people write. Here is every kind of file, every field in it, and what may stand there.',
  kinds: 'Kinds of files',
  kindsLead:
    'Every file but the last is Markdown. Its fields stand on top, between two lines of three hyphens, one field on a line: its key, a colon, a space, its value. Below them is free text. Paths begin in the content folder.',
  kind: 'Kind of file',
  stands: 'Where it stands',
  what: 'What it is',
  forEditors: 'For editors',
  schemaOf: (title: string) => `JSON Schema: ${title}`,
  values: 'How values are written',
  valuesLead:
    'A measurement is written as it was read, with its unit: one without is refused, never guessed. A decimal comma is accepted where it can mean nothing else, but within { } and [ ] it would split the value. Your own standard uncertainty may follow behind ±; without it the last digit written and the usual accuracy of such a measurement decide.',
  measurement: 'Measurement',
  accepted: 'What may be written',
  inEditor: 'While you type',
  inEditorLead:
    'An editor that reads JSON Schemas offers the keys, explains them and marks what cannot be read. Name the schema in a comment below the first line of hyphens, as many editors understand it:',
  inEditorMarkdown:
    'Most editors look at YAML only: set the language of the file to YAML while you write its fields. They will mark the text below the fields as well; that means nothing.',
  inEditorChecked:
    'The schema knows less than the check, which reads the numbers too and looks at what files say of each other. What the check says holds.',
  fieldsTitle: (title: string) => `${title}: fields`,
  description: (title: string) =>
    `Every field of a file of the kind: ${title}, with what may be written and an example.`,
  standsAt: 'Stands at',
  allKinds: 'All kinds of files',
  contents: 'Parts of the file',
  ofTheFile: 'The file itself',
  inList: 'These are the fields of each item.',
  field: 'Field',
  meaning: 'What it says',
  example: 'Example',
  required: 'required',
  fieldsOf: 'Fields of',
  anyFigure: 'Any figure of the model',
  figuresOfModel: 'A limit on the figure, by its id.',
  figureExample: 'flying-mass: at most 2 kg',
  tableOf: (path: string) => `Fields of ${path}`,
} as const;
