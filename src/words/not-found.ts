export const notFound = {
  title: 'Nothing stands at this address',
  lead: 'The address may be misspelt. An address this site has published once stays, or leads on.',
  home: 'Front page',
} as const;
