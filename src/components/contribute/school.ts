/** What a school's own machine runs after each change: printed by the guide and carried out by its test. */
export const BUILD_SCRIPT = `#!/bin/sh
# Checks and builds the lessons of this repository. Stops at the first thing that fails.
set -eu

# Which project builds the lessons, and exactly which state of it.
: "\${LAPSEBOOK_REPOSITORY:?address of the project’s repository}"
: "\${LAPSEBOOK_STATE:?tag or commit of the project}"

# A fresh copy of the project beside the lessons, with its packages.
rm -rf .lapsebook
git clone "$LAPSEBOOK_REPOSITORY" .lapsebook
git -C .lapsebook checkout --detach "$LAPSEBOOK_STATE"
npm --prefix .lapsebook ci

# Paths count from the project, so they are given whole.
export LAPSEBOOK_CONTENT="$PWD/content"
export LAPSEBOOK_OUT="$PWD/site"
npm --prefix .lapsebook run check
npm --prefix .lapsebook run build
`;
