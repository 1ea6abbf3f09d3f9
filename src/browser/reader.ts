/** Every page with numbers: recomputed in the reader's room. The page is whole without it. */
import { piecesOf } from './redraw.ts';
import { startRoom } from './your-room.ts';

startRoom(() => piecesOf(document));
