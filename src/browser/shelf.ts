/** Kits found by what a teacher has: age of the class, time, apparatus, what must not be there. The shelf holds all of them without this script. */

import { suits } from './shelf-choice.ts';

const form = document.querySelector<HTMLFormElement>('form.shelf-choice');
const kits = [...document.querySelectorAll<HTMLElement>('.shelf-kit')];
if (form !== null) offerChoice(form);

function offerChoice(choice: HTMLFormElement): void {
  const count = choice.querySelector('.found');
  const show = (): void => {
    const wanted = new FormData(choice);
    let found = 0;
    for (const kit of kits) {
      kit.hidden = !suits(kit.dataset, { age: text(wanted, 'age'), time: text(wanted, 'time'), apparatus: text(wanted, 'apparatus'), without: wanted.getAll('without').map(String) });
      if (!kit.hidden) found += 1;
    }
    if (count !== null) count.textContent = String(found);
  };
  choice.hidden = false;
  choice.addEventListener('change', show);
  choice.addEventListener('submit', (event) => event.preventDefault());
  // The fields are as they were at first only after the event.
  choice.addEventListener('reset', () => setTimeout(show));
  // The browser may have kept what was chosen before.
  show();
}

function text(wanted: FormData, name: string): string {
  return String(wanted.get(name) ?? '');
}
