/** The teachers' reader-room.js: as that of the public site, and what counts as right besides. */
import { isBeside, serve } from './beside.ts';
import { drawerOf } from './drawn.ts';
import { piecesOf } from './redraw.ts';
import { tolerancesOf } from './tolerances.ts';
import { startRoom } from './your-room.ts';

if (isBeside()) serve(drawerOf);
else startRoom(() => [...piecesOf(document), ...tolerancesOf(document)]);
