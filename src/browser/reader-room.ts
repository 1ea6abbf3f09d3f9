/** What computes a page in the reader's room. */
import { piecesOf } from './redraw.ts';
import { startRoom } from './your-room.ts';

startRoom(() => piecesOf(document));
