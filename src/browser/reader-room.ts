/** What computes a page in the reader's room; and the same as the thread beside it. */
import { isBeside, serve } from './beside.ts';
import { drawerOf } from './drawn.ts';
import { piecesOf } from './redraw.ts';
import { startRoom } from './your-room.ts';

if (isBeside()) serve(drawerOf);
else startRoom(() => piecesOf(document));
