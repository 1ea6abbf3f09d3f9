/** Fetches another script of the site: most readers never set a room, and need none of what computes for it. */

/** Whether it has run, once it has or cannot. */
export const fetchScript = (address: string): Promise<boolean> =>
  new Promise((resolve) => {
    const script = document.createElement('script');
    script.src = address;
    script.onload = () => resolve(true);
    script.onerror = () => resolve(false);
    document.head.append(script);
  });
