/** What computes, and what is stated instead. */
import type { ExampleGroup } from './example.ts';

export const COMPUTED: ExampleGroup = {
  id: 'computed',
  title: 'Numbers in a sentence',
  about: 'No number with a unit is typed into a sentence. It is computed, or it is marked as given.',
  examples: [
    {
      of: 'Value',
      about: 'One computed quantity. Name it with `of`; say at which drop, height or reading if it needs one. Without a drop it takes the planned one, and what the wall bears is told of the moment at which it bears most. All names stand on the page of files and units.',
      on: 'background',
      source: 'The room has <Value of="roomPressure" unit="hPa"/>. After a drop of <Value of="pressureDrop" drop="10 kPa"/> the air has cooled by <Value of="coolingClear" drop="10 kPa"/>.',
    },
    {
      of: 'Given',
      about: 'A quantity that you state: your choice, or what a source says. Name the source where there is one.',
      on: 'background',
      source: 'Wait for <Given>2 min</Given>. Cloud drops are about <Given source="bohren-albrecht-1998">10 µm</Given> across.',
    },
  ],
};
