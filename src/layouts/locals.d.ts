/** What the parts of one page know of each other. */
declare namespace App {
  interface Locals {
    /** The sheets stand in a booklet, one after the other, without frame and title block of their own. */
    inBooklet?: boolean;
  }
}
