/**
 * Facts in, answer out: resolves what nobody said into marked assumptions, measures every boat, values the measures for every
 * person, and says in sentences which boat leads, why, and what would change it.
 */
@NullMarked
package org.keelweigh.appraisal;

import org.jspecify.annotations.NullMarked;
