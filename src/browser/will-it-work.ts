/** The page that asks whether it works here: the answer is drawn again for what is chosen and set. */
import { bench } from './bench.ts';
import { linePieces } from './room-lines.ts';
import { startRoom } from './your-room.ts';

startRoom((onChoice) => [...linePieces(document), ...bench(document, onChoice)]);
