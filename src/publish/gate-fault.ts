export type GateCode =
  | 'page-missing'
  | 'link-broken'
  | 'fragment-missing'
  | 'not-a-text'
  | 'path-of-this-machine'
  | 'address-lost'
  | 'file-unaccounted';

/** One reason why a built site must not replace the last good one. */
export interface GateFault {
  readonly code: GateCode;
  /** The page it stands on or the address it is about. */
  readonly page: string;
  readonly message: string;
}
