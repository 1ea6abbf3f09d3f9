/** The teachers' reader-room.js: as that of the public site, and what counts as right besides. */
import { piecesOf } from './redraw.ts';
import { tolerancesOf } from './tolerances.ts';
import { startRoom } from './your-room.ts';

startRoom(() => [...piecesOf(document), ...tolerancesOf(document)]);
